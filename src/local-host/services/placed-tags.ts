import type { FWorksheet } from "@univerjs/sheets/facade";
import { columnLetters, type Rectangle, rangeName, rectangle } from "../a1";
import { type ColumnMove, type Shift, shiftedPlace } from "../engine/shift";
import type { TabMemory } from "../engine/tab-memory";

/** A script's tag on a tab (`at` null) or on a whole row or column. */
export type PlacedTag = {
  readonly key: string;
  readonly value: string;
  readonly at: Rectangle | null;
  readonly along: "row" | "column" | null;
};

type Size = { readonly rows: number; readonly columns: number };

/**
 * Which of the two a range is, whole.
 *
 * @throws the platform's words for a range that is neither
 */
export function wholeLine(at: Rectangle, { rows, columns }: Size): "row" | "column" {
  if (at.startRow === 0 && at.endRow >= rows - 1 && at.startColumn === at.endColumn)
    return "column";
  if (at.startColumn === 0 && at.endColumn >= columns - 1 && at.startRow === at.endRow)
    return "row";
  throw new Error(
    "Adding developer metadata to arbitrary ranges is not currently supported. Developer metadata may only be added to the top-level spreadsheet, an individual sheet, or an entire row or column.",
  );
}

/** Tags after rows or columns came or went; a tag dies with its row or column. */
export function shiftedTags(tags: readonly PlacedTag[], shift: Shift): PlacedTag[] {
  return tags.flatMap((tag) => {
    // A whole column stays whole, however many rows the tab has.
    if (tag.at === null || (tag.along === "column" && shift.along === "row")) return [tag];
    const at = shiftedPlace(tag.at, shift);
    return at ? [{ ...tag, at }] : [];
  });
}

/** Tags after columns were moved. */
export function movedTags(
  tags: readonly PlacedTag[],
  { from, count, to }: ColumnMove,
): PlacedTag[] {
  const landed = to > from ? to - count : to;
  const moved = (column: number): number => {
    if (column >= from && column < from + count) return landed + column - from;
    const without = column >= from + count ? column - count : column;
    return without >= landed ? without + count : without;
  };
  return tags.map((tag) =>
    tag.at === null || tag.along !== "column"
      ? tag
      : {
          ...tag,
          at: {
            ...tag.at,
            startColumn: moved(tag.at.startColumn),
            endColumn: moved(tag.at.endColumn),
          },
        },
  );
}

type KeptTag = TabMemory["tags"][number];

/** A tag as the file keeps it; `topOf` tells the first content of a column. */
export function keptTag(
  { key, value, at, along }: PlacedTag,
  topOf: (column: number) => string,
): KeptTag {
  if (at === null) return { key, value, range: null };
  if (along === "row") return { key, value, range: rangeName(at) };
  const column = columnLetters(at.startColumn);
  return { key, value, range: `${column}:${column}`, top: topOf(at.startColumn) };
}

/**
 * A tag of a file put back in its place; none when the place cannot be read, or when a column there
 * begins with something else: another program has moved it, and a wrong place is worse than none.
 */
export function placedTag(
  { key, value, range, top }: KeptTag,
  size: Size,
  topOf: (column: number) => string,
): PlacedTag[] {
  if (range === null) return [{ key, value, at: null, along: null }];
  const at = rectangle(range, size);
  if (at === null) return [];
  if (/\d/.test(range)) return [{ key, value, at, along: "row" }];
  const same = top === undefined || top === topOf(at.startColumn);
  return same ? [{ key, value, at, along: "column" }] : [];
}

/** First content of a column as text, "" for an empty one. */
export function topOfColumn(grid: FWorksheet): (column: number) => string {
  const matrix = grid.getSheet().getCellMatrix();
  const rows = matrix.getLength();
  return (column) => {
    for (let row = 0; row < rows; row++) {
      const value = matrix.getValue(row, column)?.v;
      if (value !== undefined && value !== null && value !== "") return String(value);
    }
    return "";
  };
}
