import { headerWords } from "../../header/header-words";
import { isBlank } from "../../value/blank";
import type { Placed } from "../flat-rows";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { Block } from "./grid-blocks";

/** Meanings that hold for all of a row's days when they stand beside the dates. */
const ofWholeRow = ["tool", "bar", "gym", "by", "speedIs", "drop", "landing", "private"];

/** What an athlete's row says once for all its days: "bar", "tool", "drop cm", "private". */
export function besideDates(
  { source }: Unfolded,
  { header, known }: Pick<Block, "header" | "known">,
  line: readonly unknown[],
): Record<string, Placed> {
  const beside: Record<string, Placed> = {};
  for (const field of ofWholeRow) {
    const column = known.get(field) ?? -1;
    if (isBlank(line[column])) continue;
    const heading = source[header.lastRow]![column] || source[header.firstRow]![column];
    beside[field] = [withUnit(line[column], headerWords(heading).unit), column];
  }
  return beside;
}

/** Tells of every column with something in an athlete's row that nothing in the block explains. */
export function tellUnread(
  { source, unread }: Unfolded,
  { header, known, rows }: Pick<Block, "header" | "known" | "rows">,
): void {
  const { firstRow, lastRow, days, noteColumns, under } = header;
  const read = new Set([...days, ...noteColumns].map(({ column }) => column));
  for (const field of ["exercise", "test", ...ofWholeRow]) read.add(known.get(field) ?? -1);
  for (const { row, nameColumn } of rows)
    source[row]!.forEach((cell, column) => {
      // Of a date that cannot be told it is said already.
      const told = read.has(column) || column === nameColumn || under.get(column) === false;
      if (told || isBlank(cell) || cell === false) return;
      unread.see(
        isBlank(source[lastRow]![column]) ? firstRow : lastRow,
        row,
        column,
        !under.has(column),
      );
    });
}
