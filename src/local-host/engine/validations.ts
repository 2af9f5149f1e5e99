import { DataValidationRenderMode, DataValidationType } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { deserializeListOptions } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import "@univerjs/sheets-data-validation/facade";
import { type Rectangle, rangeName, rectangle } from "../a1";
import type { Validation } from "../workbook-data";

/** Gives a range its list of values; no list takes the rule away. */
export function setList(
  api: FUniver,
  sheet: FWorksheet,
  range: string,
  list: Omit<Validation, "range"> | null,
): void {
  const size = { rows: sheet.getMaxRows(), columns: sheet.getMaxColumns() };
  const at = rectangle(range, size);
  if (!at) return;
  const cells = sheet.getRange(
    at.startRow,
    at.startColumn,
    at.endRow - at.startRow + 1,
    at.endColumn - at.startColumn + 1,
  );
  if (!list) {
    cells.setDataValidation(null);
    return;
  }
  const refuses = list.refusesOthers ?? true;
  const rule = api
    .newDataValidation()
    .requireValueInList([...list.values])
    .setAllowInvalid(!refuses)
    .setOptions({
      // An arrow beside the cell: a name can be typed straight in, the list opens from the arrow.
      renderMode: DataValidationRenderMode.ARROW,
      showErrorMessage: refuses,
      error: list.help ?? `Choose one of: ${list.values.join(", ")}.`,
      ...(list.help !== undefined && { prompt: list.help, showInputMessage: true }),
    })
    .build();
  cells.setDataValidation(rule);
}

/** The tab's lists as they stand now, after rows moved. */
export function lists(sheet: FWorksheet): Validation[] {
  return sheet.getDataValidations().flatMap((validation) => {
    const { rule } = validation;
    if (rule.type !== DataValidationType.LIST || rule.formula1 === undefined) return [];
    const values = deserializeListOptions(rule.formula1);
    return rule.ranges.map((range: Rectangle) => ({
      range: rangeName(range),
      values,
      ...(validation.getAllowInvalid() && { refusesOthers: false }),
      ...(rule.prompt !== undefined && { help: rule.prompt }),
    }));
  });
}
