import {
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  BaseFunction,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  FunctionType,
  type FunctionVariantType,
  IFunctionService,
} from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import { messageOf } from "../message-of";
import { ArgumentError, argument } from "./argument";
import type { DeclaredFunction } from "./declared-functions";
import type { RangeCache } from "./range-cache";
import { resultObject } from "./result-object";
import type { Sentences } from "./sentences";
import { refuseVolatile } from "./volatile-argument";

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
  const formulas = injector.get(FormulaDataModel);
  const custom = new Set(declared.map(({ name }) => name));
  const books = injector.get(IUniverInstanceService);
  const filledDown = new Map<string, string>();
  /** Formulas filled down share one text by an id; finding it searches the tab, so once is enough. */
  const formulaAt = (unitId: string, tabId: string, row: number, column: number): string => {
    const cell = books
      .getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(tabId)
      ?.getCellMatrix()
      .getValue(row, column);
    if (cell?.f) return cell.f;
    if (!cell?.si) return "";
    const known = filledDown.get(`${tabId}|${cell.si}`);
    if (known !== undefined) return known;
    const found = formulas.getFormulaStringByCell(row, column, tabId, unitId) ?? "";
    filledDown.set(`${tabId}|${cell.si}`, found);
    return found;
  };
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
          refuseVolatile(formulaAt(this.unitId ?? "", tabId, row, column), custom);
          cache.startCall();
          const args = variants.map((variant) => argument(variant, cache));
          const result = call(name, args);
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
