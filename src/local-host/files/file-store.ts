import { readFileSync } from "node:fs";
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

/** Where the workbook of one opening is kept, and the file as that opening saw it last. */
type Kept = {
  readonly path: string | null;
  readonly original: Uint8Array | null;
  readonly stamp: Stamp | null;
};

const nowhere: Kept = { path: null, original: null, stamp: null };

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
  const openings = new Map<number, Kept>();
  const written = new Set<string>();
  let saving: Promise<unknown> = Promise.resolve();

  const opened = ({ workbook, notes }: ReadWorkbook, kept: Kept): OpenedWorkbook => {
    const opening = openings.size;
    openings.set(opening, kept);
    return { opening, workbook, place: kept.path, notes: notes.map(fileSentence) };
  };
  const keptOf = (opening: number): Kept => {
    const kept = openings.get(opening);
    if (kept === undefined) throw new Error("The program does not know this page: load it again.");
    return kept;
  };
  const openSample = async () => opened(taken(await readWorkbook(sample, own)), nowhere);
  const openPath = async (path: string): Promise<OpenedWorkbook> => {
    const place = `${resolve(path)}.xlsx`;
    // A folder's workbook stands in its file once it was saved.
    if (written.has(place)) return openPath(place);
    // Taken before reading: who writes meanwhile is not written over.
    const stamp = stampOf(path);
    const read = taken(await readWorkbook(path, own));
    if (stamp !== null) return opened(read, { path, original: readFileSync(path), stamp });
    const free = stampOf(place) === null;
    return opened(read, { ...nowhere, path: free ? place : null });
  };
  const save = async (opening: number, workbook: WorkbookData): Promise<void> => {
    const { path, original, stamp } = keptOf(opening);
    if (path === null) throw new Error("This workbook is kept nowhere yet: save it as a file.");
    const bytes = taken(await writeXlsx(workbook, original, "in place", own));
    openings.set(opening, { path, original: bytes, stamp: taken(saveSafely(path, bytes, stamp)) });
    written.add(path);
  };
  const openGiven = async (files: readonly GivenFile[]): Promise<OpenedWorkbook> => {
    const read = taken(await readGiven(files, own));
    const only = files.length === 1 && !isCsv(files[0]!.name) ? files[0]! : null;
    return opened(read, { ...nowhere, original: only?.bytes ?? null });
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
    save: (opening, workbook) => {
      const next = saving.then(() => save(opening, workbook));
      saving = next.catch(() => undefined);
      return next;
    },
    exported: async (opening, workbook) =>
      taken(await writeXlsx(workbook, keptOf(opening).original, "a copy", own)),
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

function taken<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(fileSentence(outcome.refusal satisfies Refusal));
}
