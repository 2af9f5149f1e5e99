import type * as Excel from "exceljs";
import { cellName } from "../../a1";
import { isDateFormat } from "../../spreadsheet-date";
import type { CellData, TabData, WorkbookData } from "../../workbook-data";
import { argbOf } from "./cell-from-file";
import { callsOwn, fillMarks } from "./fill-marks";
import { formulaForFile } from "./formula-text";
import { type Book, fillsKey, memoryTab, rulesOf, type Sheet, setRules, widthOf } from "./library";

/** The grid's usual column; wider or narrower ones are written to the file. */
const usualPixels = 88;
const daysBetweenSystems = 1462;

/**
 * Writes what changed between two states of a workbook into a file's book. Cells that did not change
 * are not touched, so that all they hold in the file stays.
 *
 * @param before as it was read from this book; null for a new one
 * @param own names of the add-on's functions, upper case
 */
export function dataToBook(
  book: Book,
  before: WorkbookData | null,
  after: WorkbookData,
  own: ReadonlySet<string>,
): void {
  const oldTabs = new Map((before?.tabs ?? []).map((tab) => [tab.name, tab]));
  renameTabs(book, before, after, oldTabs);
  const wanted = new Set(after.tabs.map(({ name }) => name));
  for (const sheet of [...book.worksheets]) {
    if (!wanted.has(sheet.name)) book.removeWorksheet(sheet.id);
  }
  after.tabs.forEach((tab, place) => {
    const sheet = book.getWorksheet(tab.name) ?? book.addWorksheet(tab.name);
    (sheet as unknown as { orderNo: number }).orderNo = place + 1;
    writeTab(sheet, oldTabs.get(tab.name) ?? null, tab, book.properties.date1904 === true, own);
  });
  writeMemory(book, after, own);
}

/** A tab that stands in the old one's place under a new name is the old one renamed. */
function renameTabs(
  book: Book,
  before: WorkbookData | null,
  after: WorkbookData,
  oldTabs: Map<string, TabData>,
): void {
  if (!before || before.tabs.length !== after.tabs.length) return;
  const names = new Set(after.tabs.map(({ name }) => name));
  before.tabs.forEach((old, place) => {
    const { name } = after.tabs[place]!;
    if (old.name === name || names.has(old.name) || oldTabs.has(name)) return;
    const sheet = book.getWorksheet(old.name);
    if (!sheet) return;
    sheet.name = name;
    oldTabs.set(name, old);
  });
}

function writeTab(
  sheet: Sheet,
  before: TabData | null,
  after: TabData,
  from1904: boolean,
  own: ReadonlySet<string>,
): void {
  // A formula's results give way before anything is written, and come last, over emptied cells.
  const changed = changedCells(before, after);
  for (const { row, column, was } of changed) clearFills(sheet, row, column, was);
  for (const change of changed) writeCell(sheet, change, from1904, own);
  for (const { row, column, is } of changed) writeFills(sheet, row, column, is);
  after.columnWidths.forEach((pixels, column) => {
    const was = before?.columnWidths[column] ?? usualPixels;
    if (pixels === null || Math.abs(pixels - was) <= 1) return;
    sheet.getColumn(column + 1).width = widthOf(pixels);
  });
  const { frozenRows, frozenColumns, hidden = false } = after;
  if (frozenRows !== (before?.frozenRows ?? 0) || frozenColumns !== (before?.frozenColumns ?? 0)) {
    const split = { xSplit: frozenColumns, ySplit: frozenRows };
    const frozen = frozenRows + frozenColumns > 0;
    sheet.views = [frozen ? { state: "frozen", ...split } : { state: "normal" }];
  }
  if (hidden !== (before?.hidden ?? false)) sheet.state = hidden ? "hidden" : "visible";
  writeMerges(sheet, before?.merged ?? [], after.merged ?? []);
  if (!same(before?.conditionalFormats ?? [], after.conditionalFormats)) writeRules(sheet, after);
}

type Change = {
  readonly row: number;
  readonly column: number;
  readonly was: CellData | null;
  readonly is: CellData | null;
};

function changedCells(before: TabData | null, after: TabData): readonly Change[] {
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

function writeCell(
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
  if (!same(held(was), held(is))) {
    cell.value =
      is?.formula === undefined ? forFile(is?.value ?? null) : formulaValue(cell, is, own);
  }
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

function clearFills(sheet: Sheet, row: number, column: number, was: CellData | null): void {
  eachFill(was?.fills, (down, right) => {
    sheet.getCell(row + 1 + down, column + 1 + right).value = null;
  });
}

function writeFills(sheet: Sheet, row: number, column: number, is: CellData | null): void {
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

function writeMerges(sheet: Sheet, before: readonly string[], after: readonly string[]): void {
  for (const range of before) if (!after.includes(range)) sheet.unMergeCells(range);
  for (const range of after) if (!before.includes(range)) sheet.mergeCells(range);
}

/** Rules by formula are written anew; those of other kinds stay before them. */
function writeRules(sheet: Sheet, { conditionalFormats }: TabData): void {
  const others = rulesOf(sheet)
    .map(({ ref, rules }) => ({ ref, rules: rules.filter(({ type }) => type !== "expression") }))
    .filter(({ rules }) => rules.length > 0);
  const first =
    1 + Math.max(0, ...others.flatMap(({ rules }) => rules.map((rule) => rule.priority ?? 0)));
  setRules(sheet, [
    ...others,
    ...conditionalFormats.map(({ ranges, formula, background, colour, bold, italic }, i) => ({
      ref: ranges.join(" "),
      rules: [
        {
          type: "expression",
          formulae: [formulaForFile(formula)],
          priority: first + i,
          style: {
            font: {
              ...(bold && { bold }),
              ...(italic && { italic }),
              ...(colour !== undefined && { color: { argb: argbOf(colour) } }),
            },
            ...(background !== undefined && {
              fill: { type: "pattern", pattern: "solid", bgColor: { argb: argbOf(background) } },
            }),
          } as Partial<Excel.Style>,
        },
      ],
    })),
  ]);
}

/** What the add-on remembers stands in a tab no program shows. */
function writeMemory(book: Book, workbook: WorkbookData, own: ReadonlySet<string>): void {
  const entries: string[][] = Object.entries(workbook.properties);
  for (const { tab, ref, sum } of fillMarks(workbook, own)) entries.push([fillsKey, tab, ref, sum]);
  const old = book.getWorksheet(memoryTab);
  if (old) book.removeWorksheet(old.id);
  if (entries.length === 0) return;
  const sheet = book.addWorksheet(memoryTab, { state: "veryHidden" });
  for (const entry of entries) sheet.addRow(entry);
}

/** Equal as data, whatever order their parts were made in. */
function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => same(one[key], other[key]));
}
