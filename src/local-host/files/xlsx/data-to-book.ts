import type { Cell, WorkbookView } from "exceljs";
import { rectangle } from "../../a1";
import type { TabData, WorkbookData } from "../../workbook-data";
import { fillMarks } from "./fill-marks";
import { writeHiddenLines } from "./hidden-lines";
import { type Book, fillsKey, memoryTab, type Sheet, widthOf } from "./library";
import { listKey, longLists } from "./long-lists";
import { changedHeights } from "./row-heights";
import { same } from "./same-data";
import { tabBefore } from "./tab-moves";
import { changedCells, clearFills, writeCell, writeFills } from "./write-cell";
import { writeRules } from "./write-rules";

const usualWindow: WorkbookView = {
  x: 0,
  y: 0,
  width: 24_000,
  height: 14_000,
  firstSheet: 0,
  activeTab: 0,
  visibility: "visible",
};
/** No tab is named so. */
const passing = "a30c2f";
/** The grid's usual column; wider or narrower ones are written to the file. */
const usualPixels = 88;

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
  const open = book.worksheets[book.views?.[0]?.activeTab ?? 0];
  const oldTabs = new Map((before?.tabs ?? []).map((tab) => [tab.name, tab]));
  const renamed = renamedTabs(book, before, after);
  // Under passing names first: the library takes two names that differ in capitals for one.
  for (const [at, { sheet }] of renamed.entries()) sheet.name = `renamed-${at}-${passing}`;
  const wanted = new Set(after.tabs.map(({ name }) => name));
  for (const sheet of [...book.worksheets]) {
    if (!wanted.has(sheet.name) && !renamed.some((one) => one.sheet === sheet))
      book.removeWorksheet(sheet.id);
  }
  for (const { sheet, name, old } of renamed) {
    sheet.name = name;
    oldTabs.set(name, old);
  }
  after.tabs.forEach((tab, place) => {
    const sheet = book.getWorksheet(tab.name) ?? book.addWorksheet(tab.name);
    (sheet as unknown as { orderNo: number }).orderNo = place + 1;
    writeTab(sheet, oldTabs.get(tab.name) ?? null, tab, book.properties.date1904 === true, own);
  });
  writeMemory(book, after, own);
  // A tab's view names its window by number: there must be one (ECMA-376 part 1, 18.3.1.87).
  const [window = usualWindow, ...others] = book.views ?? [];
  const tabs = book.worksheets;
  // The tab that was open may be another in number now, or gone: a file that opens none is damaged.
  const seen = tabs.filter(({ state }) => state === "visible");
  const activeTab = Math.max(0, tabs.indexOf(open && seen.includes(open) ? open : seen[0]!));
  book.views = [{ ...window, activeTab, firstSheet: 0 }, ...others];
}

/** The tabs that have another name now; they keep what the file holds of them. */
function renamedTabs(book: Book, before: WorkbookData | null, after: WorkbookData) {
  return after.tabs.flatMap(({ name }, place) => {
    const old = tabBefore(before, after, place);
    const sheet = old && old.name !== name ? book.getWorksheet(old.name) : undefined;
    return old && sheet ? [{ sheet, name, old }] : [];
  });
}

function writeTab(
  sheet: Sheet,
  before: TabData | null,
  after: TabData,
  from1904: boolean,
  own: ReadonlySet<string>,
): void {
  // Before the cells: what is written under a merged cell would stand in that cell.
  unmerge(sheet, before?.merged ?? [], after.merged ?? []);
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
  for (const { row, points } of changedHeights(before?.rowHeights ?? {}, after.rowHeights ?? {})) {
    (sheet.getRow(row + 1) as { height: number | undefined }).height = points;
  }
  writeHiddenLines(sheet, after, Math.max(0, ...after.cells.map((line) => line.length)));
  const { frozenRows, frozenColumns, hidden = false } = after;
  if (frozenRows !== (before?.frozenRows ?? 0) || frozenColumns !== (before?.frozenColumns ?? 0)) {
    const split = { xSplit: frozenColumns, ySplit: frozenRows };
    const frozen = frozenRows + frozenColumns > 0;
    sheet.views = [frozen ? { state: "frozen", ...split } : { state: "normal" }];
  }
  if (hidden !== (before?.hidden ?? false)) sheet.state = hidden ? "hidden" : "visible";
  for (const range of after.merged ?? [])
    if (!before?.merged?.includes(range)) sheet.mergeCellsWithoutStyle(range);
  if (!same(before?.conditionalFormats ?? [], after.conditionalFormats)) writeRules(sheet, after);
  // The library takes the usual number of the first page for one that the coach gave.
  const printed: Sheet["pageSetup"] & { useFirstPageNumber?: boolean } = sheet.pageSetup;
  if (!printed.useFirstPageNumber) delete printed.firstPageNumber;
}

/** Takes merged cells apart that are merged no more; the library would take their looks, too. */
function unmerge(sheet: Sheet, before: readonly string[], after: readonly string[]): void {
  for (const range of before) {
    if (after.includes(range)) continue;
    const looks = cellsIn(sheet, range).map((cell) => ({ cell, style: cell.style }));
    sheet.unMergeCells(range);
    for (const { cell, style } of looks) cell.style = style;
  }
}

function cellsIn(sheet: Sheet, range: string): Cell[] {
  const at = rectangle(range, { rows: 0, columns: 0 });
  const cells: Cell[] = [];
  for (let row = at?.startRow ?? 0; row <= (at?.endRow ?? -1); row++) {
    for (let column = at!.startColumn; column <= at!.endColumn; column++)
      cells.push(sheet.getCell(row + 1, column + 1));
  }
  return cells;
}

/** What the add-on remembers stands in a tab no program shows. */
function writeMemory(book: Book, workbook: WorkbookData, own: ReadonlySet<string>): void {
  const entries: string[][] = [...longLists(workbook).values()].flatMap(({ values }) =>
    values.map((value) => [listKey, value]),
  );
  entries.push(...Object.entries(workbook.properties));
  for (const { tab, ref, sum } of fillMarks(workbook, own)) entries.push([fillsKey, tab, ref, sum]);
  const old = book.getWorksheet(memoryTab);
  if (old) book.removeWorksheet(old.id);
  if (entries.length === 0) return;
  const sheet = book.addWorksheet(memoryTab, { state: "veryHidden" });
  for (const entry of entries) sheet.addRow(entry);
}
