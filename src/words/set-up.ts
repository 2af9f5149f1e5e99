/** Words of the clean tabs. */
export const cleanTabWords = {
  headings: "Holdline finds the columns by these headings",
  made: (names: readonly string[]) =>
    names.length === 0
      ? "No table is missing: no tab was made. Drop-downs are up to date."
      : `Made: ${names.join(", ")}. Your own tabs are as they were.`,
} as const;

/** Words of an answer that cannot be remembered. */
export const answerWords = {
  columnGone: (heading: string): string =>
    `“${heading}” is no longer a heading of that tab. Find tables again.`,
  notAnAnswer: (about: string, answer: string): string =>
    about === "bar"
      ? `“${answer}” is no mass of a bar: give it in kg, such as 15.`
      : `“${answer}” is no answer to that question. Find tables again.`,
} as const;
