import type { FWorksheet } from "@univerjs/sheets/facade";
import "@univerjs/sheets-conditional-formatting/facade";
import { rectangle } from "../a1";
import type { ConditionalFormat } from "../workbook-data";

/** Adds rules so that the first of the list is the first to be tried. */
export function addConditionalFormats(
  sheet: FWorksheet,
  rules: readonly ConditionalFormat[],
): void {
  const size = { rows: sheet.getMaxRows(), columns: sheet.getMaxColumns() };
  for (const rule of [...rules].reverse()) {
    const ranges = rule.ranges.flatMap((range) => rectangle(range, size) ?? []);
    if (ranges.length === 0) continue;
    let made = sheet
      .newConditionalFormattingRule()
      .whenFormulaSatisfied(rule.formula)
      .setRanges(ranges.map((range) => ({ ...range })));
    if (rule.background !== undefined) made = made.setBackground(rule.background);
    if (rule.colour !== undefined) made = made.setFontColor(rule.colour);
    if (rule.bold) made = made.setBold(true);
    if (rule.italic) made = made.setItalic(true);
    sheet.addConditionalFormattingRule(made.build());
  }
}
