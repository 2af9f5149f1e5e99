import type { NumberStyle } from "../../words/printed-numbers";
import type { ReadWorkbook } from "../read-workbook";
import type { Workbook } from "../workbook";

/**
 * The unit and decimal mark of the coach's own rows: pounds when most columns of masses are in
 * pounds, a decimal comma when more cells typed as text carry one than carry a point. Cells that hold
 * a number have no mark of their own.
 */
export function numberStyle(workbook: Workbook, { tabs }: ReadWorkbook): NumberStyle {
  const masses = tabs.flatMap(({ understanding }) =>
    understanding.columns.filter(
      ({ field, unit }) => (field === "mass" || field === "load") && unit !== null,
    ),
  );
  const pounds = masses.filter(({ unit }) => unit === "lb").length;
  let commas = 0;
  let points = 0;
  for (const { table, tab } of tabs) {
    if (table !== "Sets") continue;
    for (const cell of workbook.values(tab.id).flat()) {
      if (typeof cell !== "string") continue;
      if (/^\s*\d*,\d{1,2}(?=[\s;]|$)/.test(cell)) commas++;
      else if (/^\s*\d*\.\d{1,2}(?=[\s;,]|$)/.test(cell)) points++;
    }
  }
  return {
    unit: masses.length > 0 && pounds > masses.length / 2 ? "lb" : "kg",
    mark: commas > points ? "," : ".",
  };
}
