import type * as Excel from "exceljs";
import type { TabData } from "../../workbook-data";
import { argbOf } from "./cell-from-file";
import { formulaForFile } from "./formula-text";
import { rulesOf, type Sheet, setRules } from "./library";

/** Rules by formula are written anew; those of other kinds stay before them. */
export function writeRules(sheet: Sheet, { conditionalFormats }: TabData): void {
  const others = rulesOf(sheet)
    .map(({ ref, rules }) => ({ ref, rules: rules.filter(({ type }) => type !== "expression") }))
    .filter(({ rules }) => rules.length > 0);
  const first =
    1 + Math.max(0, ...others.flatMap(({ rules }) => rules.map((rule) => rule.priority ?? 0)));
  setRules(sheet, [
    ...others,
    ...conditionalFormats.map(({ ranges, formula, background, colour, bold, italic }, i) => ({
      ref: ranges.join(" "),
      rules: [
        {
          type: "expression",
          formulae: [formulaForFile(formula)],
          priority: first + i,
          style: {
            font: {
              ...(bold && { bold }),
              ...(italic && { italic }),
              ...(colour !== undefined && { color: { argb: argbOf(colour) } }),
            },
            ...(background !== undefined && {
              fill: { type: "pattern", pattern: "solid", bgColor: { argb: argbOf(background) } },
            }),
          } as Partial<Excel.Style>,
        },
      ],
    })),
  ]);
}
