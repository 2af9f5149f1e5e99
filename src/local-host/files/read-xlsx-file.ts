import { readFileSync, statSync } from "node:fs";
import { basename } from "node:path";
import { type Outcome, refuse } from "../../outcome";
import { limits } from "./limits";
import { type ReadXlsx, readXlsx } from "./xlsx/read-xlsx";

/** Opens an .xlsx file. Refuses `file-too-large` and what `readXlsx` refuses. */
export async function readXlsxFile(path: string): Promise<Outcome<ReadXlsx>> {
  const file = basename(path);
  if (statSync(path).size > limits.fileBytes) return refuse("file-too-large", { file });
  return readXlsx(file.replace(/\.xlsx$/i, ""), readFileSync(path));
}
