import { mostlyPounds } from "../rows/header/mostly-pounds";
import { decimalMarkIn } from "../rows/value/decimal-mark";
import type { NumberStyle } from "../words/printed-numbers";
import type { ReadWorkbook } from "./read-workbook";

/**
 * The unit and decimal mark of the coach's own rows: pounds when most columns of masses are in pounds;
 * the mark of the sets typed as text, or where none tells, of the spreadsheet's language.
 */
export function numberStyle({ tabs, cells, ownMark }: ReadWorkbook): NumberStyle {
  const sets = tabs.flatMap(({ table, tab }) => (table === "Sets" ? [cells(tab.id)] : []));
  return {
    unit: mostlyPounds(tabs.flatMap(({ understanding }) => understanding.columns)) ? "lb" : "kg",
    mark: decimalMarkIn(sets) ?? ownMark(),
  };
}
