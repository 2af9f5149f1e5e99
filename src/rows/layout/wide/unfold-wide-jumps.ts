import { isoFromDay } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import type { LayoutContext } from "../layout-context";
import type { Placed, Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { AthleteRow } from "./athlete-rows";
import { besideDates } from "./beside-dates";
import { ColumnGroups, filledColumns } from "./column-groups";
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
  const heightUnit = title.parts.find(({ part }) => part === "height")?.unit ?? title.unit;
  weekNotes(into, block.header, line, of);
  const wholeRow = besideDates(into, block, line);
  const groups = new ColumnGroups();
  for (const column of block.header.days) groups.add(column);
  const before = new Map<string, unknown>();
  for (const columns of groups.groups) {
    const { day, column: at, field: heads } = columns[0]!;
    const { firstRow, lastRow } = block.header;
    // "Drop" names no test where it is what was dropped from.
    const mayBeTest = lastRow > firstRow && (heads === null || isPart(heads));
    const under = mayBeTest ? testUnderDate(cells[lastRow]![at]) : null;
    const { landingStack, dropCm, landingCm } = under === null ? title : jumpTitle(under);
    // What stands beside the figures under one date ("drop cm", "cleared") holds for all of them.
    const others = columns.filter(({ field }) => !isPart(field));
    const beside: Record<string, Placed> = {};
    for (const { field, column, unit, cell } of filledColumns(into, line, row, others, before))
      beside[field] = [withUnit(cell, unit), column];
    const flats: Record<string, Placed>[] = Object.keys(beside).length > 0 ? [{}] : [];
    const words: string[] = [];
    for (const { column, field, unit } of columns) {
      if (field !== null && !isPart(field)) continue;
      const parts = field === null ? title.parts.map(({ part }) => part) : [field];
      const said = jumpCell(line[column], parts);
      words.push(said.note, block.footnotes.get(said.mark) ?? "");
      if (said.problem !== null) tellProblem(into, row, column, said.problem, line[column], title);
      into.note(row, column, athlete, day, "day", said.note);
      said.attempts.forEach((attempt, first) => {
        // The same figure once more is another jump.
        let at = first;
        while (Object.keys(attempt).some((part) => flats[at]?.[part] !== undefined)) at++;
        flats[at] ??= {};
        const flat = flats[at]!;
        for (const [part, figure] of Object.entries(attempt))
          flat[part] = [part === "height" ? withUnit(figure, unit ?? heightUnit) : figure, column];
      });
    }
    const { column } = columns[0]!;
    const note = words.filter(Boolean).join("; ");
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
