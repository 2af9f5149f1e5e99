import { headings } from "./headings";

/** Headings of the Rules table, as coaches write them; the first of each is ours. */
export const rulesColumns = {
  rule: headings("rule|setting|name|regel|what"),
  value: headings("value|setting value|wert|is|figure"),
} as const;
