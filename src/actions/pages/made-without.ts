import { nameKey } from "../../coaching/record/name-key";
import { deletedLineWords } from "../../words/next-week-tab";
import { damagedKept } from "../answers/forget-damaged";
import type { MadeWithout } from "../page-messages";
import { rowsNotUsed } from "../row-check/rows-not-used";
import type { WeekColumn } from "../week/plan-lines";
import type { ProposedWeek } from "../week/proposed-week";
import { findWeekTab } from "../week/week-tab";
import { weekToWrite } from "../week/week-to-write";
import { weekDifference } from "../week/write-week";
import type { Workbook } from "../workbook";
import type { PrintableWeek } from "./printable-week";

/** Reasons that name a cell to ask about: on paper its place stands alone. */
const asks = new Set(["unwell", "absence", "absence-undated"]);

/** Columns whose cells paper prints from the proposal. */
const printed: readonly WeekColumn[] = [
  "marker",
  "day",
  "sets",
  "load",
  "stack",
  "contacts",
  "assistance",
];

/**
 * Cells of the Next week tab that the coach has changed, and rows deleted there: paper is made of the
 * proposal and of what was changed in the sidebar, so it says what it does not follow. Of a tab that
 * can no longer be read Next week itself tells.
 */
export function notFollowed(
  workbook: Workbook,
  week: ProposedWeek,
): Pick<PrintableWeek, "cells" | "deleted"> {
  const none = { cells: [], deleted: [] };
  if (!findWeekTab(workbook)) return none;
  try {
    const found = weekDifference(workbook, weekToWrite(week, null));
    if (found === null) return none;
    const cells = found.own.filter(({ column }) => printed.includes(column));
    return { cells, deleted: found.deleted };
  } catch {
    return none;
  }
}

/** What can no longer be read of what a printed week rests on. */
export function damagedForPaper(workbook: Workbook): MadeWithout["damaged"] {
  return damagedKept(workbook, ["answers", "week changes"]);
}

/**
 * What a page of these athletes was made without, each named once.
 *
 * @param planned athletes whose sessions stand on the page
 */
export function madeWithout(
  { state, damaged, cells, deleted, lines }: PrintableWeek,
  athletes: readonly string[],
  planned: readonly string[] = athletes,
): MadeWithout {
  const named = new Set(planned.map(nameKey));
  const onPage = new Set(athletes.map(nameKey));
  const rows = [...new Set(athletes)].flatMap((athlete) => {
    const count = rowsNotUsed(state.read, athlete);
    return count === 0 ? [] : [{ athlete, rows: count }];
  });
  const isPlanned = ({ athlete }: { readonly athlete: string }) => named.has(nameKey(athlete));
  const ask = lines
    .filter(({ line }) => onPage.has(nameKey(line.athlete)))
    .flatMap(({ line }) => line.reasons.filter(({ code }) => asks.has(code)))
    .map(({ facts }) => String(facts.place));
  const limits = [...new Set(athletes.flatMap((athlete) => state.waiting(athlete).places))];
  return {
    damaged,
    rows,
    cells: cells.filter(isPlanned).map(({ cell }) => cell),
    deleted: deleted.filter(isPlanned).map(deletedLineWords),
    ask: [...ask, ...limits],
  };
}
