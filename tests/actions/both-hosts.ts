import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Done } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { standingText } from "../../src/actions/week/cell-text";
import { readCsvFolder } from "../../src/local-host/files/read-csv-folder";
import { local } from "../local-host/built";
import { sampleClub } from "./sample-club";

/** What a writing test needs of a workbook, whichever host holds it. */
export type HeldWorkbook = {
  readonly ask: (name: string, message: Readonly<Record<string, unknown>>) => Done;
  /** What stands in each cell, formulas as written; blank ends of rows and tab cut off. */
  readonly standing: (tab: string) => string[][];
  readonly type: (tab: string, row: number, column: number, value: string | number) => void;
  readonly close: () => void;
};

type Reading = { readonly values: readonly unknown[][]; readonly formulas: readonly string[][] };

function standing({ values, formulas }: Reading): string[][] {
  const texts = values.map((row, i) => {
    const line = row.map((value, j) => standingText(value, formulas[i]?.[j] ?? ""));
    return line.slice(0, line.findLastIndex((text) => text !== "") + 1);
  });
  return texts.slice(0, texts.findLastIndex((row) => row.length > 0) + 1);
}

/** The club's sample in memory. */
async function inMemory(): Promise<HeldWorkbook> {
  const book = sampleClub();
  return {
    ask: (name, message) => serveRequest(book, name, message) as Done,
    standing: (tab) => {
      const { id } = book.tabNamed(tab);
      return standing({
        values: book.values(id).map((row) => [...row]),
        formulas: book.formulas(id).map((row) => [...row]),
      });
    },
    type: book.type,
    close: () => {},
  };
}

/** The same sample behind the built script and the platform's services, as strict as they are. */
async function onThePlatform(): Promise<HeldWorkbook> {
  const read = readCsvFolder(join(__dirname, "../../sample-sheets"), new Set());
  if (!read.ok) throw new Error(read.refusal.code);
  const host = await local.openHost({
    workbook: read.value.workbook,
    bundleSource: readFileSync(join(__dirname, "../../dist/code.js"), "utf8"),
    files: {},
  });
  return {
    ask: (name, message) => host.run(name, [message]) as Done,
    standing: (tab) => {
      const range = host.tab(tab).getDataRange();
      return standing({ values: range.getValues(), formulas: range.getFormulas() });
    },
    type: (tab, row, column, value) => {
      host.tab(tab).getRange(row, column).setValue(value);
    },
    close: host.dispose,
  };
}

export const bothHosts = [
  ["a workbook in memory", inMemory],
  ["the platform's services", onThePlatform],
] as const;
