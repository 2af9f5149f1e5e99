import { readFileSync, statSync } from "node:fs";
import { basename, resolve } from "node:path";
import type { Outcome, Refusal } from "../../outcome";
import type { GivenFile, OpenedWorkbook, WorkbookStore } from "../server/workbook-store";
import type { WorkbookData } from "../workbook-data";
import { fileSentence } from "./file-sentences";
import { isCsv, type ReadWorkbook, readCsvFiles } from "./read-csv-folder";
import { readWorkbook } from "./read-workbook";
import { type Stamp, saveSafely, stampOf } from "./save-safely";
import { readXlsx } from "./xlsx/read-xlsx";
import { writeXlsx } from "./xlsx/write-xlsx";

/** Where the open workbook is kept, and the bytes of the file it came from. */
type Kept = {
  readonly path: string | null;
  readonly original: Uint8Array | null;
  stamp: Stamp | null;
};

/**
 * Workbooks in files: an .xlsx file is written back in place; a folder of CSV files is kept as an
 * .xlsx file beside it, from its first change on. Each function rejects with a sentence.
 *
 * @param given.path null opens the sample
 * @param given.own names of the add-on's functions, upper case
 */
export function fileStore(given: {
  readonly path: string | null;
  readonly sample: string;
  readonly own: ReadonlySet<string>;
}): WorkbookStore {
  const { own, sample } = given;
  let kept: Kept = { path: null, original: null, stamp: null };
  let saving: Promise<unknown> = Promise.resolve();

  const openSample = async (): Promise<OpenedWorkbook> => {
    kept = { path: null, original: null, stamp: null };
    return opened(taken(await readWorkbook(sample, own)), null);
  };
  const openPath = async (path: string): Promise<OpenedWorkbook> => {
    const read = taken(await readWorkbook(path, own));
    if (statSync(path).isDirectory()) {
      const place = `${resolve(path)}.xlsx`;
      const free = stampOf(place) === null;
      kept = { path: free ? place : null, original: null, stamp: null };
      return opened(read, kept.path);
    }
    kept = { path, original: readFileSync(path), stamp: stampOf(path) };
    return opened(read, path);
  };
  const save = async (workbook: WorkbookData): Promise<void> => {
    const { path, original, stamp } = kept;
    if (path === null) throw new Error("This workbook is kept nowhere yet: save it as a file.");
    const bytes = taken(await writeXlsx(workbook, original, "in place", own));
    kept = { path, original: bytes, stamp: taken(saveSafely(path, bytes, stamp)) };
    // A folder's workbook stands in this file from now on.
    current = () => openPath(path);
  };
  const openGiven = async (files: readonly GivenFile[]): Promise<OpenedWorkbook> => {
    const read = taken(await readGiven(files, own));
    const only = files.length === 1 && !isCsv(files[0]!.name) ? files[0]! : null;
    kept = { path: null, original: only?.bytes ?? null, stamp: null };
    return opened(read, null);
  };
  /** What a page loaded anew shows: the workbook opened last. */
  let current = (): Promise<OpenedWorkbook> =>
    given.path === null ? openSample() : openPath(given.path);
  const openedBy = async (open: () => Promise<OpenedWorkbook>): Promise<OpenedWorkbook> => {
    const workbook = await open();
    current = open;
    return workbook;
  };
  return {
    opened: () => current(),
    sample: () => openedBy(openSample),
    imported: (files) => openedBy(() => openGiven(files)),
    // One after another: two saves at once would take each other for another program.
    save: (workbook) => {
      const next = saving.then(() => save(workbook));
      saving = next.catch(() => undefined);
      return next;
    },
    exported: async (workbook) => taken(await writeXlsx(workbook, kept.original, "a copy", own)),
  };
}

/** Files picked or dropped: one .xlsx file, or CSV files that make one workbook. */
async function readGiven(
  files: readonly GivenFile[],
  own: ReadonlySet<string>,
): Promise<Outcome<ReadWorkbook>> {
  const [first] = files;
  if (files.length === 1 && first && /\.xlsx$/i.test(first.name)) {
    return readXlsx(basename(first.name).replace(/\.xlsx$/i, ""), first.bytes);
  }
  const csv = files.filter(({ name }) => isCsv(basename(name)));
  if (csv.length === 0 || csv.length < files.length) {
    throw new Error("Give one .xlsx file, or CSV files only, each named for its table.");
  }
  const named = csv.map(({ name, bytes }) => ({ name: basename(name), bytes }));
  return readCsvFiles("Workbook", named, own);
}

function opened({ workbook, notes }: ReadWorkbook, place: string | null): OpenedWorkbook {
  return { workbook, place, notes: notes.map(fileSentence) };
}

function taken<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(fileSentence(outcome.refusal satisfies Refusal));
}
