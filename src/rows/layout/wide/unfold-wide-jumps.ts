import { isoFromDay } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import type { Placed } from "../flat-rows";
import type { LayoutContext } from "../layout-context";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { AthleteRow } from "./athlete-rows";
import { besideDates } from "./beside-dates";
import { ColumnGroups, filledColumns } from "./column-groups";
import type { DayColumn } from "./date-header";
import { type Block, gridOf } from "./grid-blocks";
import { jumpCell } from "./jump-cell";
import { type JumpPart, type JumpTitle, jumpTitle } from "./jump-title";
import { testUnderDate } from "./sub-headings";
import { weekNotes } from "./week-notes";

/** Test days across, one row an athlete, one block a test. Null when it is not that. */
export function unfoldWideJumps(context: LayoutContext): Unfolded | null {
  const grid = gridOf(context);
  if (grid === null) return null;
  const { into, blocks } = grid;
  for (const block of blocks) {
    const named =
      [...block.titles].reverse().find((title) => /[a-z]{3}/i.test(title)) ?? context.title;
    const title = jumpTitle(named);
    for (const row of block.rows) unfoldRow(context, into, block, row, title);
  }
  return into;
}

function unfoldRow(
  { cells }: LayoutContext,
  into: Unfolded,
  block: Block,
  of: AthleteRow,
  title: JumpTitle,
): void {
  const { row, athlete, nameColumn } = of;
  const line = cells[row]!;
  const testColumn = block.known.get("test") ?? -1;
  const test = isBlank(line[testColumn]) ? title.test : line[testColumn];
  weekNotes(into, block.header, line, of);
  const wholeRow = besideDates(into, block, line);
  const groups = new ColumnGroups();
  for (const column of block.header.days) groups.add(column);
  const before = new Map<string, unknown>();
  for (const columns of groups.groups) {
    const { day, column } = columns[0]!;
    const under = testUnder(cells, block, columns[0]!);
    const { landingStack, dropCm, landingCm } = under === null ? title : jumpTitle(under);
    // What stands beside the figures under one date ("drop cm", "cleared") holds for all of them.
    const others = columns.filter(({ field }) => !isPart(field));
    const beside: Flat = {};
    for (const { field, column, unit, cell } of filledColumns(into, line, row, others, before))
      beside[field] = [withUnit(cell, unit), column];
    const figures = columns.filter(({ field }) => field === null || isPart(field));
    const { jumps, note } = jumpsOfDay(into, block, of, line, title, figures);
    const flats = jumps.length === 0 && Object.keys(beside).length > 0 ? [{}] : jumps;
    for (const flat of flats)
      into.emit(row, {
        day: [isoFromDay(day), column],
        athlete: [athlete, nameColumn],
        test: under === null ? [test, nameColumn] : [under, column],
        stack: landingStack === null ? undefined : [landingStack, column],
        drop: [dropCm, column],
        landing: [landingCm, column],
        ...wholeRow,
        note: [note, column],
        ...flat,
        ...beside,
      });
  }
}

type Flat = Record<string, Placed>;

/** The test named under a date; "Drop" names none where it is what was dropped from. */
function testUnder(
  cells: LayoutContext["cells"],
  { header: { firstRow, lastRow } }: Block,
  { column, field }: DayColumn,
): string | null {
  const mayBeTest = lastRow > firstRow && (field === null || isPart(field));
  return mayBeTest ? testUnderDate(cells[lastRow]![column]) : null;
}

/** The jumps in one athlete's cells under one date, by try, and the words beside them. */
function jumpsOfDay(
  into: Unfolded,
  block: Block,
  { row, athlete }: AthleteRow,
  line: readonly unknown[],
  title: JumpTitle,
  columns: readonly DayColumn[],
): { readonly jumps: readonly Flat[]; readonly note: string } {
  const heightUnit = title.parts.find(({ part }) => part === "height")?.unit ?? title.unit;
  const jumps: Flat[] = [];
  const words: string[] = [];
  for (const { column, day, field, unit } of columns) {
    const parts = isPart(field) ? [field] : title.parts.map(({ part }) => part);
    const said = jumpCell(line[column], parts);
    words.push(said.note, block.footnotes.get(said.mark) ?? "");
    if (said.problem !== null) tellProblem(into, row, column, said.problem, line[column], title);
    into.note(row, column, athlete, day, "day", said.note);
    said.attempts.forEach((attempt, first) => {
      // The same figure once more is another jump.
      let at = first;
      while (Object.keys(attempt).some((part) => jumps[at]?.[part] !== undefined)) at++;
      jumps[at] ??= {};
      const jump = jumps[at]!;
      for (const [part, figure] of Object.entries(attempt))
        jump[part] = [part === "height" ? withUnit(figure, unit ?? heightUnit) : figure, column];
    });
  }
  return { jumps, note: words.filter(Boolean).join("; ") };
}

/** Says what is wrong with a cell; of a doubtful figure what it would be. */
function tellProblem(
  into: Unfolded,
  row: number,
  column: number,
  code: string,
  cell: unknown,
  { test }: JumpTitle,
): void {
  const mend = Number(String(cell).replace(/\?|\s/g, "").replace(",", "."));
  const facts = code === "unsure" && Number.isFinite(mend) ? { mend, heading: test } : {};
  into.report(code, row, column, facts);
}

function isPart(field: string | null): field is JumpPart {
  return field === "contact" || field === "flight" || field === "height" || field === "stack";
}
