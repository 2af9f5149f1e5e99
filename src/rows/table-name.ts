/** The tables the add-on knows. */
export const tableNames = [
  "Athletes",
  "Availability",
  "Sets",
  "Jumps",
  "Diary",
  "Runs",
  "Races",
  "Plates",
  "Rules",
] as const;

export type TableName = (typeof tableNames)[number];
