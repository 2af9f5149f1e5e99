import { createContext, runInContext } from "node:vm";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { volatileArgument } from "./engine/custom-functions";
import { createHost, type Host, type HostGiven } from "./host";

/** What became of a formula: its cells, or the sentence that refused it. */
export type Evaluated =
  | { readonly ok: true; readonly values: readonly (readonly unknown[])[] }
  | { readonly ok: false; readonly sentence: string };

/** The local workbook without a page, for the terminal and for tests. */
export function nodeHost(
  given: Pick<HostGiven, "workbook" | "script" | "files" | "hooks">,
): NodeHost {
  const host = createHost({
    ...given,
    locales: {},
    plugins: [
      [UniverFormulaEnginePlugin, {}],
      [UniverSheetsPlugin, {}],
      [UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED }],
      [UniverSheetsNumfmtPlugin, {}],
      [UniverDataValidationPlugin, {}],
      [UniverSheetsDataValidationPlugin, {}],
      [UniverSheetsConditionalFormattingPlugin, {}],
    ],
    realm: (globals, script) => {
      const context = createContext({ ...globals });
      runInContext(script, context, { filename: "code.js" });
      return context;
    },
  });
  return { ...host, settled: () => settled(host), evaluate: (formula) => evaluate(host, formula) };
}

export type NodeHost = Host & {
  /** Waits until all calculation under way has ended. */
  readonly settled: () => Promise<void>;
  /** Calculates one formula against the workbook, in a tab of its own that goes away again. */
  readonly evaluate: (formula: string) => Promise<Evaluated>;
};

/** Calculation starts 100 ms after a change: an end that comes sooner belongs to an older one. */
const debounceMs = 150;
const patienceMs = 120_000;

async function settled({ engine }: Host): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, debounceMs));
  await Promise.race([
    engine.formula.onCalculationEnd(),
    new Promise((resolve) => setTimeout(resolve, 400)),
  ]);
}

async function evaluate(host: Host, text: string): Promise<Evaluated> {
  const formula = text.startsWith("=") ? text : `=${text}`;
  const names = host.declared.map(({ name }) => name);
  const moving = volatileArgument(formula, names);
  if (moving !== null) {
    return {
      ok: false,
      sentence: `${moving}() changes by itself, and the online sheet never finishes loading a formula that is handed it. Type the day into a cell and give that cell.`,
    };
  }
  const { book } = host.engine;
  const tab = book.create(`Formula ${crypto.randomUUID().slice(0, 8)}`, 2000, 60, {});
  const id = tab.getSheetId();
  try {
    const ended = host.engine.formula.onCalculationEnd();
    tab.getRange(0, 0).setValue({ f: formula, v: null });
    const waited = await Promise.race([
      ended.then(() => true),
      new Promise<false>((resolve) => setTimeout(() => resolve(false), patienceMs)),
    ]);
    if (!waited) return { ok: false, sentence: "The formula did not finish in two minutes." };
    const sheet = host.spreadsheet().getSheetByName(tab.getSheetName());
    if (!sheet) return { ok: false, sentence: "The formula's tab went away." };
    const sentence = host.sentenceAt(id, 0, 0);
    if (sentence !== undefined) return { ok: false, sentence };
    const { rows, columns } = sheet.inside.extent();
    const values = sheet.getRange(1, 1, Math.max(1, rows), Math.max(1, columns)).getValues();
    const first = values[0]?.[0];
    if (typeof first === "string" && /^#[A-Z/0-9]+[!?]?$/.test(first)) {
      return { ok: false, sentence: formulaError(first) };
    }
    return { ok: true, values };
  } finally {
    book.deleteSheet(tab);
  }
}

const errorSentences = new Map([
  ["#NAME?", "The formula names a function or a range that does not exist."],
  ["#REF!", "The formula names a tab or cell that does not exist."],
  ["#SPILL!", "The result has no room: the cells beside it are not empty."],
  ["#VALUE!", "The formula is given something of the wrong kind."],
  ["#DIV/0!", "The formula divides by zero."],
  ["#N/A", "The formula found nothing."],
]);

function formulaError(code: string): string {
  return `${code}: ${errorSentences.get(code) ?? "the formula gives an error."}`;
}
