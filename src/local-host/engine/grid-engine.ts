import {
  type ILocales,
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
import "@univerjs/sheets-conditional-formatting/facade";
import "@univerjs/sheets-data-validation/facade";
import "@univerjs/sheets-note/facade";
import type { WorkbookData } from "../workbook-data";
import { addConditionalFormats } from "./conditional-formats";
import { RangeCache, registerCustomFunctions, Sentences } from "./custom-functions";
import type { DeclaredFunction } from "./declared-functions";
import { gridSnapshot } from "./snapshot";

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
  const cache = new RangeCache();
  // Services of the formula plug-in exist only once a workbook does; calculation starts later.
  registerCustomFunctions(injector, given.declared, given.call, sentences, cache);
  const formula = api.getFormula();
  formula.calculationStart(() => cache.clear());
  api.addEvent(api.Event.CommandExecuted, ({ id }) => {
    if (id !== "sheet.mutation.set-worksheet-name") return;
    // Formulas through a named range keep the tab's old name in the syntax-tree cache.
    (
      injector.get(IFunctionService) as unknown as { deleteFormulaAstCacheKey(key: string): void }
    ).deleteFormulaAstCacheKey("");
    setTimeout(() => formula.executeCalculation(), 150);
  });
  given.workbook.tabs.forEach((tab) => {
    const sheet = book.getSheetByName(tab.name);
    if (sheet) addConditionalFormats(sheet, tab.conditionalFormats);
  });
  for (const { name, ref } of given.workbook.names) book.insertDefinedName(name, ref);
  /** Cells filled by a formula that stands elsewhere. */
  const spilled = (tabId: string) =>
    injector.get(FormulaDataModel).getArrayFormulaCellData()?.[unitId]?.[tabId];

  return { univer, api, injector, book, formula, sentences, spilled, unitId };
}
