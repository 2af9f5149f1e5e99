import type { Cells } from "../cells";
import { findTables } from "../find-tables";
import type { Understanding } from "../read-table";
import type { TableName } from "../table-name";
import type { ReadOptions } from "../understanding/read-options";

/** Rows that are looked at: a table is known by its first ones. */
const rowsLookedAt = 200;
/** From here on a range is plainly the table found in it. */
const plain = 0.7;

/**
 * The table that a range plainly is, where that is not the one it was said to be: nothing of it could be
 * read as that one, or at most half as many of its headings; null otherwise.
 */
export function plainlyOther(
  table: TableName,
  cells: Cells,
  asSaid: Understanding<TableName>,
  options: Pick<ReadOptions, "today">,
): TableName | null {
  // Bare numbers under dates may be loads of a lift that only the tab's name says.
  if (asSaid.reading.issues.some(({ code }) => code === "exercise-missing")) return null;
  const found = findTables([{ name: "", cells: cells.slice(0, rowsLookedAt) }], options);
  const [best] = [...found].sort((a, b) => b.sureness - a.sureness);
  if (best === undefined || best.sureness < plain) return null;
  if (found.some((one) => one.table === table)) return null;
  const known = ({ columns }: Understanding<TableName>) =>
    columns.filter(({ field }) => field !== null).length;
  const unlike =
    asSaid.reading.records.length === 0 || 2 * known(asSaid) <= known(best.understanding);
  return unlike ? best.table : null;
}
