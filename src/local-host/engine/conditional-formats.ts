import { BooleanNumber } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import {
  CFRuleType,
  CFSubRuleType,
  type IConditionFormattingRule,
} from "@univerjs/sheets-conditional-formatting";
import "@univerjs/sheets-conditional-formatting/facade";
import { rangeName, rectangle } from "../a1";
import { hexColour } from "../hex-colour";
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

/** The tab's rules as they stand now, after rows moved, first to be tried first. */
export function conditionalFormats(sheet: FWorksheet): ConditionalFormat[] {
  return sheet.getConditionalFormattingRules().flatMap((rule) => {
    const look = lookOf(rule.rule);
    return look ? [{ ranges: rule.ranges.map(rangeName), ...look }] : [];
  });
}

function lookOf(rule: IConditionFormattingRule["rule"]): Omit<ConditionalFormat, "ranges"> | null {
  if (rule.type !== CFRuleType.highlightCell || rule.subType !== CFSubRuleType.formula) return null;
  const { style, value } = rule;
  return {
    formula: value,
    ...(style.bg?.rgb && { background: hexColour(style.bg.rgb) }),
    ...(style.cl?.rgb && { colour: hexColour(style.cl.rgb) }),
    ...(style.bl === BooleanNumber.TRUE && { bold: true }),
    ...(style.it === BooleanNumber.TRUE && { italic: true }),
  };
}
