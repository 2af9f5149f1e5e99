import type { Cells } from "../../cells";
import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { carriedColumns } from "../../table/carried-columns";
import { mayBeName, namesSummary } from "../../table/read-lines";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import type { LayoutContext } from "../layout-context";
import { Unfolded } from "../unfolded";
import { tellUnread } from "./beside-dates";
import { type DateHeader, dateHeaders } from "./date-header";

/** One athlete's row under a header of dates. */
export type BlockRow = {
  readonly row: number;
  readonly athlete: string;
  readonly nameColumn: number;
};

/** One block: its header, the words that introduce it, and its athletes' rows. */
export type Block = {
  readonly header: DateHeader;
  /** Title lines above the header and the header's first cell. */
  readonly titles: readonly string[];
  readonly rows: readonly BlockRow[];
  /** Columns before the dates that the table knows ("lift", "event"), by meaning. */
  readonly known: ReadonlyMap<string, number>;
  /** Text of footnotes by their mark, "*" to "hands on knees". */
  readonly footnotes: ReadonlyMap<string, string>;
};

/** The blocks of a tab whose dates run across, and what they are unfolded into; null where none do. */
export function gridOf(context: LayoutContext): { into: Unfolded; blocks: Block[] } | null {
  const headers = dateHeaders(context);
  if (headers.length === 0) return null;
  const { table, cells, leftAlone } = context;
  const into = new Unfolded(table, cells, headers[0]!.firstRow, leftAlone);
  return { into, blocks: blocksOf(context, headers, into) };
}

/** True where a name stands in a row under one of the tab's headers of dates. */
export function namesAnybody(context: LayoutContext): boolean {
  return gridOf(context)?.blocks.some(({ rows }) => rows.length > 0) === true;
}

/**
 * Cuts a tab into blocks and says of every row what it is, and of every date that nothing settles;
 * sections and averages are no athletes.
 */
function blocksOf(context: LayoutContext, headers: readonly DateHeader[], into: Unfolded): Block[] {
  const { cells, end } = context;
  const blocks: Block[] = [];
  let from = 0;
  // Lone words below a block's last athlete are the next block's title.
  let titlesBelow: string[] = [];
  headers.forEach((header, at) => {
    const last = (headers[at + 1]?.firstRow ?? end) - 1;
    const titles = titlesBelow;
    titlesBelow = [];
    for (let row = from; row < header.firstRow; row++) {
      const line = cells[row]!;
      into.mark(row, "heading");
      if (holdsFigures(line)) into.report("row-unread", row, 0, {}, true);
      for (const cell of line) if (typeof cell === "string") titles.push(cell);
    }
    const known = knownColumns(context, header);
    const nameColumn = known.get("athlete") ?? firstTextColumn(context, header, last);
    for (let row = header.firstRow; row <= header.lastRow; row++) {
      into.mark(row, "heading");
      const headCell = cells[row]![nameColumn];
      if (typeof headCell === "string" && headCell !== "" && !known.has("athlete"))
        titles.push(headCell);
    }
    for (const { row, column, code, facts } of header.unsettled)
      into.report(code, row, column, facts);
    const rows: BlockRow[] = [];
    const footnotes = new Map<string, string>();
    // Of sums there are mostly several, one below another.
    const standsAlone = (row: number) =>
      [row - 1, row + 1].every((beside) => !namesSummary(cells[beside]?.[nameColumn]));
    const below = { first: header.lastRow + 1, end: last + 1, nameColumn };
    const namesBlank = blanksBelowNames(cells, below, known);
    let above = "";
    for (let row = header.lastRow + 1; row <= last; row++) {
      const line = cells[row]!;
      const name = line[nameColumn];
      const filled = line.filter((cell) => !isBlank(cell)).length;
      if (filled === 0) continue;
      const foot = typeof name === "string" ? /^(\*+|†)\s*(.+)/s.exec(name.trim()) : null;
      if (foot !== null) footnotes.set(foot[1]!, foot[2]!);
      // A lone word in the first column is a section or a title, averages are no athlete.
      const alone = filled === 1 && !isBlank(name) && typeof name === "string";
      const isSummary = namesSummary(name) && !(mayBeName(name) && standsAlone(row));
      if (foot !== null || isSummary || alone) {
        into.mark(row, "heading");
        if (foot === null && alone && !isSummary) titlesBelow.push(name);
        if (foot === null) above = "";
        continue;
      }
      titlesBelow = [];
      const named = isBlank(name) ? "" : String(name).trim().replace(/\s+/g, " ");
      const athlete = named || (namesBlank(line) ? above : "");
      above = athlete;
      if (athlete === "") into.report("needed-blank", row, nameColumn, { heading: "athlete" });
      else rows.push({ row, athlete, nameColumn });
    }
    from = last + 1;
    tellUnread(into, { header, known, rows });
    blocks.push({ header, titles, rows, known, footnotes });
  });
  return blocks;
}

/**
 * True for a row with a lift or test of its own where names stand only at the first of an athlete's
 * rows, as merged cells do.
 */
function blanksBelowNames(
  cells: Cells,
  { first, end, nameColumn }: { first: number; end: number; nameColumn: number },
  known: ReadonlyMap<string, number>,
): (line: readonly unknown[]) => boolean {
  const own = known.get("exercise") ?? known.get("test");
  if (own === undefined) return () => false;
  const athlete = { index: nameColumn, unit: null, heading: "", words: "athlete" };
  const carried = carriedColumns(cells, first, end, { athlete }).has("athlete");
  return (line) => carried && !isBlank(line[own]);
}

const isYear = (figure: number) => figure >= 1900 && figure <= 2100;

/** Figures are no title: any beside a day, and all but a year or weeks that are counted. */
function holdsFigures(line: readonly unknown[]): boolean {
  const figures = line.filter((cell) => typeof cell === "number");
  if (line.some((cell) => dayOfCell(cell))) return figures.length > 0;
  return !figures.every(
    (figure, at) =>
      Number.isInteger(figure) &&
      (figure <= 53 || isYear(figure)) &&
      figure >= (figures[at - 1] ?? figure),
  );
}

function knownColumns(
  { table, cells }: LayoutContext,
  header: DateHeader,
): ReadonlyMap<string, number> {
  const lookup = headingLookup(table);
  const known = new Map<string, number>();
  for (const row of [header.lastRow, header.firstRow])
    cells[row]!.forEach((cell, column) => {
      if (header.under.has(column)) return;
      const field = lookup.get(headerWords(cell).words);
      if (field !== undefined && !known.has(field)) known.set(field, column);
    });
  return known;
}

function firstTextColumn({ cells }: LayoutContext, header: DateHeader, last: number): number {
  // A date that cannot be told heads no names either.
  const taken = new Set(
    [...header.days, ...header.unsettled, ...header.noteColumns].map(({ column }) => column),
  );
  for (let column = 0; column < 6; column++) {
    if (taken.has(column)) continue;
    for (let row = header.lastRow + 1; row <= last; row++) {
      const cell = cells[row]![column];
      if (typeof cell === "string" && cell !== "") return column;
    }
  }
  return 0;
}
