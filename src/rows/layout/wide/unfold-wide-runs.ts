import { type Day, isoFromDay } from "../../../coaching/calendar/day";
import { plainWords } from "../../header/header-words";
import { isBlank } from "../../value/blank";
import type { Placed } from "../flat-rows";
import type { LayoutContext } from "../layout-context";
import { liftInWords, namesJump } from "../lift-in-words";
import { type RunCell, runCell, type WrittenRun } from "../shorthand/run-cell";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { AthleteRow } from "./athlete-rows";
import { ColumnGroups, filledColumns } from "./column-groups";
import { type Block, gridOf } from "./grid-blocks";
import { repeatedIn } from "./repeated-in-row";
import { weekNotes } from "./week-notes";

/**
 * One row an athlete, dates across, a run in each cell or its minutes and exertion in columns under
 * the date. Null when dates do not run across, or when nothing speaks of runs and the coach has not
 * said so. Reports `run-figure-unsettled` for bare numbers and `run-unread`.
 */
export function unfoldWideRuns(context: LayoutContext): Unfolded | null {
  const grid = gridOf(context);
  if (grid === null) return null;
  const { into, blocks } = grid;
  if (!context.said && !blocks.some((block) => speaksOfRuns(context, block))) return null;
  for (const block of blocks) {
    const bare = context.tab.runs ?? bareFigure(titlesOf(context, block));
    for (const row of block.rows) runsRow(context.cells, into, block, row, bare);
  }
  return into;
}

function titlesOf({ title }: LayoutContext, { titles }: Block): string {
  return plainWords([...titles, title].join(" | "));
}

function bareFigure(words: string): "minutes" | "km" | null {
  const time = /\b(min|mins|minutes|minuten|duration|time on feet)\b/.test(words);
  const distance = /\b(km|kms|kilomet(?:re|er)s?|distance|mileage|umfang)\b/.test(words);
  return time === distance ? null : time ? "minutes" : "km";
}

/** A title that names runs, or cells half of which are a run in words, "45 easy" or "8 km". */
function speaksOfRuns(context: LayoutContext, block: Block): boolean {
  const words = titlesOf(context, block);
  if (liftInWords(words) !== null || namesJump(words)) return false;
  if (/\b(runs?|running|mileage|laufe?|lauftraining|laufplan)\b/.test(words)) return true;
  let filled = 0;
  let spoken = 0;
  // Dates still to be settled head columns that speak all the same.
  const columns = [...block.header.days, ...block.header.unsettled].map(({ column }) => column);
  for (const { row } of block.rows)
    for (const column of columns) {
      const cell = context.cells[row]![column];
      if (isBlank(cell)) continue;
      filled++;
      const said = runCell(cell, "minutes");
      if (said.is === "run" && /\p{L}|['’]/u.test(String(cell))) spoken++;
    }
  return filled >= 3 && spoken >= filled / 2;
}

function runsRow(
  cells: LayoutContext["cells"],
  into: Unfolded,
  block: Block,
  of: AthleteRow,
  bare: "minutes" | "km" | null,
): void {
  const { row, athlete, nameColumn } = of;
  const line = cells[row]!;
  const shared = (day: Day, column: number): Record<string, Placed> => ({
    day: [isoFromDay(day), column],
    athlete: [athlete, nameColumn],
  });
  weekNotes(into, block.header, line, of);
  const done = new Map<Day, WrittenRun>();
  const inColumns = new ColumnGroups();
  let left: WrittenRun | null = null;
  for (const dayColumn of block.header.days) {
    const { column, day, field } = dayColumn;
    if (field !== null) {
      inColumns.add(dayColumn);
      continue;
    }
    const said = runCell(line[column], bare);
    if (said.is === "none") {
      into.note(row, column, athlete, day, "day", said.note);
      continue;
    }
    const run: WrittenRun | null = said.is === "run" ? said.run : repeatedIn(said, left, done, day);
    if (run === null) {
      into.report(problemOf(said), row, column);
      continue;
    }
    left = run;
    done.set(day, run);
    const { note, ...figures } = run;
    into.note(row, column, athlete, day, "day", note);
    const flat = shared(day, column);
    for (const [field, figure] of Object.entries(figures)) flat[field] = [figure, column];
    into.emit(row, flat);
  }
  const before = new Map<string, unknown>();
  for (const columns of inColumns.groups) {
    const filled = filledColumns(into, line, row, columns, before);
    if (filled.length === 0) continue;
    const flat = shared(filled[0]!.day, filled[0]!.column);
    for (const { field, column, unit, cell } of filled)
      flat[field] = [withUnit(cell, unit), column];
    into.emit(row, flat);
  }
}

function problemOf({ is }: RunCell): string {
  if (is === "ditto" || is === "as-weekday") return "nothing-to-repeat";
  return is === "figure-unsettled" ? "run-figure-unsettled" : "run-unread";
}
