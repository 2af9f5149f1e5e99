import type { Day } from "../../coaching/calendar/day";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { oddDayFacts, oddDays } from "./odd-days";

/**
 * Asks about days that hardly belong to a table of done training: `day-questioned`,
 * `weekday-questioned` (facts `weekday`, `rows`, and the swapped day under `mend`), once at the first
 * row of each. The rows stay: the day is what the coach wrote.
 */
export function questionDays<Row extends { readonly row: number; readonly day: Day }>(
  view: TableView,
  reading: Reading<Row>,
): Reading<Row> {
  const counts = new Map<Day, number>();
  const firstRows = new Map<Day, number>();
  let lastDay = Number.NaN;
  let run = 0;
  const close = () => {
    if (run > 0) counts.set(lastDay, (counts.get(lastDay) ?? 0) + run);
  };
  const { records } = reading;
  for (let at = 0; at < records.length; at++) {
    const { row, day } = records[at]!;
    if (day === lastDay) {
      run++;
      continue;
    }
    close();
    lastDay = day;
    run = 1;
    if (!firstRows.has(day)) firstRows.set(day, row);
  }
  close();
  for (const odd of oddDays(counts)) {
    const row = firstRows.get(odd.day)! - 1;
    const column = view.fields.day!.index;
    const code = odd.oddBy === "distance" ? "day-questioned" : "weekday-questioned";
    const cell = view.cells[row]![column];
    view.log.add(code, row, column, cell, { ...oddDayFacts(odd), rows: counts.get(odd.day)! });
  }
  return reading;
}
