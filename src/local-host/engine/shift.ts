import type { Rectangle } from "../a1";

/** Rows or columns put in or taken out of a tab, both ends included. */
export type Shift = {
  readonly along: "row" | "column";
  readonly start: number;
  readonly end: number;
  readonly removed: boolean;
};

/** Where a rectangle stands after the shift, null when all of it was taken out. */
export function shiftedPlace(at: Rectangle, shift: Shift): Rectangle | null {
  const rows = shift.along === "row";
  const ends = rows
    ? shiftedEnds(at.startRow, at.endRow, shift)
    : shiftedEnds(at.startColumn, at.endColumn, shift);
  if (!ends) return null;
  const [first, last] = ends;
  return rows
    ? { ...at, startRow: first, endRow: last }
    : { ...at, startColumn: first, endColumn: last };
}

function shiftedEnds(
  from: number,
  to: number,
  { start, end, removed }: Shift,
): readonly [number, number] | null {
  if (!removed) {
    const moved = (place: number) => (place >= start ? place + end - start + 1 : place);
    return [moved(from), moved(to)];
  }
  if (start <= from && to <= end) return null;
  const lost = (place: number) => Math.max(0, Math.min(place, end + 1) - start);
  return [from - lost(from), to - lost(to + 1)];
}

const mutations = new Map<string, Pick<Shift, "along" | "removed">>([
  ["sheet.mutation.insert-row", { along: "row", removed: false }],
  ["sheet.mutation.remove-rows", { along: "row", removed: true }],
  ["sheet.mutation.insert-col", { along: "column", removed: false }],
  ["sheet.mutation.remove-col", { along: "column", removed: true }],
]);

/** The shift that a mutation of the grid library makes, and on which tab; null for all others. */
export function shiftOf(id: string, params: unknown): { tabId: string; shift: Shift } | null {
  const kind = mutations.get(id);
  if (!kind) return null;
  const { subUnitId, range } = params as { subUnitId: string; range: Rectangle };
  return {
    tabId: subUnitId,
    shift: {
      ...kind,
      start: kind.along === "row" ? range.startRow : range.startColumn,
      end: kind.along === "row" ? range.endRow : range.endColumn,
    },
  };
}

/** Columns `from` … `from + count − 1` moved before column `to`, all counted before the move from 0. */
export type ColumnMove = { readonly from: number; readonly count: number; readonly to: number };

/** The move of columns that a mutation of the grid library makes, and on which tab; null for all others. */
export function columnMoveOf(
  id: string,
  params: unknown,
): { tabId: string; move: ColumnMove } | null {
  if (id !== "sheet.mutation.move-columns") return null;
  const { subUnitId, sourceRange, targetRange } = params as {
    subUnitId: string;
    sourceRange: Rectangle;
    targetRange: Rectangle;
  };
  const { startColumn: from, endColumn } = sourceRange;
  return {
    tabId: subUnitId,
    move: { from, count: endColumn - from + 1, to: targetRange.startColumn },
  };
}
