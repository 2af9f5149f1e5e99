import type { FWorksheet } from "@univerjs/sheets/facade";
import { declaredFunctions } from "./engine/declared-functions";
import { type GridPlugin, gridEngine } from "./engine/grid-engine";
import { oneUndo } from "./engine/one-undo";
import { workbookFrom } from "./engine/workbook-from-grid";
import { plainData } from "./plain-data";
import { platformServices } from "./services/platform-services";
import { ServiceCalls } from "./services/service-calls";
import type { Sheet } from "./services/sheet";
import type { MenuItem, ShellHooks } from "./services/spreadsheet";
import type { WorkbookData } from "./workbook-data";

/** A script's globals after it was evaluated in a realm of its own. */
export type Realm = Readonly<Record<string, unknown>>;

export type HostGiven = {
  readonly workbook: WorkbookData;
  /** `dist/code.js`, unmodified. */
  readonly bundleSource: string;
  /** HTML files of the script project, by name without ending. */
  readonly files: Readonly<Record<string, string>>;
  readonly hooks?: ShellHooks;
  readonly plugins: readonly GridPlugin[];
  readonly locales: object;
  readonly theme?: object;
  /** Evaluates a script with these globals. */
  readonly realm: (globals: Readonly<Record<string, unknown>>, source: string) => Realm;
};

export type Host = ReturnType<typeof createHost>;
export type Menu = { readonly title: string; readonly items: readonly MenuItem[] };

/** The local workbook: the grid, the add-on's script, and the platform's services between them. */
export function createHost(given: HostGiven) {
  const calls = new ServiceCalls();
  const menus: Menu[] = [];
  const watchers: (() => void)[] = [];
  const hooks: ShellHooks = {
    ...given.hooks,
    menu: (title, items) => {
      menus.push({ title, items });
      given.hooks?.menu?.(title, items);
    },
  };
  const services = platformServices({
    engine: () => engine,
    calls,
    hooks,
    files: given.files,
    properties: given.workbook.properties,
    propertiesChanged: () => {
      for (const watch of watchers) watch();
    },
  });
  // The script's own realm shares this one's `Date`, so that a cell's date is a date to it.
  const realm = given.realm({ Date, ...services.globals }, given.bundleSource);
  const declared = declaredFunctions(given.bundleSource);
  const engine = gridEngine({
    workbook: given.workbook,
    plugins: given.plugins,
    locales: given.locales as never,
    ...(given.theme && { theme: given.theme }),
    declared,
    call: (name, args) => calls.asFormula(() => functionOf(realm, name)(...args)),
  });

  /** A tab as scripts see it. Throws when there is none of that name. */
  const tab = (name: string): Sheet => {
    const sheet = services.spreadsheet().getSheetByName(name);
    if (!sheet) throw new Error(`There is no tab named ${name}.`);
    return sheet;
  };

  return {
    engine,
    calls,
    declared,
    menus,
    tab,
    spreadsheet: services.spreadsheet,
    /** Values of a tab from A1 to its last content, as scripts read them. */
    values: (name: string): unknown[][] => tab(name).getDataRange().getValues(),
    /** Writes rows of values into a range, as a script would. */
    write: (name: string, range: string, values: readonly (readonly unknown[])[]) => {
      tab(name).getRange(range).setValues(values);
    },
    /** Takes back the last change made through the grid. */
    undo: () => {
      engine.book.undo();
    },
    redo: () => {
      engine.book.redo();
    },
    /**
     * Calls a server function as `google.script.run` does: no private names, nothing but plain data
     * in either direction.
     */
    run: (name: string, args: readonly unknown[] = []): unknown => {
      if (/_$/.test(name)) throw new Error(`Script function not found: ${name}`);
      const called = functionOf(realm, name);
      services.runStarted();
      try {
        const given = args.map((arg) => plainData(arg, "argument"));
        const answer = oneUndo(engine.injector, engine.unitId, () => called(...given));
        return answer === undefined ? null : plainData(answer, "answer");
      } finally {
        services.runEnded();
      }
    },
    /** Tells of every change that a saved workbook would show. */
    onChange: (watch: () => void) => {
      watchers.push(watch);
      engine.onChange(watch);
    },
    /** Opens the add-on's menu, as the platform does after loading a workbook. */
    open: () => {
      if (typeof realm.onOpen === "function") realm.onOpen({ authMode: "FULL" });
    },
    /** Waits until no calculation runs or is due. Rejects after `patienceMs`, two minutes if not said. */
    settled: (patienceMs?: number) => engine.calculation.settled(patienceMs),
    /** Rows and columns that the formula in A1 of a tab fills. */
    spread: (sheet: FWorksheet): [number, number] => engine.spread(sheet.getSheetId(), 0, 0),
    /** The workbook as it stands, for saving. */
    workbook: (): WorkbookData =>
      workbookFrom(engine, services.plainSpreadsheet(), services.properties()),
    /** The sentence of a refused formula, by place. */
    sentenceAt: (tabId: string, row: number, column: number) =>
      engine.sentences.get(tabId, row, column),
    dispose: engine.dispose,
  };
}

/**
 * A function that the script declares at its top, and none of those a realm has by itself: through
 * them a page in the sidebar could open windows or run text.
 */
function functionOf(realm: Realm, name: string): (...args: unknown[]) => unknown {
  const found = Object.hasOwn(realm, name) ? realm[name] : undefined;
  const text = typeof found === "function" ? Function.prototype.toString.call(found) : "";
  const declared = text.startsWith(`function ${name}(`) && !/\[native code\]\s*\}$/.test(text);
  if (!declared) throw new Error(`Script function not found: ${name}`);
  return found as (...args: unknown[]) => unknown;
}
