import type { Cells } from "../cells";
import type { Column } from "../header/column";
import { isBlank } from "../value/blank";
import { isBlankLine } from "./read-lines";

const carriable = ["day", "athlete", "exercise", "test"];

/**
 * Columns whose cells stand only in the first row of each block, as merged cells do. A column is
 * taken so when its first row that is not blank is filled, three in ten of its filled rows or more are blank
 * there, and the blanks run under a filled cell; then a blank repeats what stands above.
 */
export function carriedColumns(
  cells: Cells,
  first: number,
  end: number,
  fields: Readonly<Record<string, Column>>,
): ReadonlySet<string> {
  const columns = carriable.flatMap((field) =>
    fields[field] === undefined ? [] : [{ field, index: fields[field].index }],
  );
  const indexes = columns.map(({ index }) => index);
  const blanks = columns.map(() => 0);
  let rows = 0;
  let top: readonly unknown[] = [];
  for (let row = first; row < end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) continue;
    if (rows++ === 0) top = line;
    for (let at = 0; at < indexes.length; at++) if (isBlank(line[indexes[at]!])) blanks[at]!++;
  }
  const carried = columns.filter(
    ({ index }, at) => rows >= 3 && blanks[at]! >= 0.3 * rows && !isBlank(top[index]),
  );
  return new Set(carried.map(({ field }) => field));
}
