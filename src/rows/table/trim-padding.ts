import type { Cells } from "../cells";
import { isBlankLine } from "./read-lines";

/** The row after the last one that holds anything: whole-column ranges end in padding. */
export function endOfRows(cells: Cells): number {
  let end = cells.length;
  while (end > 0 && isBlankLine(cells[end - 1]!)) end--;
  return end;
}
