import { weekdayOfWord } from "../../value/day-text";

const said = /^(?:wie|as|like|same as|see)\s+(?:last\s+|on\s+)?(\p{L}+)\.?$/iu;

/** The weekday a cell copies, 0 Monday: "wie Di", "as Tue", "same as on Tuesday"; null when it copies none. */
export function asWeekday(cell: unknown): number | null {
  const words = typeof cell === "string" ? said.exec(cell.trim()) : null;
  return words === null ? null : weekdayOfWord(words[1]!);
}
