import {
  type ILocales,
  IUndoRedoService,
  LocaleType,
  LogLevel,
  type Plugin,
  type PluginCtor,
  Univer,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel, IFunctionService } from "@univerjs/engine-formula";
import "@univerjs/sheets/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-numfmt/facade";
import type { WorkbookData } from "../workbook-data";
import { CalculationState } from "./calculation-state";
import { refuseCircles } from "./circles";
import { addConditionalFormats } from "./conditional-formats";
import { registerCustomFunctions } from "./custom-functions";
import type { DeclaredFunction } from "./declared-functions";
import { keepExactKeys } from "./exact-keys";
import { followReferences } from "./follow-references";
import { writeNote } from "./notes";
import { passPlainTabsBy } from "./passed-by";
import { RangeCache } from "./range-cache";
import { Sentences } from "./sentences";
import { type ColumnMove, columnMoveOf, type Shift, shiftOf } from "./shift";
import { gridSnapshot, tabIdAt } from "./snapshot";
import { tabChange } from "./tab-change";
import { setList } from "./validations";

export type GridPlugin = readonly [PluginCtor<Plugin>, object?];

/** The grid library with one workbook loaded and the custom functions known to it. */
export type GridEngine = ReturnType<typeof gridEngine>;

export function gridEngine(given: {
  readonly workbook: WorkbookData;
  readonly plugins: readonly GridPlugin[];
  readonly locales: ILocales[LocaleType];
  readonly theme?: object;
  readonly declared: readonly DeclaredFunction[];
  readonly call: (name: string, args: readonly unknown[]) => unknown;
}) {
  keepExactKeys();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: given.locales },
    logLevel: LogLevel.ERROR,
    ...(given.theme && { theme: given.theme as never }),
  });
  for (const [plugin, config] of given.plugins) univer.registerPlugin(plugin, config);
  const api = FUniver.newAPI(univer);
  const injector = univer.__getInjector();
  // The engine keeps formula results by unit id across engines: every workbook needs an id of its own.
  const unitId = `workbook-${crypto.randomUUID()}`;
  const book = api.createWorkbook(gridSnapshot(given.workbook, unitId));
  const sentences = new Sentences();
  const cache = new RangeCache(plainTabs(given.workbook));
  // Services of the formula plug-in exist only once a workbook does; calculation starts later.
  registerCustomFunctions(injector, given.declared, given.call, sentences, cache);
  refuseCircles(injector, sentences);
  followReferences(injector);
  passPlainTabsBy(injector, (tabId) => cache.isPlain(tabId));
  const formula = api.getFormula();
  const calculation = new CalculationState(api);
  formula.calculationStart(() => cache.startCalculation());
  const shiftWatchers = [sentences.shift.bind(sentences)];
  const moveWatchers: ((tabId: string, move: ColumnMove) => void)[] = [];
  const changeWatchers: (() => void)[] = [];
  api.addEvent(api.Event.CommandExecuted, ({ id, params, options }) => {
    if (isChange(id, options)) for (const watch of changeWatchers) watch();
    const changed = tabChange(id, params);
    if (changed) cache.change(changed);
    const moved = shiftOf(id, params);
    if (moved) for (const watch of shiftWatchers) watch(moved.tabId, moved.shift);
    const columns = columnMoveOf(id, params);
    if (columns) for (const watch of moveWatchers) watch(columns.tabId, columns.move);
    if (id === "sheet.mutation.set-worksheet-name") forgetTabNames(injector.get(IFunctionService));
  });
  for (const tab of given.workbook.tabs) {
    const sheet = book.getSheetByName(tab.name);
    if (!sheet) continue;
    addConditionalFormats(sheet, tab.conditionalFormats);
    for (const { range, ...list } of tab.validations) setList(api, sheet, range, list);
    tab.cells.forEach((line, row) => {
      line.forEach((cell, column) => {
        if (cell?.note) writeNote(sheet, row, column, cell.note);
      });
    });
  }
  for (const { name, ref } of given.workbook.names) book.insertDefinedName(name, ref);
  // Undo goes back to the workbook as it was opened, not to one whose lists are still to come.
  injector.get(IUndoRedoService).clearUndoRedo(unitId);

  let renamed: ReturnType<typeof setTimeout> | undefined;
  /** Formulas through a named range keep a renamed tab's old name in the syntax-tree cache. */
  function forgetTabNames(functions: IFunctionService): void {
    const cached = functions as unknown as { deleteFormulaAstCacheKey(key: string): void };
    cached.deleteFormulaAstCacheKey("");
    renamed = setTimeout(() => formula.executeCalculation(), 150);
  }

  return {
    univer,
    api,
    injector,
    book,
    formula,
    calculation,
    sentences,
    unitId,
    /** Cells filled by a formula that stands elsewhere. */
    spilled: (tabId: string) =>
      injector.get(FormulaDataModel).getArrayFormulaCellData()?.[unitId]?.[tabId],
    /** Rows and columns that the formula of a cell fills. */
    spread: (tabId: string, row: number, column: number): [number, number] => {
      const ranges = injector.get(FormulaDataModel).getArrayFormulaRange();
      const at = ranges?.[unitId]?.[tabId]?.[row]?.[column];
      return at ? [at.endRow - at.startRow + 1, at.endColumn - at.startColumn + 1] : [1, 1];
    },
    dispose: () => {
      clearTimeout(renamed);
      univer.dispose();
    },
    /** Tells of every change that a saved workbook would show. */
    onChange: (watch: () => void) => {
      changeWatchers.push(watch);
    },
    onShift: (watch: (tabId: string, shift: Shift) => void) => {
      shiftWatchers.push(watch);
    },
    onColumnsMoved: (watch: (tabId: string, move: ColumnMove) => void) => {
      moveWatchers.push(watch);
    },
  };
}

/** Ids of the tabs that hold no formula. */
function plainTabs({ tabs }: WorkbookData): Set<string> {
  const plain = new Set<string>();
  tabs.forEach(({ cells }, index) => {
    const some = cells.some((line) => line.some((cell) => cell?.formula !== undefined));
    if (!some) plain.add(tabIdAt(index));
  });
  return plain;
}

/**
 * Calculated values, highlights to be calculated and measured row heights come by themselves, and the
 * cell editor's text is no cell's yet: none of these is a change of the coach's.
 */
function isChange(id: string, options: object | undefined): boolean {
  const calculated = options && "fromFormula" in options && options.fromFormula;
  const ofWorkbook = /^(?:sheet|data-validation)\.mutation\.|\.mutation\..*defined-name/.test(id);
  return ofWorkbook && !calculated && !/auto-height|mark-dirty/.test(id);
}
