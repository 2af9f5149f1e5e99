import type { Day } from "../calendar/day";

type Placed = { readonly day: Day; readonly row: number; readonly minute?: number | null };

/**
 * Rows by day, then time, then row. A row without a time has the time of the row above it on that
 * day, for coaches often write the time once a session; before any time it comes first.
 */
export function inOrder<Row>(rows: readonly Row[], placeOf: (row: Row) => Placed): readonly Row[] {
  if (inOrderAlready(rows, placeOf)) return rows;
  const placed = rows.map((row) => ({ row, place: placeOf(row), minute: -1 }));
  sortUnlessSorted(placed, (a, b) => a.place.day - b.place.day || a.place.row - b.place.row);
  let timed = false;
  for (let i = 0; i < placed.length; i++) {
    const { place } = placed[i]!;
    const above = placed[i - 1];
    const carried = above && above.place.day === place.day ? above.minute : -1;
    placed[i]!.minute = place.minute ?? carried;
    timed ||= placed[i]!.minute >= 0;
  }
  if (timed) {
    sortUnlessSorted(
      placed,
      (a, b) => a.place.day - b.place.day || a.minute - b.minute || a.place.row - b.place.row,
    );
  }
  return placed.map(({ row }) => row);
}

/** Rows are mostly in order already, and mostly without a time: then nothing is laid out anew. */
function inOrderAlready<Row>(rows: readonly Row[], placeOf: (row: Row) => Placed): boolean {
  let day = Number.NEGATIVE_INFINITY;
  let row = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < rows.length; i++) {
    const place = placeOf(rows[i]!);
    if (typeof place.minute === "number" || place.day < day) return false;
    if (place.day === day && place.row < row) return false;
    day = place.day;
    row = place.row;
  }
  return true;
}

/** Rows are mostly in order already, which is looked at first. */
function sortUnlessSorted<Row>(rows: Row[], compare: (a: Row, b: Row) => number): void {
  for (let i = 1; i < rows.length; i++) {
    if (compare(rows[i - 1]!, rows[i]!) > 0) {
      rows.sort(compare);
      return;
    }
  }
}
