import { messageOf } from "./engine/custom-functions";
import { declaredFunctions } from "./engine/declared-functions";
import { type GridPlugin, gridEngine } from "./engine/grid-engine";
import { workbookFrom } from "./engine/workbook-from-grid";
import { platformServices } from "./services/platform-services";
import { ServiceCalls } from "./services/service-calls";
import type { ShellHooks } from "./services/spreadsheet";
import type { WorkbookData } from "./workbook-data";

/** A script's globals after it was evaluated in a realm of its own. */
export type Realm = Readonly<Record<string, unknown>>;

export type HostGiven = {
  readonly workbook: WorkbookData;
  /** `dist/code.js`, unmodified. */
  readonly script: string;
  /** HTML files of the script project, by name without ending. */
  readonly files: Readonly<Record<string, string>>;
  readonly hooks?: ShellHooks;
  readonly plugins: readonly GridPlugin[];
  readonly locales: object;
  readonly theme?: object;
  /** Evaluates a script with these globals. */
  readonly realm: (globals: Readonly<Record<string, unknown>>, script: string) => Realm;
};

export type Host = ReturnType<typeof createHost>;

/** The local workbook: the grid, the add-on's script, and the platform's services between them. */
export function createHost(given: HostGiven) {
  const calls = new ServiceCalls();
  const hooks = given.hooks ?? {};
  const services = platformServices({
    engine: () => engine,
    calls,
    hooks,
    files: given.files,
    properties: given.workbook.properties,
  });
  // The script's own realm shares this one's `Date`, so that a cell's date is a date to it.
  const realm = given.realm({ Date, ...services.globals }, given.script);
  const declared = declaredFunctions(given.script);
  const engine = gridEngine({
    workbook: given.workbook,
    plugins: given.plugins,
    locales: given.locales as never,
    ...(given.theme && { theme: given.theme }),
    declared,
    call: (name, args) => functionOf(realm, name)(...args),
  });

  /**
   * Calls a server function as `google.script.run` does: no private names, nothing but plain data
   * in either direction.
   */
  const run = (name: string, args: readonly unknown[]): unknown => {
    if (/_$/.test(name)) throw new Error(`Script function not found: ${name}`);
    const answer = functionOf(realm, name)(...args.map((arg) => plain(arg, "argument")));
    return answer === undefined ? null : plain(answer, "answer");
  };

  return {
    engine,
    calls,
    declared,
    run,
    spreadsheet: services.spreadsheet,
    /** Opens the add-on's menu, as the platform does after loading a workbook. */
    open: () => {
      if (typeof realm.onOpen === "function") realm.onOpen({ authMode: "FULL" });
    },
    /** The workbook as it stands, for saving. */
    workbook: (): WorkbookData =>
      workbookFrom(engine, services.spreadsheet(), services.properties()),
    /** The sentence of a refused formula, by place. */
    sentenceAt: (tabId: string, row: number, column: number) =>
      engine.sentences.get(tabId, row, column),
    dispose: () => engine.univer.dispose(),
  };
}

function functionOf(realm: Realm, name: string): (...args: unknown[]) => unknown {
  const found = realm[name];
  if (typeof found !== "function") throw new Error(`Script function not found: ${name}`);
  return found as (...args: unknown[]) => unknown;
}

/** Copies plain data; refuses what the bridge to the sidebar refuses. */
function plain(value: unknown, what: string): unknown {
  refuseUnplain(value, what);
  return JSON.parse(JSON.stringify(value));
}

function refuseUnplain(value: unknown, what: string): void {
  if (typeof value === "function" || typeof value === "symbol" || typeof value === "bigint") {
    throw new Error(`The ${what} holds a ${typeof value}, which the bridge cannot carry.`);
  }
  if (value === null || typeof value !== "object") return;
  const kind = Object.prototype.toString.call(value);
  if (kind !== "[object Object]" && kind !== "[object Array]") {
    throw new Error(`The ${what} holds ${kind}, which the bridge cannot carry: send text.`);
  }
  for (const part of Object.values(value)) refuseUnplain(part, what);
}

export { messageOf };
