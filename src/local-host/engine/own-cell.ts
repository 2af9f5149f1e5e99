import type { BaseReferenceObject, FunctionVariantType } from "@univerjs/engine-formula";
import { localFormulas } from "../../words/local-formulas";

/**
 * Throws a sentence when a formula's own cell lies in a range it is given: it would read its own
 * result. The online sheet refuses such a circle too; the grid library alone would take the cell for
 * a blank one.
 */
export function refuseOwnCell(
  variants: readonly FunctionVariantType[],
  tabId: string,
  row: number,
  column: number,
): void {
  for (const variant of variants) {
    if (!variant.isReferenceObject()) continue;
    const range = variant as BaseReferenceObject;
    if (range.getSheetId() !== tabId) continue;
    const { startRow, endRow, startColumn, endColumn } = range.getRangePosition();
    if (row < startRow || row > endRow || column < startColumn || column > endColumn) continue;
    throw new Error(localFormulas.ownCell);
  }
}
