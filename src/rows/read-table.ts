import type { Cells } from "./cells";
import { neededFields } from "./header/columns";
import { findHeader } from "./header/find-header";
import { IssueLog } from "./issue-log";
import type { Reading } from "./reading";
import { isBlankLine } from "./table/read-lines";
import { type RowOf, viewReaders } from "./table/read-view";
import { endOfRows } from "./table/trim-padding";
import type { TableName } from "./table-name";

/**
 * Reads a range as one of the tables: finds its header, then turns every row into a record or into
 * issues by cell. Nothing is thrown for bad cells and nothing is left out unsaid: the four counts add
 * up to the rows given.
 *
 * Issues for the whole table: `no-header`, `column-missing` (facts `field`, `known`).
 */
export function readTable<T extends TableName>(table: T, cells: Cells): Reading<RowOf[T]> {
  const end = endOfRows(cells);
  const log = new IssueLog(table);
  const header = findHeader(table, cells, end);
  if (header === null || header.missing.length > 0) {
    if (end > 0) {
      if (header === null)
        log.add(
          "no-header",
          0,
          -1,
          cells[0]?.[0],
          { needed: neededFields[table].join(", ") },
          true,
        );
      else
        for (const field of header.missing)
          log.add("column-missing", header.row, -1, "", { field }, true);
    }
    return unread(log, cells, header === null ? -1 : header.row);
  }
  return viewReaders[table]({
    table,
    cells,
    headerRow: header.row,
    first: header.row + 1,
    end,
    fields: header.fields,
    repColumns: header.repColumns,
    year: null,
    log,
  });
}

/** A reading of nothing: every filled row below the header is reported. */
function unread(log: IssueLog, cells: Cells, headerRow: number): Reading<never> {
  let rowsBlank = 0;
  let rowsHeading = 0;
  for (let row = 0; row < cells.length; row++)
    if (isBlankLine(cells[row] ?? [])) rowsBlank++;
    else if (row <= headerRow) rowsHeading++;
  const rowsReported = cells.length - rowsBlank - rowsHeading;
  return { records: [], issues: log.issues, rowsRead: 0, rowsReported, rowsBlank, rowsHeading };
}
