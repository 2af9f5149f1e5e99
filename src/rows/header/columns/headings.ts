/** Headings of one meaning, written "date|day|datum": every formula call parses them, so no quotes. */
export const headings = (words: string): readonly string[] => words.split("|");
