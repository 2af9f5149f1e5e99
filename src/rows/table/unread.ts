import type { Cells } from "../cells";
import type { IssueLog } from "../issue-log";
import type { Reading } from "../reading";
import { isBlankLine } from "./read-lines";

/** A reading of nothing: every filled row below the header is reported. */
export function unread(log: IssueLog, cells: Cells, headerRow: number): Reading<never> {
  let rowsBlank = 0;
  let rowsHeading = 0;
  for (let row = 0; row < cells.length; row++)
    if (isBlankLine(cells[row]!)) rowsBlank++;
    else if (row <= headerRow) rowsHeading++;
  const rowsReported = cells.length - rowsBlank - rowsHeading;
  return { records: [], issues: log.issues, rowsRead: 0, rowsReported, rowsBlank, rowsHeading };
}
