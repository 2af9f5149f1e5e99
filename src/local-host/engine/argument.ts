import type { ICellData } from "@univerjs/core";
import {
  type ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  type ErrorValueObject,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import { dateFromSerial, isDateFormat } from "../spreadsheet-date";
import { platformValue } from "./platform-value";
import type { RangeCache } from "./range-cache";

/** An argument that is itself an error: the spreadsheet shows it and does not call the function. */
export class ArgumentError extends Error {
  constructor(readonly type: ErrorType) {
    super(type);
  }
}

/** An argument as the platform passes it: a cell as a value, a range as rows of cells. */
export function argument(variant: FunctionVariantType, cache: RangeCache): unknown {
  if (variant.isReferenceObject()) return rangeArgument(variant as BaseReferenceObject, cache);
  const value = variant as BaseValueObject;
  if (value.isArray()) {
    const rows = (value as ArrayValueObject)
      .getArrayValue()
      .map((row) =>
        row.map((cell) =>
          cell === null || cell === undefined || cell.isNull()
            ? ""
            : cell.isError()
              ? String(cell.getValue())
              : argument(cell, cache),
        ),
      );
    return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
  }
  if (value.isError()) throw new ArgumentError((value as ErrorValueObject).getErrorType());
  if (value.isNull()) return undefined;
  const plain = value.getValue();
  if (value.isNumber()) {
    const pattern = value.getPattern();
    return pattern && isDateFormat(pattern) ? dateFromSerial(Number(plain)) : plain;
  }
  return plain;
}

function rangeArgument(range: BaseReferenceObject, cache: RangeCache): unknown {
  // A tab that does not exist would silently be read as the formula's own tab.
  const missing = range as unknown as { _checkIfWorksheetMiss?: () => boolean };
  if (missing._checkIfWorksheetMiss?.()) throw new ArgumentError(ErrorType.REF);
  const at = range.getRangePosition();
  const tabId = range.getSheetId();
  const formats = new Map<string, string>();
  const styles = range.getCurrentStylesData();
  const formatOf = (cell: ICellData): string => {
    if (typeof cell.s !== "string") return cell.s?.n?.pattern ?? "";
    const known = formats.get(cell.s);
    if (known !== undefined) return known;
    const pattern = styles?.getStyleByCell(cell)?.n?.pattern ?? "";
    formats.set(cell.s, pattern);
    return pattern;
  };
  // The library looks for results of formulas first, cell by cell; where none can be, none are.
  const own = cache.isPlain(tabId) ? range.getCurrentActiveSheetData()?.cellData : undefined;
  const rows = cache.rows(tabId, at, (row) => {
    const line: unknown[] = new Array(at.endColumn - at.startColumn + 1);
    for (let column = at.startColumn; column <= at.endColumn; column++) {
      const cell = own ? own.getValue(row, column) : range.getCellData(row, column);
      line[column - at.startColumn] = platformValue(cell, formatOf);
    }
    return line;
  });
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}
