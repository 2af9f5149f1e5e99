import Excel from "exceljs";
import { strToU8, unzipSync, zipSync } from "fflate";
import { fileSentence } from "../../../src/local-host/files/file-sentences";
import { readXlsx } from "../../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import type { CellData, TabData, WorkbookData } from "../../../src/local-host/workbook-data";

/** A file made with the library. */
export async function fileOf(make: (book: Excel.Workbook) => void): Promise<Uint8Array> {
  const book = new Excel.Workbook();
  make(book);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** A file with one part added or changed. */
export function withPart(
  bytes: Uint8Array,
  path: string,
  change: (text: string) => string,
): Uint8Array {
  const parts = unzipSync(bytes);
  return zipSync({ ...parts, [path]: strToU8(change(partOf(bytes, path))) });
}

/** A part's text; empty when there is none. */
export function partOf(bytes: Uint8Array, path: string): string {
  const part = unzipSync(bytes)[path];
  return part ? new TextDecoder().decode(part) : "";
}

export async function read(bytes: Uint8Array): Promise<WorkbookData> {
  const outcome = await readXlsx("Log", bytes);
  if (!outcome.ok) throw new Error(fileSentence(outcome.refusal));
  return outcome.value.workbook;
}

/** The file saved again in place, with what was changed in the grid. */
export async function saved(
  original: Uint8Array,
  change: (workbook: WorkbookData) => WorkbookData = (workbook) => workbook,
): Promise<Uint8Array> {
  const outcome = await writeXlsx(change(await read(original)), original);
  if (!outcome.ok) throw new Error(fileSentence(outcome.refusal));
  return outcome.value;
}

/** A workbook whose first tab is another. */
export const firstTab =
  (change: (tab: TabData) => TabData) =>
  (workbook: WorkbookData): WorkbookData => ({
    ...workbook,
    tabs: workbook.tabs.map((tab, place) => (place === 0 ? change(tab) : tab)),
  });

/** A workbook with another cell in its first tab; row and column from 0. */
export const oneCell = (row: number, column: number, cell: CellData | null) =>
  firstTab((tab) => {
    const cells = tab.cells.map((line) => [...line]);
    while (cells.length <= row) cells.push([]);
    cells[row]![column] = cell;
    return { ...tab, cells };
  });
