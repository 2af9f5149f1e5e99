import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { declaredFunctions } from "../engine/declared-functions";
import { fileSentence } from "../files/file-sentences";
import { readWorkbook } from "../files/read-workbook";
import { type OpenHost, openHost } from "../open-host";
import type { WorkbookData } from "../workbook-data";
import { Refused, type Surroundings } from "./surroundings";

export type OpenedWorkbook = { readonly host: OpenHost; readonly workbook: WorkbookData };

/** The workbook at a path, open in a grid without a page, with the built add-on beside it. */
export async function openedWorkbook(
  path: string | null,
  { dist, sample, err }: Surroundings,
): Promise<OpenedWorkbook> {
  const { bundleSource, files } = builtAddOn(dist);
  const own = new Set(declaredFunctions(bundleSource).map(({ name }) => name));
  const read = await readWorkbook(path ?? sample, own);
  if (!read.ok) throw new Refused(fileSentence(read.refusal));
  for (const note of read.value.notes) err(`${fileSentence(note)}\n`);
  const { workbook } = read.value;
  return { workbook, host: await openHost({ workbook, bundleSource, files }) };
}

/** The script and pages that are pushed to the online spreadsheet, unmodified. */
export function builtAddOn(dist: string): {
  readonly bundleSource: string;
  readonly files: Readonly<Record<string, string>>;
} {
  const code = join(dist, "code.js");
  if (!existsSync(code)) throw new Refused("The program is not built yet: run npm run build.");
  const sidebar = join(dist, "Sidebar.html");
  return {
    bundleSource: readFileSync(code, "utf8"),
    files: existsSync(sidebar) ? { Sidebar: readFileSync(sidebar, "utf8") } : {},
  };
}
