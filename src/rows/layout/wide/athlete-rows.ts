import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { carriedColumns } from "../../table/carried-columns";
import { mayBeName, namesSummary } from "../../table/summary-lines";
import { isBlank } from "../../value/blank";
import { figures } from "../across/heading-parts";
import type { Unfolded } from "../unfolded";

/** One athlete's row under a header of dates. */
export type AthleteRow = {
  readonly row: number;
  readonly athlete: string;
  readonly nameColumn: number;
};

/** The rows below a header of dates, up to the next one, the column of their names, and that of the first date. */
type Below = {
  readonly first: number;
  readonly end: number;
  readonly nameColumn: number;
  readonly left: number;
};

/**
 * Every athlete's row below a header of dates, its footnotes by their mark, and the lone words below the
 * last athlete, which are the next block's titles. Reports `needed-blank` for a row without a name, and
 * `figures-in-rows` for one of loads, of repetitions or of speeds alone.
 */
export function athleteRows(
  into: Unfolded,
  below: Below,
  known: ReadonlyMap<string, number>,
): { rows: AthleteRow[]; footnotes: ReadonlyMap<string, string>; titles: string[] } {
  const { source: cells } = into;
  const { first, end, nameColumn, left } = below;
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
    const foot = filled > 2 ? null : footnoteOf(line, nameColumn);
    const isSummary = namesSummary(name) && !(mayBeName(name) && standsAlone(row));
    if (foot !== null) {
      footnotes.set(foot.mark, foot.words);
      into.mark(row, "heading");
    } else if (isSummary || (filled === 1 && isWords(name))) {
      // A lone word in the first column is a section or a title, averages are no athlete.
      into.mark(row, "heading");
      if (!isSummary) titles.push(name as string);
      above = "";
    } else if (ofLifts.has(into.table) && line.slice(0, left).some(namesFigure))
      into.report("figures-in-rows", row, line.findIndex(namesFigure));
    else {
      titles = [];
      const named = isBlank(name) ? "" : String(name).trim().replace(/\s+/g, " ");
      const athlete = named || (namesBlank(line) ? above : "");
      above = athlete;
      if (athlete === "") into.report("needed-blank", row, nameColumn, { heading: "athlete" });
      else rows.push({ row, athlete, nameColumn });
    }
  }
  return { rows, footnotes, titles };
}

/** Tables that such a grid would be taken for. */
const ofLifts = new Set(["Sets", "Jumps"]);

/** "Load", "reps", "speed" beside a name: what stands under each date is that figure of one set. */
const namesFigure = (cell: unknown): boolean =>
  figures.test(headingLookup("Sets").get(headerWords(cell).words) ?? "");

const isWords = (cell: unknown) => typeof cell === "string" && !isBlank(cell);

/** Words after a mark in a row of no more than a name and a word; a name so marked has figures in its row. */
function footnoteOf(
  line: readonly unknown[],
  nameColumn: number,
): { readonly mark: string; readonly words: string } | null {
  if (line.some((cell, at) => at !== nameColumn && hasDigit(cell))) return null;
  const name = line[nameColumn];
  const [, mark, words] = (typeof name === "string" && /^(\*+|†)\s*(.+)/s.exec(name.trim())) || [];
  return words === undefined ? null : { mark: mark!, words };
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
