import type { CellData, TabData, WorkbookData } from "../../workbook-data";
import { type LineMove, lineMove, placeOf } from "./line-move";
import type { TabMoves } from "./moved-formula";

/**
 * The tab of the file that a tab of the workbook was: of its name; or renamed, in its place or with most
 * of its rows as they were.
 */
export function tabBefore(
  before: WorkbookData | null,
  after: WorkbookData,
  place: number,
): TabData | undefined {
  const tab = after.tabs[place]!;
  const known = before?.tabs.find(({ name }) => name === tab.name);
  if (known || !before) return known;
  const gone = before.tabs.filter((old) => after.tabs.every(({ name }) => name !== old.name));
  const old = before.tabs[place];
  if (before.tabs.length === after.tabs.length && old && gone.includes(old)) return old;
  const come = after.tabs.filter((one) => before.tabs.every(({ name }) => name !== one.name));
  return gone.find((one) => isAlike(one, tab) && come.find((now) => isAlike(one, now)) === tab);
}

/** Whether more than half of a tab's rows stand in another. */
function isAlike(old: TabData, now: TabData): boolean {
  const rows = ({ cells }: TabData) => cells.map(textOf).filter((row) => row !== "");
  const standing = new Set(rows(now));
  const known = rows(old);
  return known.filter((row) => standing.has(row)).length * 2 > known.length;
}

/** What became of each tab of a file; a tab that is as it was, or gone, is not among them. */
export function tabMoves(before: WorkbookData, after: WorkbookData): TabMoves {
  return new Map(
    after.tabs.flatMap((tab, place) => {
      const old = tabBefore(before, after, place);
      if (!old) return [];
      const rows = lineMove(old.cells.map(textOf), tab.cells.map(textOf));
      const columns = columnMove(old.cells, tab.cells, rows);
      const moved = rows !== null || columns !== null || old.name !== tab.name;
      return moved ? [[old.name, { name: tab.name, rows, columns }] as const] : [];
    }),
  );
}

type Lines = TabData["cells"];

/** What stands in a cell, as one text. Formulas follow the lines by themselves, and read otherwise then. */
function cellText(cell: CellData | null | undefined): string {
  if (!cell || (cell.value === null && cell.formula === undefined)) return "";
  return cell.formula === undefined ? `${typeof cell.value} ${cell.value}` : "=";
}

/** Columns may come and go beside it: a row's text does not say where its cells stand. */
function textOf(line: readonly (CellData | null)[]): string {
  return line
    .map(cellText)
    .filter((text) => text !== "")
    .join("\n");
}

function columnMove(old: Lines, now: Lines, rows: LineMove | null): LineMove | null {
  const width = (lines: Lines) => lines.reduce((most, line) => Math.max(most, line.length), 0);
  const [oldWidth, newWidth] = [width(old), width(now)];
  if (oldWidth === newWidth) return null;
  const kept = old.flatMap((line, at) => {
    const place = placeOf(rows, at);
    return place === null ? [] : [[line, now[place] ?? []] as const];
  });
  const texts = (side: 0 | 1, columns: number) =>
    Array.from({ length: columns }, (_, column) => {
      const all = kept.map((lines) => cellText(lines[side][column]));
      return all.every((text) => text === "") ? "" : all.join("\n");
    });
  return lineMove(texts(0, oldWidth), texts(1, newWidth));
}
