import type { TabData } from "../../workbook-data";
import type { Sheet } from "./library";

/** The hidden ones among so many first rows and columns of a tab, from 0; those beyond are left to the file. */
export function hiddenLines(
  sheet: Sheet,
  rows: number,
  columns: number,
): Pick<TabData, "hiddenRows" | "hiddenColumns"> {
  const hiddenRows = places(rows, (row) => sheet.findRow(row + 1)?.hidden === true);
  const hiddenColumns = places(columns, (column) => sheet.getColumn(column + 1).hidden === true);
  return {
    ...(hiddenRows.length > 0 && { hiddenRows }),
    ...(hiddenColumns.length > 0 && { hiddenColumns }),
  };
}

/** Hides and shows what is another in the file than in the grid. */
export function writeHiddenLines(sheet: Sheet, after: TabData, columns: number): void {
  const was = hiddenLines(sheet, after.cells.length, columns);
  each(was.hiddenRows, after.hiddenRows, (row, hidden) => {
    sheet.getRow(row + 1).hidden = hidden;
  });
  each(was.hiddenColumns, after.hiddenColumns, (column, hidden) => {
    sheet.getColumn(column + 1).hidden = hidden;
  });
}

const places = (count: number, holds: (at: number) => boolean) =>
  Array.from({ length: count }, (_, at) => at).filter(holds);

function each(
  was: readonly number[] = [],
  is: readonly number[] = [],
  set: (at: number, hidden: boolean) => void,
): void {
  for (const at of is) if (!was.includes(at)) set(at, true);
  for (const at of was) if (!is.includes(at)) set(at, false);
}
