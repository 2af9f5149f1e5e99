import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { accept, type Outcome, refuse } from "../../outcome";
import type { TabData, WorkbookData } from "../workbook-data";
import { csvTab } from "./csv-tab";
import { decodedText } from "./decoded-text";
import { dressedRowCheck } from "./dressed-row-check";
import { dressedSquad } from "./dressed-squad";
import { type FileNote, fileNote } from "./file-note";
import { limits } from "./limits";
import { fittingTabName } from "./tab-names";

/** A workbook as read, and what to say about it. */
export type ReadWorkbook = {
  readonly workbook: WorkbookData;
  readonly notes: readonly FileNote[];
};

/** Tabs in the order a coach would lay them; any others follow by name. */
const usualOrder = "Squad,Athletes,Availability,Sets,Jumps,Diary,Runs,Races,Plates,Rules".split(
  ",",
);

/** One file as it was picked, dropped or found. */
export type GivenFile = { readonly name: string; readonly bytes: Uint8Array };

/**
 * A folder of CSV files as one workbook, each file a tab of its name. Other files are left alone.
 *
 * @param own names of the add-on's functions, upper case
 * @returns refuses `no-csv` (nothing to open), `file-too-large`, what `readCsvFiles` refuses
 */
export function readCsvFolder(folder: string, own: ReadonlySet<string>): Outcome<ReadWorkbook> {
  const given: GivenFile[] = [];
  for (const name of readdirSync(folder)) {
    const path = join(folder, name);
    const found = statSync(path, { throwIfNoEntry: false });
    if (!isCsv(name) || !found?.isFile()) continue;
    if (found.size > limits.fileBytes) return refuse("file-too-large", { file: name });
    given.push({ name, bytes: readFileSync(path) });
  }
  if (given.length === 0) return refuse("no-csv", { folder });
  return readCsvFiles(basename(resolve(folder)), given, own);
}

/**
 * CSV files as one workbook.
 *
 * @returns refuses `too-many-tabs`, `csv-not-text`, `csv-empty` (not one cell in all of them) and what
 * `csvTab` refuses
 */
export function readCsvFiles(
  name: string,
  given: readonly GivenFile[],
  own: ReadonlySet<string>,
): Outcome<ReadWorkbook> {
  const files = [...given].sort(
    (a, b) => place(a.name) - place(b.name) || (a.name < b.name ? -1 : 1),
  );
  if (files.length > limits.tabs) return refuse("too-many-tabs", { most: limits.tabs });
  const tabs: TabData[] = [];
  const notes: FileNote[] = [];
  for (const file of files) {
    const decoded = decodedText(file.bytes, file.name);
    if (decoded === null) return refuse("csv-not-text", { file: file.name });
    const { text, notes: aboutLetters } = decoded;
    const taken = new Set(tabs.map(({ name: other }) => other.toLowerCase()));
    const tab = csvTab(fittingTabName(tabNameOf(file.name), taken), text, own);
    if (!tab.ok) return tab;
    tabs.push(dressedRowCheck(dressedSquad(tab.value.tab)));
    notes.push(...aboutLetters, ...tab.value.notes);
    if (tabNameOf(file.name) !== tab.value.tab.name) {
      notes.push(fileNote("tab-renamed", { file: file.name, tab: tab.value.tab.name }));
    }
  }
  if (tabs.every(({ cells }) => cells.length === 0)) {
    return refuse("csv-empty", { files: files.map((file) => file.name).join(", ") });
  }
  return accept({ workbook: { name, tabs, names: [], properties: {} }, notes });
}

/** Whether a file's name is that of a CSV file; hidden ones are left alone. */
export function isCsv(name: string): boolean {
  return /\.csv$/i.test(name) && !name.startsWith(".");
}

function place(file: string): number {
  const at = usualOrder.indexOf(tabNameOf(file));
  return at < 0 ? usualOrder.length : at;
}

const tabNameOf = (file: string) => file.replace(/\.csv$/i, "");
