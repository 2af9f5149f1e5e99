import type { Day } from "../coaching/calendar/day";
import type { Cells } from "./cells";
import { readTable } from "./read-table";
import type { Reading } from "./reading";
import type { RowOf } from "./table/read-view";
import type { TableName } from "./table-name";

const readings = new WeakMap<Cells, Map<string, unknown>>();

/**
 * `readTable` of a range that several formulas may be handed as the very same list of rows, as the
 * local workbook does: it is read once, for as long as that list lives. `today` tells readings apart
 * only where the reader asked for it, which it does for layouts whose dates carry no year.
 */
export function readOnce<T extends TableName>(
  table: T,
  cells: Cells,
  today: Day | null,
): Reading<RowOf[T]> {
  let known = readings.get(cells);
  if (known === undefined) {
    known = new Map();
    readings.set(cells, known);
  }
  const dated = `${table}|${today}`;
  const found = known.get(table) ?? known.get(dated);
  if (found !== undefined) return found as Reading<RowOf[T]>;
  let asked = false;
  const reading = readTable(table, cells, {
    get today(): Day | null {
      asked = true;
      return today;
    },
  });
  known.set(asked ? dated : table, reading);
  return reading;
}
