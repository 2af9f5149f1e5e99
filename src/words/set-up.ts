/** Words of the set-up view. */
export const setUpWords = {
  sure: "found by its headings",
  unsure: "probably, by its headings: right?",
  answered: "you said so",
  leftAlone: "left alone",
  whoSees:
    "Everyone who can open this spreadsheet can read the Diary and Availability tabs. They are health data: share the spreadsheet with those who need them. Nothing is stored anywhere else.",
} as const;
