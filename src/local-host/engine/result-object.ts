import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { isDate, serialFromDate } from "../spreadsheet-date";

/** What a custom function gave, for the formula engine: a value, a column, or rows of values. */
export function resultObject(result: unknown): FunctionVariantType {
  if (!Array.isArray(result)) return valueObject(result);
  const grid: unknown[][] = result.map((row: unknown) => (Array.isArray(row) ? row : [row]));
  const width = grid.reduce((widest, row) => Math.max(widest, row.length), 1);
  const values = grid.map((row) =>
    Array.from({ length: width }, (_, i) => valueObject(row[i] ?? "")),
  );
  if (values.length === 0) return StringValueObject.create("");
  return ArrayValueObject.create({
    calculateValueList: values,
    rowCount: values.length,
    columnCount: width,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function valueObject(value: unknown): BaseValueObject {
  if (value === null || value === undefined) return NullValueObject.create();
  if (typeof value === "number") {
    return Number.isFinite(value)
      ? NumberValueObject.create(value)
      : ErrorValueObject.create(ErrorType.NUM);
  }
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (isDate(value)) return NumberValueObject.create(serialFromDate(value), "yyyy-mm-dd");
  return StringValueObject.create(String(value));
}
