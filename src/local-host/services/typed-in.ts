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
  const serial = serialFromIso(value);
  if (serial !== null) {
    return { cell: { ...empty, v: serial, t: CellValueType.NUMBER }, format: "yyyy-mm-dd" };
  }
  if (/^[+-]?\d+(\.\d+)?$/.test(value)) {
    return { cell: { ...empty, v: Number(value), t: CellValueType.NUMBER }, format: none };
  }
  if (/^(true|false)$/i.test(value)) {
    const truth = /^true$/i.test(value) ? 1 : 0;
    return { cell: { ...empty, v: truth, t: CellValueType.BOOLEAN }, format: none };
  }
  return { cell: { ...text, v: value }, format: none };
}
