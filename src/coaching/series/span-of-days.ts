import type { Day } from "../calendar/day";

type Dated = { readonly day: Day };

/** Rows in order of day, those from one day on; the very same list when that is all of them. */
export function fromDay<Row extends Dated>(rows: readonly Row[], day: Day): readonly Row[] {
  const first = rowsBefore(rows, day);
  return first === 0 ? rows : rows.slice(first);
}

/** Rows in order of day, those up to one day and on it; the very same list when that is all of them. */
export function upToDay<Row extends Dated>(rows: readonly Row[], day: Day): readonly Row[] {
  const end = rowsBefore(rows, day + 1);
  return end === rows.length ? rows : rows.slice(0, end);
}

/** How many rows lie before a day, by halving: rows are in order of day. */
function rowsBefore(rows: readonly Dated[], day: Day): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.day < day) low = middle + 1;
    else high = middle;
  }
  return low;
}
