import { numberCell } from "../column/number-cell";
import type { Column } from "../header/column";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { saysNoValue } from "../value/no-value";

const mostPercent = 10;

/**
 * Reader of an athlete's own step up in load as a fraction, 0–0.1: a cell shown as percent arrives as
 * a fraction, a plain number from 1 on and text with its sign are percent. Reports `not-a-number` and
 * `implausible`, as anything between 0.1 and 1 might be either.
 */
export function stepShareColumn(
  view: TableView,
  { index, heading }: Column,
): CellReader<number | null> {
  return (line, row) => {
    const cell = line[index];
    if (isBlank(cell) || (typeof cell === "string" && saysNoValue(cell))) return null;
    const said = typeof cell === "string" ? numberCell(cell) : null;
    const percent = said?.unit?.name === "%";
    if (said?.unsure) {
      view.log.add("unsure", row, index, cell, { mend: said.value, heading });
      return null;
    }
    const number = typeof cell === "number" ? cell : (said?.value ?? Number.NaN);
    if (!Number.isFinite(number)) {
      view.log.add("not-a-number", row, index, cell, { heading });
      return null;
    }
    const share = percent || number >= 1 ? number / 100 : number;
    if (share >= 0 && share <= mostPercent / 100) return share;
    view.log.add("implausible", row, index, cell, {
      low: 0,
      high: mostPercent,
      unit: "%",
      heading,
    });
    return null;
  };
}
