import { statSync } from "node:fs";
import { type Outcome, refuse } from "../../outcome";
import { type ReadWorkbook, readCsvFolder } from "./read-csv-folder";
import { readXlsxFile } from "./read-xlsx-file";

/**
 * Opens an .xlsx file or a folder of CSV files.
 *
 * @param own names of the add-on's functions, upper case
 * @returns refuses `not-there`, `not-a-workbook`, and what the readers of either refuse
 */
export async function readWorkbook(
  path: string,
  own: ReadonlySet<string>,
): Promise<Outcome<ReadWorkbook>> {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found) return refuse("not-there", { path });
  if (found.isDirectory()) return readCsvFolder(path, own);
  if (found.isFile() && /\.xlsx$/i.test(path)) return readXlsxFile(path);
  return refuse("not-a-workbook", { path });
}
