import { accept, type Outcome, refuse } from "../../outcome";
import { isDateFormat, isoFromSerial } from "../spreadsheet-date";
import type { CellData, TabData, WorkbookData } from "../workbook-data";

/**
 * A workbook as CSV files by name, one for each tab: values as they are calculated with a decimal
 * point, dates as ISO text, formulas as they are typed.
 *
 * @returns refuses `tab-name-no-file` when a tab's name would leave the folder or cannot be a file
 */
export function csvFiles({ tabs }: WorkbookData): Outcome<ReadonlyMap<string, string>> {
  const files = new Map<string, string>();
  for (const tab of tabs) {
    // Names that reach outside the folder, hide, or mean a device to Windows.
    const bad = /[/\\:*?"<>|\p{Cc}]|^\.|[. ]$|^(?:con|prn|aux|nul|com\d|lpt\d)$/iu;
    if (tab.name === "" || bad.test(tab.name)) return refuse("tab-name-no-file", { tab: tab.name });
    files.set(`${tab.name}.csv`, csvText(tab));
  }
  return accept(files);
}

/** A tab as CSV text (RFC 4180, lines ended by a line feed). */
export function csvText({ cells }: TabData): string {
  return cells.map((line) => `${line.map((cell) => field(fieldText(cell))).join(",")}\n`).join("");
}

function fieldText(cell: CellData | null): string {
  if (!cell) return "";
  const { formula, value, format } = cell;
  if (formula !== undefined) return formula;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number" && format !== undefined && isDateFormat(format)) {
    return isoFromSerial(value);
  }
  return value === null ? "" : String(value);
}

function field(text: string): string {
  return /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
