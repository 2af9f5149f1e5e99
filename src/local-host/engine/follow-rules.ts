import { type EffectRefRangeParams, EffectRefRangId } from "@univerjs/sheets";
import type { IFormulaHighlightCell } from "@univerjs/sheets-conditional-formatting";
import type { GridEngine } from "./grid-engine";
import { movedRuleFormula } from "./moved-references";
import { type Shift, shiftedPlace } from "./shift";

const commands = {
  row: [EffectRefRangId.InsertRowCommandId, EffectRefRangId.RemoveRowCommandId],
  column: [EffectRefRangId.InsertColCommandId, EffectRefRangId.RemoveColCommandId],
} as const;

/**
 * Conditional formats follow rows and columns, as in the online sheet. In the page the library's own
 * plug-in sees to it; without a page nothing does.
 */
export function followRules(engine: GridEngine): void {
  const { book, injector, unitId, api } = engine;
  engine.onShift((tabId, shift) => {
    const sheet = book.getSheetBySheetId(tabId);
    for (const rule of sheet?.getConditionalFormattingRules() ?? []) {
      const ranges = rule.ranges.flatMap((range) => shiftedPlace(range, shift) ?? []);
      const place = { unitId, subUnitId: tabId, cfId: rule.cfId };
      if (ranges.length === 0) {
        api.syncExecuteCommand("sheet.mutation.delete-conditional-rule", place);
        continue;
      }
      const look = rule.rule as IFormulaHighlightCell;
      const effect = effectOf(shift, unitId, tabId, sheet!.getMaxRows(), sheet!.getMaxColumns());
      const value = movedRuleFormula(injector, tabId, look.value, rule.ranges[0]!, effect);
      api.syncExecuteCommand("sheet.mutation.set-conditional-rule", {
        ...place,
        rule: { ...rule, ranges, rule: { ...look, value } },
      });
    }
  });
}

function effectOf(
  { along, removed, start, end }: Shift,
  unitId: string,
  subUnitId: string,
  rows: number,
  columns: number,
): EffectRefRangeParams {
  const range =
    along === "row"
      ? { startRow: start, endRow: end, startColumn: 0, endColumn: columns - 1 }
      : { startRow: 0, endRow: rows - 1, startColumn: start, endColumn: end };
  const id = commands[along][removed ? 1 : 0];
  return { id, params: { unitId, subUnitId, range } } as EffectRefRangeParams;
}
