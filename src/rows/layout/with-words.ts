import { isBlank } from "../value/blank";
import type { Placed } from "./unfolded";

/** A row's note with the words that stand in one of its cells beside the figures; either may be missing. */
export function withWords(
  note: Placed | undefined,
  words: string,
  column: number,
): Placed | undefined {
  const noted = note !== undefined && !isBlank(note[0]);
  if (words === "") return noted ? note : undefined;
  return noted ? [`${String(note[0]).trim()}; ${words}`, note[1]] : [words, column];
}
