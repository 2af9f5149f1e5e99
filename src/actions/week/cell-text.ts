import { isDate } from "../../rows/value/is-date";
import type { Written } from "../workbook";

/** One text for what a cell holds, the same whether it is about to be written or was read. */
export function writtenText(cell: Written): string {
  if (typeof cell !== "object") return String(cell);
  return "formula" in cell ? cell.formula : cell.day;
}

/** What stands in a cell: its formula when it has one, else its value. */
export function standingText(value: unknown, formula: string): string {
  if (formula !== "") return formula;
  if (!isDate(value)) return String(value ?? "");
  const two = (part: number) => String(part).padStart(2, "0");
  return `${value.getFullYear()}-${two(value.getMonth() + 1)}-${two(value.getDate())}`;
}
