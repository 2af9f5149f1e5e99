import { carriedColumns } from "../../table/carried-columns";
import { mayBeName, namesSummary } from "../../table/read-lines";
import { isBlank } from "../../value/blank";
import type { Unfolded } from "../unfolded";

/** One athlete's row under a header of dates. */
export type AthleteRow = {
  readonly row: number;
  readonly athlete: string;
  readonly nameColumn: number;
};

/** The rows below a header of dates, up to the next one, and the column of their names. */
type Below = { readonly first: number; readonly end: number; readonly nameColumn: number };

/**
 * Every athlete's row below a header of dates, its footnotes by their mark, and the lone words below the
 * last athlete, which are the next block's titles. Reports `needed-blank` for a row without a name.
 */
export function athleteRows(
  into: Unfolded,
  below: Below,
  known: ReadonlyMap<string, number>,
): { rows: AthleteRow[]; footnotes: ReadonlyMap<string, string>; titles: string[] } {
  const { source: cells } = into;
  const { first, end, nameColumn } = below;
  const rows: AthleteRow[] = [];
  const footnotes = new Map<string, string>();
  let titles: string[] = [];
  // Of sums there are mostly several, one below another.
  const standsAlone = (row: number) =>
    [row - 1, row + 1].every((beside) => !namesSummary(cells[beside]?.[nameColumn]));
  const namesBlank = blanksBelowNames(into, below, known);
  let above = "";
  for (let row = first; row < end; row++) {
    const line = cells[row]!;
    const name = line[nameColumn];
    const filled = line.filter((cell) => !isBlank(cell)).length;
    if (filled === 0) continue;
    // A name with a mark before it has figures in its row, or words of several days.
    const isOfDays = filled > 2 || line.some((cell, at) => at !== nameColumn && hasDigit(cell));
    const marked = typeof name === "string" ? /^(\*+|†)\s*(.+)/s.exec(name.trim()) : null;
    const foot = isOfDays ? null : marked;
    if (foot !== null) footnotes.set(foot[1]!, foot[2]!);
    // A lone word in the first column is a section or a title, averages are no athlete.
    const alone = filled === 1 && !isBlank(name) && typeof name === "string";
    const isSummary = namesSummary(name) && !(mayBeName(name) && standsAlone(row));
    if (foot !== null || isSummary || alone) {
      into.mark(row, "heading");
      if (foot === null && alone && !isSummary) titles.push(name);
      if (foot === null) above = "";
      continue;
    }
    titles = [];
    const named = isBlank(name) ? "" : String(name).trim().replace(/\s+/g, " ");
    const athlete = named || (namesBlank(line) ? above : "");
    above = athlete;
    if (athlete === "") into.report("needed-blank", row, nameColumn, { heading: "athlete" });
    else rows.push({ row, athlete, nameColumn });
  }
  return { rows, footnotes, titles };
}

const hasDigit = (cell: unknown) => /\d/.test(String(cell));

/**
 * True for a row with a lift or test of its own where names stand only at the first of an athlete's
 * rows, as merged cells do.
 */
function blanksBelowNames(
  { source: cells }: Unfolded,
  { first, end, nameColumn }: Below,
  known: ReadonlyMap<string, number>,
): (line: readonly unknown[]) => boolean {
  const own = known.get("exercise") ?? known.get("test");
  if (own === undefined) return () => false;
  const athlete = { index: nameColumn, unit: null, heading: "", words: "athlete" };
  const carried = carriedColumns(cells, first, end, { athlete }).has("athlete");
  return (line) => carried && !isBlank(line[own]);
}
