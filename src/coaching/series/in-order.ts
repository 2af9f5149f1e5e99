import type { Day } from "../calendar/day";

type Placed = {
  readonly day: Day;
  readonly row: number;
  readonly minute?: number | null;
  /** Of sets: the number, and "work" for a work set. */
  readonly set?: number | null;
  readonly kind?: string;
};

/**
 * Rows by day, then time, then row. A row without a time has the time of the row above it on that
 * day, for coaches often write the time once a session; before any time it comes first. Work sets of
 * one lift that each have a number of their own go by it, behind all others of that day and time: a
 * sheet with the newest row on top, or sorted by speed, tells no other session.
 */
export function inOrder<Row>(rows: readonly Row[], placeOf: (row: Row) => Placed): readonly Row[] {
  if (inOrderAlready(rows, placeOf)) return rows;
  const placed = rows.map((row) => ({ row, place: placeOf(row), minute: -1 }));
  sortUnlessSorted(placed, (a, b) => a.place.day - b.place.day || a.place.row - b.place.row);
  for (let i = 0; i < placed.length; i++) {
    const { place } = placed[i]!;
    const above = placed[i - 1];
    const carried = above && above.place.day === place.day ? above.minute : -1;
    placed[i]!.minute = place.minute ?? carried;
  }
  // Rows of one time stand in order of row already.
  sortUnlessSorted(placed, (a, b) => a.place.day - b.place.day || a.minute - b.minute);
  const ordered: Row[] = [];
  for (let start = 0, end = 0; start < placed.length; start = end) {
    const { place, minute } = placed[start]!;
    while (placed[end]?.place.day === place.day && placed[end]!.minute === minute) end++;
    for (const { row } of byNumber(placed.slice(start, end))) ordered.push(row);
  }
  return ordered;
}

/** A session's work sets by their numbers, behind all others; as they stand where one lacks a number of its own. */
function byNumber<One extends { readonly place: Placed }>(session: readonly One[]): readonly One[] {
  const isWork = ({ place }: One) => place.kind === "work";
  const work = session.filter(isWork);
  if (new Set(work.flatMap(({ place }) => place.set ?? [])).size < work.length) return session;
  work.sort((a, b) => a.place.set! - b.place.set!);
  return [...session.filter((one) => !isWork(one)), ...work];
}

/** Rows are mostly in order already, and mostly without a time: then nothing is laid out anew. */
function inOrderAlready<Row>(rows: readonly Row[], placeOf: (row: Row) => Placed): boolean {
  const watch = new OrderWatch();
  return rows.every((row) => watch.keeps(placeOf(row)));
}

/** Watches whether rows come in the order that `inOrder` gives, none with a time. */
export class OrderWatch {
  /** True as long as every row seen was in order. */
  kept = true;
  private day = Number.NEGATIVE_INFINITY;
  private row = Number.NEGATIVE_INFINITY;
  private number = 0;

  /** Whether this row and all before it are in order. */
  keeps(place: Placed): boolean {
    const { day, row } = place;
    const number = place.set ?? 0;
    const sameDay = day === this.day;
    if (typeof place.minute === "number" || day < this.day) this.kept = false;
    else if (sameDay && (row < this.row || number < this.number)) this.kept = false;
    this.day = day;
    this.row = row;
    this.number = number;
    return this.kept;
  }
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
