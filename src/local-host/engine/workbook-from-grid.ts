import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IStyleData,
  WrapStrategy,
} from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { hasContent, type SheetInside } from "../services/sheet-inside";
import type { Spreadsheet } from "../services/spreadsheet";
import type { CellData, CellStyle, TabData, WorkbookData } from "../workbook-data";
import type { GridEngine } from "./grid-engine";
import { usualColumnWidth } from "./row-height";
import { alignments, noFormat, uprights } from "./snapshot";
import { withTabMemory } from "./tab-memory";

/** The grid's workbook as plain data; cells filled by a formula elsewhere are left to that formula. */
export function workbookFrom(
  engine: GridEngine,
  spreadsheet: Spreadsheet,
  properties: Readonly<Record<string, string>>,
): WorkbookData {
  const { book } = engine;
  return {
    name: book.getName(),
    tabs: spreadsheet.getSheets().map((sheet) => {
      const { inside } = sheet;
      const { grid } = inside;
      const { rows, columns } = inside.usedExtent();
      const notes = inside.notes();
      const cells: (CellData | null)[][] = [];
      for (let row = 0; row < rows; row++) {
        const line: (CellData | null)[] = [];
        for (let column = 0; column < columns; column++) {
          const own = inside.ownCell(row, column);
          const note = notes.get(`${row}|${column}`) ?? "";
          const formula = inside.formulaAt(row, column);
          const filled = own && (hasContent(own) || own.s !== undefined);
          const cell =
            filled || note !== "" ? cellData(own ?? {}, formula, note, inside.styleOf(own)) : null;
          const [down, right] =
            formula === "" ? [1, 1] : engine.spread(grid.getSheetId(), row, column);
          line.push(
            cell && down * right > 1
              ? { ...cell, fills: fillsOf(inside.cellAt, row, column, down, right) }
              : cell,
          );
        }
        cells.push(line);
      }
      const rowHeights = heightsByHand(grid);
      const hiddenRows = hiddenAmong(grid.getSheet().getRowManager().getRowData(), rows);
      const hiddenColumns = hiddenAmong(
        grid.getSheet().getColumnManager().getColumnData(),
        columns,
      );
      const merged = grid.getMergeData().map((range) => range.getA1Notation());
      return {
        name: grid.getSheetName(),
        cells,
        frozenRows: Math.max(0, grid.getFrozenRows()),
        frozenColumns: Math.max(0, grid.getFrozenColumns()),
        columnWidths: columnWidths(grid, columns),
        ...(Object.keys(rowHeights).length > 0 && { rowHeights }),
        ...(hiddenRows.length > 0 && { hiddenRows }),
        ...(hiddenColumns.length > 0 && { hiddenColumns }),
        conditionalFormats: inside.rules(),
        validations: inside.lists(),
        ...(grid.isSheetHidden() && { hidden: true }),
        ...(merged.length > 0 && { merged }),
      } satisfies TabData;
    }),
    names: book
      .getDefinedNames()
      .map((name) => ({ name: name.getName(), ref: name.getFormulaOrRefString() })),
    properties: withTabMemory(properties, spreadsheet.inside.tabMemory()),
  };
}

/** Values of all the cells a formula fills, its own first. */
function fillsOf(
  cellAt: SheetInside["cellAt"],
  row: number,
  column: number,
  down: number,
  right: number,
): CellData["value"][][] {
  return Array.from({ length: down }, (_, i) =>
    Array.from({ length: right }, (_, j) => heldValue(cellAt(row + i, column + j) || {})),
  );
}

function heldValue(cell: ICellData): CellData["value"] {
  const value = cell.v === undefined || cell.v === null || cell.v === "" ? null : cell.v;
  return value !== null && cell.t === CellValueType.BOOLEAN
    ? value === 1 || value === true || value === "1"
    : value;
}

function cellData(cell: ICellData, formula: string, note: string, look: IStyleData): CellData {
  const style: CellStyle = {
    ...(look.bl === BooleanNumber.TRUE && { bold: true }),
    ...(look.it === BooleanNumber.TRUE && { italic: true }),
    ...(look.cl?.rgb && { colour: look.cl.rgb }),
    ...(look.bg?.rgb && { background: look.bg.rgb }),
    ...(look.tb === WrapStrategy.WRAP && { wrap: true }),
    ...alignment(look.ht),
    ...(look.vt === uprights.top && { upright: "top" as const }),
    ...(look.vt === uprights.middle && { upright: "middle" as const }),
  };
  return {
    value: heldValue(cell),
    ...(formula !== "" && { formula }),
    ...(look.n?.pattern && look.n.pattern !== noFormat && { format: look.n.pattern }),
    ...(note !== "" && { note }),
    ...(Object.keys(style).length > 0 && { style }),
  };
}

function alignment(value: unknown): Pick<CellStyle, "align"> {
  const found = Object.entries(alignments).find(([, one]) => one === value);
  return found ? { align: found[0] as keyof typeof alignments } : {};
}

/** Widths in pixels; the usual one is null, and nothing is said of columns that all have it. */
function columnWidths(grid: FWorksheet, columns: number): (number | null)[] {
  const widths = Array.from({ length: columns }, (_, column) => {
    const width = grid.getColumnWidth(column);
    return width === usualColumnWidth ? null : width;
  });
  return widths.slice(0, widths.findLastIndex((width) => width !== null) + 1);
}

/** Those of so many first rows or columns that are not shown. */
function hiddenAmong(sizes: Readonly<Record<number, { hd?: unknown }>>, count: number): number[] {
  return Object.entries(sizes).flatMap(([at, size]) =>
    Number(at) < count && size?.hd === BooleanNumber.TRUE ? [Number(at)] : [],
  );
}

/** Heights of the rows that measure themselves no more. */
function heightsByHand(grid: FWorksheet): Record<number, number> {
  const heights: Record<number, number> = {};
  for (const [row, size] of Object.entries(grid.getSheet().getRowManager().getRowData())) {
    if (size?.ia === BooleanNumber.FALSE && size.h !== undefined) {
      heights[Number(row)] = Math.round(size.h);
    }
  }
  return heights;
}
