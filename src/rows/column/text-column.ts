import type { Column } from "../header/column";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { isErrorCell } from "../value/error-cell";
import { foundText } from "../value/found-text";
import { isDate } from "../value/is-date";
import { saysNoValue } from "../value/no-value";
import { cellAbove } from "./above";

/**
 * Reader of a column of words; "" where the cell is blank or a formula's error, or the column missing.
 * Reports `cell-error` unless the column is needed: then the row is left out, and said to be so.
 */
export function textColumn(
  view: TableView,
  column: Column | undefined,
  needed = false,
): CellReader<string> {
  if (column === undefined) return () => "";
  const { index } = column;
  const above = cellAbove(view, index);
  let last = "";
  const read = (cell: unknown, row: number): string => {
    if (cell === last) return last;
    if (typeof cell !== "string") return wordsOf(cell);
    if (isDitto(cell)) return read(above(row), row);
    if (isErrorCell(cell)) {
      if (!needed && !saysNoValue(cell)) view.log.add("cell-error", row, index, cell);
      return "";
    }
    const text = isBlank(cell) ? "" : trimmed(cell);
    if (text === cell) last = cell;
    return text;
  };
  if (column.carried !== true) return (line, row) => read(line[index], row);
  let carried = "";
  return (line, row) => {
    const cell = line[index];
    // Whose name a formula failed to give is nobody's above it.
    carried = read(cell, row) || (isErrorCell(cell) ? "" : carried);
    return carried;
  };
}

function wordsOf(cell: unknown): string {
  return typeof cell === "number" || isDate(cell) ? foundText(cell) : "";
}

/** Outer spaces off and inner runs of spaces made one; the very same string when already clean. */
export function trimmed(text: string): string {
  if (!/^\s|\s$|\s\s/.test(text)) return text;
  // A byte-order mark counts as a space and has no width: it must not part a word.
  return text
    .replace(/\uFEFF/g, "")
    .trim()
    .replace(/\s+/g, " ");
}
