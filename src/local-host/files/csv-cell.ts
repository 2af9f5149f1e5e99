import { serialFromIso } from "../spreadsheet-date";
import type { CellData } from "../workbook-data";

const plainNumber = /^-?(?:(?:0|[1-9]\d{0,14})(?:\.\d{1,15})?|\.\d{1,15})$/;

/**
 * A field of a CSV file as a cell. Numbers with a decimal point and ISO dates become numbers and
 * dates; everything else stays the text it is: leading zeros, decimal commas, times and other dates
 * are settled later, by the whole column.
 */
export function csvCell(text: string): CellData | null {
  if (text === "") return null;
  if (plainNumber.test(text)) return { value: Number(text) };
  const serial = serialFromIso(text);
  if (serial !== null && serial > 60) return { value: serial, format: "yyyy-mm-dd" };
  if (text === "TRUE" || text === "FALSE") return { value: text === "TRUE" };
  return { value: text };
}
