/** Headings of the Rules table, as coaches write them; the first of each is ours. */
export const rulesColumns = {
  rule: ["rule", "setting", "name", "regel", "what"],
  value: ["value", "setting value", "wert", "is", "figure"],
} as const;
