import type { Column } from "../header/column";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { isDate } from "../value/is-date";
import { cellAbove } from "./above";
import { saysNoFigure } from "./no-figure";
import { numberCell } from "./number-cell";

export type NumberBounds = {
  readonly low: number;
  readonly high: number;
  /** Only whole numbers make sense (a set's number, repetitions). */
  readonly whole?: boolean;
  /** "2-3" is taken at its lower end or its higher one, whichever is careful. */
  readonly rangeLowEnd?: boolean;
  readonly rangeHighEnd?: boolean;
};

/** Reader of a column of plain numbers; null where there is no usable value. */
export function numberColumn(
  view: TableView,
  column: Column | undefined,
  bounds: NumberBounds,
): CellReader<number | null> {
  if (column === undefined) return () => null;
  const { index, heading } = column;
  const { low, high, whole = false } = bounds;
  const above = cellAbove(view, index);
  const judged = (value: number, cell: unknown, row: number): number | null => {
    if (value >= low && value <= high && (!whole || Number.isInteger(value))) return value;
    const code = value >= low && value <= high ? "not-whole" : "implausible";
    view.log.add(code, row, index, cell, { low, high, unit: "", heading });
    return null;
  };
  const slow = (cell: unknown, row: number): number | null => {
    if (typeof cell === "number" && Number.isFinite(cell)) return judged(cell, cell, row);
    if (isBlank(cell) || cell === false) return null;
    if (isDate(cell)) {
      view.log.add("date-in-number", row, index, cell, { heading });
      return null;
    }
    const text = typeof cell === "string" ? cell.trim() : "";
    if (saysNoFigure(view, row, index, text)) return null;
    if (isDitto(cell)) return slow(above(row), row);
    const span = /^(\d+(?:[.,]\d+)?)\s*[-–]\s*(\d+(?:[.,]\d+)?)$/.exec(text);
    const careful = bounds.rangeLowEnd ? Math.min : bounds.rangeHighEnd ? Math.max : null;
    if (span !== null && careful !== null)
      return judged(
        careful(...[span[1], span[2]].map((end) => Number(end?.replace(",", ".")))),
        cell,
        row,
      );
    // "3/10" on a scale of ten says three.
    const number = numberCell(text.replace(/ ?(\/|of|von) ?10$/i, ""));
    if (number === null) {
      view.log.add("not-a-number", row, index, cell, { heading });
      return null;
    }
    if (number.unsure) {
      view.log.add("unsure", row, index, cell, { mend: number.value, heading });
      return null;
    }
    return judged(number.value, cell, row);
  };
  return (line, row) => {
    const cell = line[index];
    if (
      typeof cell === "number" &&
      cell >= low &&
      cell <= high &&
      (!whole || Number.isInteger(cell))
    )
      return cell;
    return cell === "" ? null : slow(cell, row);
  };
}
