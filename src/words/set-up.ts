/** Words of the clean tabs. */
export const cleanTabWords = {
  headings: "Holdline finds the columns by these headings",
  made: (names: readonly string[]) =>
    names.length === 0
      ? "No table is missing: no tab was made. Drop-downs are up to date."
      : `Made: ${names.join(", ")}. Your own tabs are as they were.`,
} as const;

/** Words of the set-up view. */
export const setUpWords = {
  sure: "found by its headings",
  unsure: "probably, by its headings: right?",
  answered: "you said so",
  leftAlone: "left alone",
  said: ({
    field,
    unit,
    dateOrder,
  }: {
    readonly field?: string | null | undefined;
    readonly unit?: string | undefined;
    readonly dateOrder?: string | undefined;
  }): string => [field === null ? "left alone" : field, unit, dateOrder].filter(Boolean).join(", "),
  whoSees:
    "Everyone who can open this spreadsheet can read the Diary and Availability tabs. They are health data: share the spreadsheet with those who need them. Nothing is stored anywhere else.",
} as const;
