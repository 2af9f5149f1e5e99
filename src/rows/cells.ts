/** A range as the spreadsheet passes it: rows of numbers, text, booleans, `Date` or "" for blank. */
export type Cells = readonly (readonly unknown[])[];
