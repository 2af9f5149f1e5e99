import { type Day, isoFromDay } from "../../../coaching/calendar/day";
import type { Placed } from "../flat-rows";
import type { LayoutContext } from "../layout-context";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import type { AthleteRow } from "./athlete-rows";
import { besideDates } from "./beside-dates";
import { filledColumns } from "./column-groups";
import { type DiaryQuestion, diaryQuestion, looksAnswered } from "./diary-question";
import { type Block, gridOf } from "./grid-blocks";
import { weekNotes } from "./week-notes";

/**
 * One row an athlete, dates across, the answers to one question in the cells or to several in columns
 * under each date. The question is read from the title lines nearest above the dates, else from the
 * tab's name. Null when dates do not run across, or when nothing speaks of a diary and the coach has
 * not said so. Reports `diary-question-missing` at dates over answers to nobody knows what.
 */
export function unfoldWideDiary(context: LayoutContext): Unfolded | null {
  const grid = gridOf(context);
  if (grid === null) return null;
  const { into, blocks } = grid;
  const asked = blocks.map((block) => ({
    block,
    question: diaryQuestion([...block.titles].reverse(), context.title),
  }));
  if (!context.said && !asked.some(({ block, question }) => isDiary(context, block, question)))
    return null;
  for (const { block, question } of asked) {
    const { header, rows } = block;
    const named = header.days.some(({ field }) => field !== null);
    if (question !== null || named) {
      for (const row of rows) diaryRow(context.cells, into, block, row, question);
      continue;
    }
    const [first] = header.under.keys();
    into.log.addAtSource("diary-question-missing", header.firstRow, first!);
    for (const { row } of rows) into.mark(row, "reported");
  }
  return into;
}

/** A question of the diary above answers that may be its own; columns under dates name theirs. */
function isDiary({ cells }: LayoutContext, block: Block, question: DiaryQuestion | null): boolean {
  const { days, unsettled } = block.header;
  if (days.some(({ field }) => field !== null)) return true;
  // Dates still to be settled head columns that speak all the same.
  const columns = [...days, ...unsettled].map(({ column }) => column);
  const answers = block.rows.flatMap(({ row }) => columns.map((column) => cells[row]![column]));
  return question !== null && looksAnswered(question, answers);
}

function diaryRow(
  cells: LayoutContext["cells"],
  into: Unfolded,
  block: Block,
  of: AthleteRow,
  question: DiaryQuestion | null,
): void {
  const { row, athlete, nameColumn } = of;
  const { header } = block;
  const line = cells[row]!;
  weekNotes(into, header, line, of);
  const byDay = new Map<Day, Record<string, Placed>>();
  const asked = header.days.map((column) =>
    column.field === null ? { ...column, ...question } : column,
  );
  for (const { column, day, field, unit, cell } of filledColumns(
    into,
    line,
    row,
    asked,
    new Map(),
  )) {
    const flat = byDay.get(day) ?? {
      ...besideDates(into, block, line),
      day: [isoFromDay(day), column],
      athlete: [athlete, nameColumn],
    };
    byDay.set(day, flat);
    flat[field] = [withUnit(cell, unit), column];
  }
  for (const flat of byDay.values()) into.emit(row, flat);
}
