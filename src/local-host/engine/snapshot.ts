import {
  BooleanNumber,
  CellValueType,
  HorizontalAlign,
  type ICellData,
  type IRowData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import { rectangle } from "../a1";
import type { CellData, CellStyle, TabData, WorkbookData } from "../workbook-data";
import { usualColumnWidth, usualRowHeight, wrappedRowHeight } from "./row-height";

/** As the online sheet shows cells. */
const usualLook: IStyleData = { ff: "Arial", fs: 10 };

/** What every tab starts from, one that a script adds included. */
export const usualTab = {
  defaultStyle: usualLook,
  defaultRowHeight: usualRowHeight,
  defaultColumnWidth: usualColumnWidth,
} as const satisfies Partial<IWorksheetData>;

/** Room left below and beside the rows, for a coach who goes on typing. */
const spareRows = 200;
const leastRows = 400;
const leastColumns = 26;

/** The grid's own name for a tab, by its place in the workbook as opened. */
export const tabIdAt = (index: number) => `tab-${index + 1}`;

/** A workbook as the grid library loads it. Conditional formats, lists and notes are added after. */
export function gridSnapshot(workbook: WorkbookData, unitId: string): IWorkbookData {
  const styles: Record<string, IStyleData> = {};
  const styleIds = new Map<string, string>();
  const styleOf = (cell: CellData): string | undefined => {
    const style = gridStyle(cell);
    if (!style) return undefined;
    const key = JSON.stringify(style);
    const known = styleIds.get(key);
    if (known) return known;
    const id = `s${styleIds.size}`;
    styleIds.set(key, id);
    styles[id] = style;
    return id;
  };
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  const order: string[] = [];
  workbook.tabs.forEach((tab, index) => {
    const id = tabIdAt(index);
    order.push(id);
    sheets[id] = gridSheet(tab, id, styleOf);
  });
  return {
    id: unitId,
    name: workbook.name,
    appVersion: "0.25.1",
    locale: LocaleType.EN_US,
    defaultStyle: usualLook,
    styles,
    sheetOrder: order,
    sheets,
  };
}

function gridSheet(
  tab: TabData,
  id: string,
  styleOf: (cell: CellData) => string | undefined,
): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let columns = leastColumns;
  tab.cells.forEach((line, row) => {
    let cells: Record<number, ICellData> | undefined;
    line.forEach((cell, column) => {
      if (!cell) return;
      const s = styleOf(cell);
      cells ??= {};
      cells[column] = s === undefined ? gridCell(cell) : { ...gridCell(cell), s };
    });
    if (cells) cellData[row] = cells;
    columns = Math.max(columns, line.length + 2);
  });
  const size = { rows: Math.max(leastRows, tab.cells.length + spareRows), columns };
  return {
    id,
    name: tab.name,
    hidden: tab.hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    mergeData: (tab.merged ?? []).flatMap((range) => rectangle(range, size) ?? []),
    cellData,
    ...usualTab,
    rowData: withHidden({ ...wrappedRows(tab), ...rowsByHand(tab) }, tab.hiddenRows),
    rowCount: size.rows,
    columnCount: columns,
    freeze: {
      xSplit: tab.frozenColumns,
      ySplit: tab.frozenRows,
      startRow: tab.frozenRows > 0 ? tab.frozenRows : -1,
      startColumn: tab.frozenColumns > 0 ? tab.frozenColumns : -1,
    },
    columnData: withHidden(
      Object.fromEntries(
        tab.columnWidths.flatMap((w, column) => (w === null ? [] : [[column, { w }]])),
      ),
      tab.hiddenColumns,
    ),
  };
}

/** Sizes of rows or columns, with a mark on those that are not shown. */
function withHidden<T extends object>(
  sizes: Record<number, T>,
  hidden: readonly number[] = [],
): Record<number, T> {
  const marked = hidden.map((at) => [at, { ...sizes[at], hd: BooleanNumber.TRUE }] as const);
  return { ...sizes, ...(Object.fromEntries(marked) as unknown as Record<number, T>) };
}

type RowSizes = Record<number, Partial<IRowData>>;

function wrappedRows({ cells, columnWidths }: TabData): RowSizes {
  return Object.fromEntries(
    cells.flatMap((line, row) => {
      const h = wrappedRowHeight(line, columnWidths);
      return h === null ? [] : [[row, { h }]];
    }),
  );
}

/** The grid leaves these rows as high as they are. */
function rowsByHand({ rowHeights = {} }: TabData): RowSizes {
  return Object.fromEntries(
    Object.entries(rowHeights).map(([row, h]) => [Number(row), { h, ia: BooleanNumber.FALSE }]),
  );
}

/** A value as the grid's cell: type written down, so that text which looks like a number stays text. */
function gridCell({ value, formula }: Pick<CellData, "value" | "formula">): ICellData {
  const cell: ICellData =
    typeof value === "boolean"
      ? { v: value ? 1 : 0, t: CellValueType.BOOLEAN }
      : typeof value === "number"
        ? { v: value, t: CellValueType.NUMBER }
        : value === null
          ? {}
          : { v: value, t: CellValueType.STRING };
  return formula === undefined ? cell : { ...cell, f: formula };
}

/** What a formula without a format has here: the grid would give it that of the cells it names. */
export const noFormat = "General";

function gridStyle({ format, formula, style }: CellData): IStyleData | null {
  const pattern = format ?? (formula === undefined ? undefined : noFormat);
  const made: IStyleData = {
    ...(pattern !== undefined && { n: { pattern } }),
    ...(style && gridLook(style)),
  };
  return Object.keys(made).length > 0 ? made : null;
}

function gridLook(style: CellStyle): IStyleData {
  return {
    ...(style.bold && { bl: BooleanNumber.TRUE }),
    ...(style.italic && { it: BooleanNumber.TRUE }),
    ...(style.colour !== undefined && { cl: { rgb: style.colour } }),
    ...(style.background !== undefined && { bg: { rgb: style.background } }),
    ...(style.align !== undefined && { ht: alignments[style.align] }),
    ...(style.upright !== undefined && { vt: uprights[style.upright] }),
    ...(style.wrap && { tb: WrapStrategy.WRAP }),
  };
}

export const alignments = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;

export const uprights = { top: VerticalAlign.TOP, middle: VerticalAlign.MIDDLE } as const;
