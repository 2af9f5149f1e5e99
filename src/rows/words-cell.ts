import { saysAbsent, saysAway } from "../coaching/availability/says-absent";
import { type Beside, saysUnwell } from "../coaching/diary/says-unwell";
import type { Cells } from "./cells";
import { cellAddress } from "./value/cell-address";

/**
 * The cell in which words of pain, illness or absence stand, and what it says: the one expected, else of
 * those with the words the last, as the latest days of a grid stand right. Where none says it itself, as
 * a yes under "Pain?", the one expected.
 *
 * @param of row and expected column from 1
 */
export function wordsCell(
  cells: Cells,
  of: {
    readonly row: number;
    readonly column: number;
    readonly text: string;
    readonly beside: Beside;
  },
): { readonly cell: string; readonly words: string } {
  const { row, column, text, beside } = of;
  const said = cells[row - 1]!.flatMap((cell, at) =>
    typeof cell === "string" && (saysUnwell(cell, beside) || saysAbsent(cell) || saysAway(cell))
      ? [{ words: cell.trim(), at: at + 1 }]
      : [],
  );
  const own = said.filter(({ words }) => text.includes(words) || words.includes(text));
  const found = said.find(({ at }) => at === column) ?? own.pop() ?? said.pop();
  return { cell: cellAddress(row, found?.at ?? column), words: found?.words ?? text };
}
