import type * as Excel from "exceljs";
import { cellName } from "../../a1";
import { isDateFormat } from "../../spreadsheet-date";
import type { CellData, TabData } from "../../workbook-data";
import { argbOf } from "./cell-from-file";
import { callsOwn } from "./fill-marks";
import { formulaForFile } from "./formula-text";
import type { Sheet } from "./library";
import { same } from "./same-data";

/** Days between the two day counts a file may use. */
const daysBetweenSystems = 1462;

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
    typeof value === "number" && from1904 && isDateFormat(is?.format ?? "")
      ? value - daysBetweenSystems
      : value;
  const held = (one: CellData | null) => [one?.value ?? null, one?.formula, one?.fills];
  // What is written into a cell under a merged one the library writes into the one that is seen.
  const covered = cell.isMerged && cell.master !== cell;
  if (!covered && !same(held(was), held(is))) {
    cell.value =
      is?.formula === undefined ? forFile(is?.value ?? null) : formulaValue(cell, is, own);
  }
  // Cells that look alike share one look in the library: this cell's changes alone.
  cell.style = { ...cell.style };
  if (was?.format !== is?.format) cell.numFmt = is?.format ?? "General";
  if (was?.note !== is?.note) {
    if (is?.note !== undefined) cell.note = is.note;
    else (cell as unknown as { _comment: undefined })._comment = undefined;
  }
  if (!same(was?.style ?? {}, is?.style ?? {})) writeStyle(cell, is);
}

/** A formula that fills cells around it is an array formula over just those cells, unless it is our own. */
function formulaValue(
  cell: Excel.Cell,
  { formula, value, fills }: CellData,
  own: ReadonlySet<string>,
): Excel.CellValue {
  const text = formulaForFile(formula!);
  const result = resultOf(value);
  const [rows, columns] = [fills?.length ?? 1, fills?.[0]?.length ?? 1];
  if (rows * columns <= 1 || callsOwn(formula!, own))
    return { formula: text, ...result } as Excel.CellValue;
  const start = { row: Number(cell.row) - 1, column: Number(cell.col) - 1 };
  const end = cellName(start.row + rows - 1, start.column + columns - 1);
  const ref = `${cell.address}:${end}`;
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

function writeStyle(cell: Excel.Cell, is: CellData | null): void {
  const style = is?.style ?? {};
  const { color: _, ...font } = cell.font ?? {};
  cell.font = {
    ...font,
    bold: style.bold === true,
    italic: style.italic === true,
    ...(style.colour !== undefined && { color: { argb: argbOf(style.colour) } }),
  };
  cell.fill =
    style.background === undefined
      ? { type: "pattern", pattern: "none" }
      : { type: "pattern", pattern: "solid", fgColor: { argb: argbOf(style.background) } };
  const { horizontal: __, ...alignment } = cell.alignment ?? {};
  cell.alignment = {
    ...alignment,
    ...(style.align && { horizontal: style.align }),
    wrapText: style.wrap === true,
  };
}
