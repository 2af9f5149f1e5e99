import { isBlank } from "../value/blank";
import { foundText } from "../value/found-text";
import { holdsNothing } from "../value/no-value";
import type { Placed } from "./flat-rows";

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

/** Cells that the record of their row has no place for, as words: "Reps 3; Speed 0.62". */
export function wordsOfCells(
  line: readonly unknown[],
  columns: readonly { readonly index: number; readonly heading: string }[],
): string {
  return columns
    .filter(({ index }) => !holdsNothing(line[index]))
    .map(({ heading, index }) => `${heading} ${foundText(line[index])}`)
    .join("; ");
}
