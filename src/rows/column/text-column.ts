import type { Column } from "../header/column-map";
import type { CellReader, TableView } from "../table-view";
import { isDitto } from "../value/ditto";
import { foundText } from "../value/found-text";
import { isDate } from "../value/is-date";
import { cellAbove } from "./above";

/** Reader of a column of words; "" where the cell is blank or the column missing. */
export function textColumn(view: TableView, column: Column | undefined): CellReader<string> {
  if (column === undefined) return () => "";
  const { index } = column;
  const above = cellAbove(view, index);
  let last = "";
  const read = (cell: unknown, row: number): string => {
    if (cell === last) return last;
    if (typeof cell !== "string") return typeof cell === "boolean" ? "" : wordsOf(cell);
    if (isDitto(cell)) {
      const repeated = above(row);
      return isDitto(repeated) ? "" : read(repeated, row);
    }
    const text = trimmed(cell);
    if (text === cell) last = cell;
    return text;
  };
  if (column.carried !== true) return (line, row) => read(line[index], row);
  let carried = "";
  return (line, row) => {
    carried = read(line[index], row) || carried;
    return carried;
  };
}

function wordsOf(cell: unknown): string {
  return typeof cell === "number" || isDate(cell) ? foundText(cell) : "";
}

/** Outer spaces off and inner runs of spaces made one; the very same string when already clean. */
export function trimmed(text: string): string {
  return /^\s|\s$|\s\s/.test(text) ? text.trim().replace(/\s+/g, " ") : text;
}
