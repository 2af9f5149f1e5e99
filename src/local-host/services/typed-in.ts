import { CellValueType, type ICellData } from "@univerjs/core";
import { isDate, serialFromDate, serialFromIso } from "../spreadsheet-date";

/** A grid cell for a written value, and the number format it brings along when the cell has none. */
export type TypedIn = { readonly cell: ICellData; readonly format: string | null };

/**
 * What the platform makes of a value a script writes: text is read as though typed, so "=…" becomes
 * a formula, "01234" a number, "2026-05-12" a date; a leading apostrophe, or the cell's format "@",
 * keeps it text.
 */
export function typedIn(value: unknown, format: string): TypedIn {
  const empty = { f: null, si: null, p: null } as const;
  const none = null;
  if (value === "" || value === null || value === undefined) {
    return { cell: { ...empty, v: null, t: null }, format: none };
  }
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new Error(`Cannot write ${value} into a cell.`);
    return { cell: { ...empty, v: value, t: CellValueType.NUMBER }, format: none };
  }
  if (typeof value === "boolean") {
    return { cell: { ...empty, v: value ? 1 : 0, t: CellValueType.BOOLEAN }, format: none };
  }
  if (isDate(value)) {
    const serial = serialFromDate(value);
    return { cell: { ...empty, v: serial, t: CellValueType.NUMBER }, format: "yyyy-mm-dd" };
  }
  if (typeof value !== "string") throw new Error("Cannot convert an object into a cell's value.");
  const text = { ...empty, t: CellValueType.STRING };
  if (format === "@") return { cell: { ...text, v: value }, format: none };
  if (value.startsWith("'")) return { cell: { ...text, v: value.slice(1) }, format: "@" };
  if (value.startsWith("=") && value.length > 1) {
    return { cell: { f: value, v: null, si: null, p: null }, format: none };
  }
  const read = readAsTyped(value.trim());
  if (!read) return { cell: { ...text, v: value }, format: none };
  const { number, format: shown } = read;
  return { cell: { ...empty, v: number, t: read.type ?? CellValueType.NUMBER }, format: shown };
}

type Read = {
  readonly number: number;
  readonly format: string | null;
  readonly type?: CellValueType;
};

/** Text that the online sheet turns into something else when typed, day before month. */
function readAsTyped(value: string): Read | null {
  const iso = serialFromIso(value);
  if (iso !== null) return { number: iso, format: "yyyy-mm-dd" };
  if (/^[+-]?(\d+|\d{1,3}(,\d{3})+)(\.\d+)?$/.test(value)) {
    return { number: Number(value.replace(/,/g, "")), format: null };
  }
  if (/^[+-]?\d+(\.\d+)?%$/.test(value)) {
    return { number: Number(value.slice(0, -1)) / 100, format: "0.##%" };
  }
  if (/^(true|false)$/i.test(value)) {
    return { number: /^t/i.test(value) ? 1 : 0, format: null, type: CellValueType.BOOLEAN };
  }
  const clock = /^(\d{1,2}):([0-5]\d)(?::([0-5]\d))?$/.exec(value);
  if (clock) {
    const [, hours, minutes, seconds = "0"] = clock;
    const day = (Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) / 86_400;
    return { number: day, format: clock[3] ? "h:mm:ss" : "h:mm" };
  }
  const date = /^(\d{1,2})[/.-](\d{1,2})(?:[/.-](\d{4}))?$/.exec(value);
  if (date && !/^\d+\.\d+$/.test(value)) {
    const [, dayOfMonth, month, year = String(new Date().getFullYear())] = date;
    const two = (part: string) => part.padStart(2, "0");
    const serial = serialFromIso(`${year}-${two(month!)}-${two(dayOfMonth!)}`);
    if (serial !== null) return { number: serial, format: "dd/mm/yyyy" };
  }
  return null;
}
