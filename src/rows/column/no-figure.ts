import type { TableView } from "../table-view";
import { illnessIn, saysNoValue } from "../value/no-value";

/** True for a mark of no value where a figure would stand; that somebody was ill is kept in the log. */
export function saysNoFigure(view: TableView, row: number, column: number, text: string): boolean {
  if (!saysNoValue(text)) return false;
  if (illnessIn(text) !== "") view.log.keep(row, column, illnessIn(text));
  return true;
}
