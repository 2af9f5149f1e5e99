/** Headings over the answer of ROW_CHECK, in its order. */
export const rowCheckColumns = ["Cell", "Found", "What to do", "Why it matters"] as const;
