import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { dateFromSerial, isDateFormat } from "../spreadsheet-date";

/**
 * A cell of the grid as the platform passes it to a script: "" when blank, a `Date` where the number
 * format shows one, booleans as booleans.
 */
export function platformValue(
  cell: Nullable<ICellData>,
  formatOf: (cell: ICellData) => string,
): string | number | boolean | Date {
  const value = cell?.v;
  if (!cell || value === undefined || value === null || value === "") return "";
  if (cell.t === CellValueType.BOOLEAN) {
    return value === true || value === 1 || value === "1" || value === "TRUE";
  }
  if (typeof value === "number") {
    return cell.s !== undefined && isDateFormat(formatOf(cell)) ? dateFromSerial(value) : value;
  }
  if (cell.t === CellValueType.NUMBER && typeof value === "string") {
    const number = Number(value);
    return Number.isNaN(number) ? value : number;
  }
  return value;
}
