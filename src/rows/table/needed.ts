import type { Column } from "../header/column";
import type { TableView } from "../table-view";
import { isErrorCell } from "../value/error-cell";

/** Reports a needed cell that is blank or a formula's error, with its row; gives null so that callers can return it. */
export function reportBlank(view: TableView, column: Column | undefined, row: number): null {
  const { index, heading } = column!;
  const cell = view.cells[row]![index];
  if (isErrorCell(cell)) view.log.add("cell-error", row, index, cell, {}, true);
  else view.log.add("needed-blank", row, index, "", { heading }, true);
  return null;
}

/** Reports a row that repeats an earlier one; the earlier one stays. */
export function reportDoubled(view: TableView, row: number, earlier: number): null {
  view.log.add("doubled-row", row, -1, "", { earlierRow: view.log.rowNumber(earlier) }, true);
  return null;
}
