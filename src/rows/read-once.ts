import type { Day } from "../coaching/calendar/day";
import type { Cells } from "./cells";
import { type Understanding, understandTable } from "./read-table";
import type { TableName } from "./table-name";

const known = new WeakMap<Cells, Map<string, unknown>>();

/**
 * `understandTable` of a range that several formulas may be handed as the very same list of rows, as the
 * local workbook does: it is read once, for as long as that list lives. `today` tells readings apart
 * only where the reader asked for it, which it does for layouts whose dates carry no year.
 */
export function understoodOnce<T extends TableName>(
  table: T,
  cells: Cells,
  today: Day | null,
): Understanding<T> {
  let ofCells = known.get(cells);
  if (ofCells === undefined) {
    ofCells = new Map();
    known.set(cells, ofCells);
  }
  const dated = `${table}|${today}`;
  const found = ofCells.get(table) ?? ofCells.get(dated);
  if (found !== undefined) return found as Understanding<T>;
  let asked = false;
  const understood = understandTable(table, cells, {
    get today(): Day | null {
      asked = true;
      return today;
    },
  });
  ofCells.set(asked ? dated : table, understood);
  return understood;
}

/** What `understoodOnce` reads from the range. */
export const readOnce = <T extends TableName>(table: T, cells: Cells, today: Day | null) =>
  understoodOnce(table, cells, today).reading;
