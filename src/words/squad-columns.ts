/** Headings of the squad table's columns, in order: the terminal's, and the Squad tab's. */
export const squadColumns = [
  "Athlete",
  "May do",
  "Word",
  "Since",
  "Value",
  "From baseline",
  "Wobble",
  "Loss that would show",
  "Season",
  "Last session",
  "Rows not used",
  "Notes",
] as const;
