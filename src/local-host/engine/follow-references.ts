import type { IDisposable, Injector, IRange } from "@univerjs/core";
import {
  type EffectRefRangeParams,
  handleCommonDefaultRangeChangeWithEffectRefCommands,
} from "@univerjs/sheets";
import { FormulaRefRangeService } from "@univerjs/sheets-formula";
import { movedReferences, movedRuleFormula, movesLines } from "./moved-references";

type Handler = (command: EffectRefRangeParams) => unknown;
type Watched = { registerRefRange: (range: IRange, then: Handler, ...of: string[]) => IDisposable };
type Inside = {
  readonly _refRangeService: Watched;
  registerRangeFormula: (
    unitId: string,
    tabId: string,
    ranges: IRange[],
    formulas: string[],
    then: (parts: readonly { formulas: string[]; ranges: IRange[] }[]) => unknown,
  ) => IDisposable;
};

/** All of a tab: whatever row or column moves, a formula may name one behind it. */
const everywhere = { startRow: 0, endRow: 10_000_000, startColumn: 0, endColumn: 1_000_000 };

/**
 * Highlights follow their rows and columns with all their references, as in the online sheet, and one
 * highlight stays one. The library leaves those with "$" where they are, and any that name a tab
 * which is not open. Cells moved by themselves are left to the library.
 */
export function followReferences(injector: Injector): void {
  const service = injector.get(FormulaRefRangeService) as unknown as Inside;
  const watched = service._refRangeService;
  const register = service.registerRangeFormula;
  service.registerRangeFormula = (unitId, tabId, ranges, formulas, then) => {
    const moved = (command: EffectRefRangeParams) => {
      const { subUnitId } = command.params as { readonly subUnitId?: string };
      const elsewhere = subUnitId !== undefined && subUnitId !== tabId;
      const now = elsewhere
        ? ranges
        : ranges.flatMap((range) =>
            handleCommonDefaultRangeChangeWithEffectRefCommands(range, command),
          );
      const after = (formula: string) =>
        elsewhere
          ? movedReferences(injector, tabId, formula, command)
          : movedRuleFormula(injector, tabId, formula, ranges[0]!, command);
      return then(now.length > 0 ? [{ ranges: now, formulas: formulas.map(after) }] : []);
    };
    let other: Handler = () => ({ undos: [], redos: [] });
    const either: Handler = (command) => (movesLines(command) ? moved(command) : other(command));
    const registered = register.call(
      Object.create(service, {
        _refRangeService: {
          value: {
            registerRefRange: (range: IRange, library: Handler, ...of: string[]) => {
              other = library;
              return watched.registerRefRange(range, either, ...of);
            },
          },
        },
      }),
      unitId,
      tabId,
      ranges,
      formulas,
      then,
    );
    const all = watched.registerRefRange(everywhere as IRange, either, unitId, tabId);
    return {
      dispose: () => {
        registered.dispose();
        all.dispose();
      },
    };
  };
}
