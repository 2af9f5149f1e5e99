import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import type { LayoutContext } from "../layout-context";
import { Unfolded } from "../unfolded";
import { type AthleteRow, athleteRows } from "./athlete-rows";
import { tellUnread } from "./beside-dates";
import { type DateHeader, dateHeaders } from "./date-header";
import { titlesAbove } from "./titles-above";

/** One block: its header, the words that introduce it, and its athletes' rows. */
export type Block = {
  readonly header: DateHeader;
  /** Title lines above the header and the header's first cell. */
  readonly titles: readonly string[];
  readonly rows: readonly AthleteRow[];
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
  let from = 0;
  let titlesBelow: readonly string[] = [];
  return headers.map((header, at) => {
    const next = headers[at + 1]?.firstRow ?? end;
    const titles = [...titlesBelow, ...titlesAbove(into, from, header.firstRow)];
    const known = knownColumns(context, header);
    const nameColumn = known.get("athlete") ?? firstTextColumn(context, header, next - 1);
    for (let row = header.firstRow; row <= header.lastRow; row++) {
      into.mark(row, "heading");
      const headCell = cells[row]![nameColumn];
      if (typeof headCell === "string" && headCell !== "" && !known.has("athlete"))
        titles.push(headCell);
    }
    for (const { row, column, code, facts } of header.unsettled)
      into.report(code, row, column, facts);
    const left = Math.min(...header.under.keys());
    const below = { first: header.lastRow + 1, end: next, nameColumn, left };
    const { rows, footnotes, titles: lastWords } = athleteRows(into, below, known);
    from = next;
    titlesBelow = lastWords;
    tellUnread(into, { header, known, rows });
    return { header, titles, rows, known, footnotes };
  });
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
