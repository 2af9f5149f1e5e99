import type * as Excel from "exceljs";
import { rangeName } from "../../a1";
import { isDayFormat } from "../../spreadsheet-date";
import type { CellData, CellStyle, TabData } from "../../workbook-data";
import { argbOf, daysBetweenSystems } from "./cell-from-file";
import { callsOwn, fillsMany } from "./fill-marks";
import { formulaForFile } from "./formula-text";
import type { Sheet } from "./library";
import { same } from "./same-data";

/** A cell that is not as it was. */
export type Change = {
  readonly row: number;
  readonly column: number;
  readonly was: CellData | null;
  readonly is: CellData | null;
};

export function changedCells(before: TabData | null, after: TabData): readonly Change[] {
  const changed: Change[] = [];
  const rows = Math.max(before?.cells.length ?? 0, after.cells.length);
  for (let row = 0; row < rows; row++) {
    const old = before?.cells[row] ?? [];
    const now = after.cells[row] ?? [];
    for (let column = 0; column < Math.max(old.length, now.length); column++) {
      const [was, is] = [old[column] ?? null, now[column] ?? null];
      if (!same(was, is)) changed.push({ row, column, was, is });
    }
  }
  return changed;
}

export function writeCell(
  sheet: Sheet,
  { row, column, was, is }: Change,
  from1904: boolean,
  own: ReadonlySet<string>,
): void {
  const cell = sheet.getCell(row + 1, column + 1);
  const forFile = (value: CellData["value"]) =>
    typeof value === "number" && from1904 && isDayFormat(is?.format ?? "")
      ? value - daysBetweenSystems
      : value;
  // What is written into a cell under a merged one the library writes into the one that is seen.
  const covered = cell.isMerged && cell.master !== cell;
  if (!covered && !same(held(was), held(is, was))) {
    const value = forFile(is?.value ?? null);
    cell.value = is?.formula === undefined ? value : formulaValue(cell, { ...is, value }, own);
  }
  // Cells that look alike share one look in the library: this cell's changes alone.
  cell.style = { ...cell.style };
  if (was?.format !== is?.format) cell.numFmt = is?.format ?? "General";
  if (was?.note !== is?.note) {
    if (is?.note !== undefined) cell.note = is.note;
    else (cell as unknown as { _comment: undefined })._comment = undefined;
  }
  if (!same(was?.style ?? {}, is?.style ?? {})) writeStyle(cell, was?.style ?? {}, is?.style ?? {});
}

/** What a cell holds. A formula the grid cannot calculate keeps the result that another program left. */
function held(one: CellData | null, before: CellData | null = null): unknown {
  const unknown = one?.value === "#NAME?" || namesTable(one?.formula ?? "");
  const uncalculated = unknown && before !== null && one?.formula === before.formula;
  const { value = null, formula, fills } = (uncalculated ? before : one) ?? {};
  return [value, formula, fills];
}

/** Whether a formula names a table's column or another file: what comes of it here may be no error. */
function namesTable(formula: string): boolean {
  return formula.replace(/"(?:[^"]|"")*"|'(?:[^'[]|'')*'/g, "").includes("[");
}

/**
 * A formula that fills cells around it is an array formula over just those cells, unless it is our
 * own; one that was an array formula for its own cell stays one, as it gives another result without.
 */
function formulaValue(
  cell: Excel.Cell,
  { formula, value, fills }: CellData,
  own: ReadonlySet<string>,
): Excel.CellValue {
  const text = formulaForFile(formula!);
  const result = resultOf(value);
  const wasArray = (cell.value as { shareType?: string } | null)?.shareType === "array";
  if ((!fillsMany(fills) && !wasArray) || callsOwn(formula!, own))
    return { formula: text, ...result } as Excel.CellValue;
  const [rows, columns] = [fills?.length ?? 1, fills?.[0]?.length ?? 1];
  const [startRow, startColumn] = [Number(cell.row) - 1, Number(cell.col) - 1];
  const [endRow, endColumn] = [startRow + rows - 1, startColumn + columns - 1];
  const ref = rangeName({ startRow, startColumn, endRow, endColumn });
  return { formula: text, shareType: "array", ref, ...result } as unknown as Excel.CellValue;
}

function resultOf(value: CellData["value"]): { result?: Excel.CellFormulaValue["result"] } {
  if (value === null) return {};
  const error =
    typeof value === "string" && /^#(?:REF!|NAME\?|VALUE!|DIV\/0!|N\/A|NUM!|NULL!)$/.test(value);
  return { result: error ? ({ error: value } as Excel.CellErrorValue) : value };
}

function eachFill(
  fills: CellData["fills"],
  visit: (row: number, column: number, value: CellData["value"]) => void,
): void {
  fills?.forEach((line, row) => {
    line.forEach((value, column) => {
      if (row + column > 0) visit(row, column, value);
    });
  });
}

export function clearFills(sheet: Sheet, row: number, column: number, was: CellData | null): void {
  eachFill(was?.fills, (down, right) => {
    sheet.getCell(row + 1 + down, column + 1 + right).value = null;
  });
}

export function writeFills(sheet: Sheet, row: number, column: number, is: CellData | null): void {
  eachFill(is?.fills, (down, right, value) => {
    sheet.getCell(row + 1 + down, column + 1 + right).value = value;
  });
}

/** Only what is another: colours the grid does not know, such as a theme's, stay where none was given. */
function writeStyle(cell: Excel.Cell, was: CellStyle, is: CellStyle): void {
  const { color, ...font } = cell.font ?? {};
  const own = is.colour === was.colour ? color : is.colour && { argb: argbOf(is.colour) };
  cell.font = {
    ...font,
    bold: is.bold === true,
    italic: is.italic === true,
    ...(own && { color: own }),
  };
  if (is.background !== was.background) {
    cell.fill =
      is.background === undefined
        ? { type: "pattern", pattern: "none" }
        : { type: "pattern", pattern: "solid", fgColor: { argb: argbOf(is.background) } };
  }
  const { horizontal, vertical, ...alignment } = cell.alignment ?? {};
  const align = is.align === was.align ? horizontal : is.align;
  const upright = is.upright === was.upright ? vertical : (is.upright ?? "bottom");
  cell.alignment = {
    ...alignment,
    ...(upright && { vertical: upright }),
    ...(align && { horizontal: align }),
    wrapText: is.wrap === true,
  };
}
