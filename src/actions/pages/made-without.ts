import { nameKey } from "../../coaching/record/name-key";
import { damagedKept } from "../forget-damaged";
import type { MadeWithout } from "../page-messages";
import { rowsNotUsed } from "../rows-not-used";
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
 * Cells of the Next week tab that the coach has changed: paper is made of the proposal and of what was
 * changed in the sidebar, so it says which cells it does not follow. Of a tab that can no longer be
 * read Next week itself tells.
 */
export function cellsNotFollowed(workbook: Workbook, week: ProposedWeek): PrintableWeek["cells"] {
  if (!findWeekTab(workbook)) return [];
  try {
    const own = weekDifference(workbook, weekToWrite(week, null))?.own ?? [];
    return own.filter(({ column }) => printed.includes(column));
  } catch {
    return [];
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
  { state, damaged, cells, lines }: PrintableWeek,
  athletes: readonly string[],
  planned: readonly string[] = athletes,
): MadeWithout {
  const named = new Set(planned.map(nameKey));
  const onPage = new Set(athletes.map(nameKey));
  const rows = [...new Set(athletes)].flatMap((athlete) => {
    const count = rowsNotUsed(state.read, athlete);
    return count === 0 ? [] : [{ athlete, rows: count }];
  });
  const own = cells.filter(({ athlete }) => named.has(nameKey(athlete)));
  const ask = lines
    .filter(({ line }) => onPage.has(nameKey(line.athlete)))
    .flatMap(({ line }) => line.reasons.filter(({ code }) => asks.has(code)))
    .map(({ facts }) => String(facts.place));
  return { damaged, rows, cells: own.map(({ cell }) => cell), ask };
}
