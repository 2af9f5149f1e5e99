import type { Injector } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  type FunctionVariantType,
  IFunctionService,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import { dateFromSerial, isDate, isDateFormat, serialFromDate } from "../spreadsheet-date";
import type { DeclaredFunction } from "./declared-functions";
import { platformValue } from "./platform-value";

/** Sentences of the last refused calculation, by place of the formula. */
export class Sentences {
  private readonly byPlace = new Map<string, string>();
  private place = (tabId: string, row: number, column: number) => `${tabId}|${row}|${column}`;
  set(tabId: string, row: number, column: number, sentence: string): void {
    this.byPlace.set(this.place(tabId, row, column), sentence);
  }
  clear(tabId: string, row: number, column: number): void {
    this.byPlace.delete(this.place(tabId, row, column));
  }
  get(tabId: string, row: number, column: number): string | undefined {
    return this.byPlace.get(this.place(tabId, row, column));
  }
}

/** A range's values are read once a calculation, however many formulas name the range. */
export class RangeCache {
  private readonly values = new Map<string, readonly (readonly unknown[])[]>();
  clear(): void {
    this.values.clear();
  }
  of(key: string, read: () => readonly (readonly unknown[])[]): readonly (readonly unknown[])[] {
    const known = this.values.get(key);
    if (known) return known;
    const fresh = read();
    this.values.set(key, fresh);
    return fresh;
  }
}

/** An argument that is itself an error: the spreadsheet shows it and does not call the function. */
class ArgumentError extends Error {
  constructor(readonly type: ErrorType) {
    super(type);
  }
}

/** Functions whose value changes by itself: the online sheet never finishes loading a formula that passes one. */
const volatile = /^(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)$/i;

/**
 * Makes the bundle's custom functions known to the formula engine, as executors of their own. The
 * façade's way of registering is not used: there one thrown error stops all calculation, dates
 * arrive as numbers and blanks as 0.
 */
export function registerCustomFunctions(
  injector: Injector,
  declared: readonly DeclaredFunction[],
  call: (name: string, args: readonly unknown[]) => unknown,
  sentences: Sentences,
  cache: RangeCache,
): void {
  const functions = injector.get(IFunctionService);
  const descriptions = injector.get(IDescriptionService);
  for (const { name, summary, parameters } of declared) {
    class CustomFunction extends BaseFunction {
      override needsReferenceObject = true;

      /** Without it a quoted "1/2" or "5:30" arrives as a date's number. */
      override isArgumentsIgnoreNumberPattern(): boolean {
        return true;
      }

      override calculate(...variants: FunctionVariantType[]): FunctionVariantType {
        const tabId = this.subUnitId ?? "";
        const row = this.row ?? -1;
        const column = this.column ?? -1;
        try {
          const result = call(
            name,
            variants.map((variant) => argument(variant, cache)),
          );
          sentences.clear(tabId, row, column);
          return resultObject(result);
        } catch (error) {
          if (error instanceof ArgumentError) {
            sentences.clear(tabId, row, column);
            return ErrorValueObject.create(error.type);
          }
          const sentence = messageOf(error);
          sentences.set(tabId, row, column, sentence);
          return ErrorValueObject.create(ErrorType.ERROR, sentence);
        }
      }
    }
    functions.registerExecutors(new CustomFunction(name));
    descriptions.registerDescriptions([
      {
        functionName: name,
        functionType: FunctionType.User,
        description: summary,
        abstract: summary,
        functionParameter: parameters.map((parameter) => ({
          name: parameter.name,
          detail: parameter.help,
          example: "",
          require: parameter.optional ? 0 : 1,
          repeat: 0,
        })),
      },
    ]);
  }
}

/** Whether a formula hands a custom function something volatile: the online sheet refuses by loading forever. */
export function volatileArgument(formula: string, names: readonly string[]): string | null {
  const calls = new RegExp(`\\b(?:${names.join("|")})\\s*\\(([^"]*?)\\)\\s*$`, "i").exec(formula);
  if (!calls) return null;
  for (const [, name] of calls[1]!.matchAll(/([A-Za-z.]+)\s*\(/g)) {
    if (name && volatile.test(name)) return name.toUpperCase();
  }
  return null;
}

export function messageOf(error: unknown): string {
  return error !== null && typeof error === "object" && "message" in error
    ? String(error.message)
    : String(error);
}

function argument(variant: FunctionVariantType, cache: RangeCache): unknown {
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
  const { startRow, endRow, startColumn, endColumn } = range.getRangePosition();
  const key = [
    range.getUnitId(),
    range.getSheetId(),
    startRow,
    endRow,
    startColumn,
    endColumn,
  ].join("|");
  const rows = cache.of(key, () => {
    const formats = new Map<string, string>();
    const styles = range.getCurrentStylesData();
    const read: unknown[][] = [];
    for (let row = startRow; row <= endRow; row++) {
      const line: unknown[] = new Array(endColumn - startColumn + 1);
      for (let column = startColumn; column <= endColumn; column++) {
        line[column - startColumn] = platformValue(range.getCellData(row, column), (cell) => {
          if (typeof cell.s !== "string") return cell.s?.n?.pattern ?? "";
          const known = formats.get(cell.s);
          if (known !== undefined) return known;
          const pattern = styles?.getStyleByCell(cell)?.n?.pattern ?? "";
          formats.set(cell.s, pattern);
          return pattern;
        });
      }
      read.push(line);
    }
    return read;
  });
  // Each call gets rows of its own, as over the wire: what a function does to them stays there.
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows.map((row) => row.slice());
}

function resultObject(result: unknown): FunctionVariantType {
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
