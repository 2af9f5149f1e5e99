import type { Column } from "../header/column";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { saysNoValue } from "../value/no-value";
import { speedList, withPiece } from "../value/speed-list";
import type { AsWritten } from "./as-written";
import { mendDecimalPoint } from "./mend";
import { plausible } from "./quantity";
import { quantityColumn } from "./quantity-column";
import { unitEvidence } from "./unit-evidence";

/** Speeds of one set, m/s: several from one cell, or the one figure of the set. */
export type CellSpeeds = {
  readonly reps: readonly (number | null)[];
  readonly single: number | null;
};

const none: CellSpeeds = { reps: [], single: null };

/**
 * Reader of the speed cell of a set: one number, or a list "0.62 0.60 0.57". An implausible or
 * doubtful repetition is reported and left out; the others stay.
 */
export function speedColumn(
  view: TableView,
  column: Column | undefined,
  written: AsWritten | null = null,
): (line: readonly unknown[], row: number) => CellSpeeds {
  if (column === undefined) return () => none;
  const { index, heading } = column;
  const one = quantityColumn(view, column, plausible.speed, null, false, written);
  const unit = column.unit?.quantity === "speed" ? column.unit : null;
  const { low, high } = plausible.speed;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;

  const list = (cell: string, row: number): CellSpeeds | null => {
    const { speeds, pieces, unread, unsure } = speedList(cell);
    if (speeds.length < 2) return null;
    for (const piece of unread) view.log.add("not-a-number", row, index, cell, { piece, heading });
    for (const piece of unsure) view.log.add("unsure", row, index, cell, { piece, heading });
    const reps = speeds.map((speed, at) => {
      if (speed === null) return null;
      const value = unit === null ? speed : (speed * unit.times) / unit.per;
      if (value >= low && value <= high) {
        if (value < least) least = value;
        if (value > most) most = value;
        return value;
      }
      if (!(least <= most)) ({ least, most } = unitEvidence(view, column, plausible.speed));
      const mend = mendDecimalPoint(value, least, most, plausible.speed);
      view.log.add("implausible", row, index, cell, {
        low,
        high,
        unit: "m/s",
        piece: String(speed),
        heading,
        ...mendOfList(cell, pieces[at]!, mend),
      });
      return null;
    });
    return { reps, single: null };
  };

  return (line, row) => {
    const cell = line[index];
    if (typeof cell === "string" && !isBlank(cell) && !saysNoValue(cell)) {
      const several = list(cell, row);
      if (several !== null) return several;
    }
    return { reps: [], single: one(line, row) };
  };
}

/** The piece put right, and the whole cell with it, which is what a mend writes. */
function mendOfList(
  cell: string,
  piece: string,
  value: number | null,
): Record<string, string | number> {
  if (value === null) return {};
  const mend = withPiece(cell, piece, value);
  return mend === null ? { mendPiece: value } : { mendPiece: value, mend };
}
