import type { NumberStyle } from "../words/printed-numbers";
import type { ReadWorkbook } from "./read-workbook";

/** Rows enough to tell a decimal mark by: the latest, as a coach may have moved from one to the other. */
const tellingRows = 2000;

/**
 * The unit and decimal mark of the coach's own rows: pounds when most columns of masses are in
 * pounds, a decimal comma when more cells typed as text carry one than carry a point. Cells that hold
 * a number have no mark of their own: where no text tells, the spreadsheet's language does.
 */
export function numberStyle({ tabs, cells, ownMark }: ReadWorkbook): NumberStyle {
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
    for (const cell of cells(tab.id).slice(-tellingRows).flat()) {
      if (typeof cell !== "string") continue;
      if (/^\s*\d*,\d{1,2}(?=[\s;]|$)/.test(cell)) commas++;
      else if (/^\s*\d*\.\d{1,2}(?=[\s;,]|$)/.test(cell)) points++;
    }
  }
  return {
    unit: masses.length > 0 && pounds > masses.length / 2 ? "lb" : "kg",
    mark: commas === points ? ownMark() : commas > points ? "," : ".",
  };
}
