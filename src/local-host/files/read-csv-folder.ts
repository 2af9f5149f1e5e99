import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, join } from "node:path";
import { accept, type Outcome, refuse } from "../../outcome";
import type { TabData, WorkbookData } from "../workbook-data";
import { csvTab } from "./csv-tab";
import { decodedText } from "./decoded-text";
import { type FileNote, fileNote } from "./file-note";
import { limits } from "./limits";

/** A workbook as read, and what to say about it. */
export type ReadWorkbook = {
  readonly workbook: WorkbookData;
  readonly notes: readonly FileNote[];
};

/** Tabs in the order a coach would lay them; any others follow by name. */
const usualOrder = "Squad,Athletes,Availability,Sets,Jumps,Diary,Runs,Races,Plates,Rules".split(
  ",",
);

/**
 * A folder of CSV files as one workbook, each file a tab of its name. Other files are left alone.
 *
 * @param own names of the add-on's functions, upper case
 * @returns refuses `no-csv` (nothing to open), `too-many-tabs`, `file-too-large`, what `csvTab` refuses
 */
export function readCsvFolder(folder: string, own: ReadonlySet<string>): Outcome<ReadWorkbook> {
  const files = readdirSync(folder)
    .filter((file) => /\.csv$/i.test(file) && !file.startsWith("."))
    .filter((file) => statSync(join(folder, file), { throwIfNoEntry: false })?.isFile())
    .sort((a, b) => place(a) - place(b) || (a < b ? -1 : 1));
  if (files.length === 0) return refuse("no-csv", { folder });
  if (files.length > limits.tabs) return refuse("too-many-tabs", { most: limits.tabs });
  const tabs: TabData[] = [];
  const notes: FileNote[] = [];
  for (const file of files) {
    const path = join(folder, file);
    if (statSync(path).size > limits.fileBytes) return refuse("file-too-large", { file });
    const { text, notes: aboutLetters } = decodedText(readFileSync(path), file);
    const tab = csvTab(tabName(file, tabs), text, own);
    if (!tab.ok) return tab;
    tabs.push(tab.value.tab);
    notes.push(...aboutLetters, ...tab.value.notes);
    if (tabNameOf(file) !== tab.value.tab.name) {
      notes.push(fileNote("tab-renamed", { file, tab: tab.value.tab.name }));
    }
  }
  return accept({
    workbook: { name: basename(folder), tabs, names: [], properties: {} },
    notes,
  });
}

function place(file: string): number {
  const at = usualOrder.indexOf(tabNameOf(file));
  return at < 0 ? usualOrder.length : at;
}

const tabNameOf = (file: string) => file.replace(/\.csv$/i, "");

/** A tab's name may not hold the signs that spreadsheets keep for themselves, nor stand twice. */
function tabName(file: string, tabs: readonly TabData[]): string {
  const bare = tabNameOf(file)
    .replace(/[[\]*?:/\\]/g, " ")
    .slice(0, 90);
  const taken = new Set(tabs.map(({ name }) => name.toLowerCase()));
  for (let count = 1; ; count++) {
    const name = count === 1 ? bare : `${bare} ${count}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}
