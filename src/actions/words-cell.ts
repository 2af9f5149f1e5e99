import { type Beside, saysUnwell } from "../coaching/diary/says-unwell";
import type { Cells } from "../rows/cells";
import type { ColumnDecision } from "../rows/header/decide-columns";
import { cellAddress } from "../rows/value/cell-address";

/** Columns of words, the likeliest first: a yes under "Pain?" says it without a word. */
const ofWords = ["pain", "note"];

/**
 * A1 address of the cell in which a record's words of pain or illness stand: of several with the same
 * words the last, as the latest days of a grid stand right; without one the column of pain, or of notes.
 */
export function wordsCell(
  cells: Cells,
  of: {
    /** From 1. */
    readonly row: number;
    readonly columns: readonly ColumnDecision[];
    readonly text: string;
    readonly beside: Beside;
  },
): string {
  const { row, columns, text, beside } = of;
  const said = (cells[row - 1] ?? []).flatMap((cell, at) =>
    typeof cell === "string" && saysUnwell(cell, beside) ? [{ words: cell.trim(), at }] : [],
  );
  const own = said.filter(({ words }) => text.includes(words) || words.includes(text));
  const last = (own.length > 0 ? own : said).pop();
  const named = ofWords.flatMap((one) => columns.find(({ field }) => field === one)?.column ?? []);
  return cellAddress(row, last === undefined ? (named[0] ?? 1) : last.at + 1);
}
