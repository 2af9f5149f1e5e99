import { plateStepKg } from "../../coaching/blocks/plate-loading";
import { type Day, isoFromDay, mondayOf } from "../../coaching/calendar/day";
import { gymPlates } from "../../coaching/next-week/session/usual-plates";
import { cautions } from "../../words/cautions";
import { dayWords } from "../../words/days";
import {
  deletedDaysWords,
  ifWrittenWords,
  ownCellsWords,
  standsAsProposed,
} from "../../words/next-week-tab";
import { damagedMemories } from "../answers/forget-damaged";
import type { WeekChange, WeekView } from "../messages";
import { toCheck } from "../row-check/to-check";
import type { Workbook } from "../workbook";
import { proposedWeek } from "./proposed-week";
import { weekLine } from "./week-line";
import { weekNotes } from "./week-notes";
import { findWeekTab, readWeekTab } from "./week-tab";
import { weekToWrite } from "./week-to-write";
import { weekDifference } from "./write-week";

/** Step of the load's buttons in a gym whose plates are not written down, kg (common practice, no source). */
const usualStepKg = 2.5;

/** Next week's sets for the squad, the odd lines to be read first. */
export function weekView(
  workbook: Workbook,
  today: Day,
  monday: Day | null,
  changes: readonly WeekChange[],
): WeekView {
  const week = proposedWeek(workbook, today, monday, changes);
  const { state } = week;
  const next = mondayOf(state.asOf) + 7;
  const near = [next - 7, next, next + 7, next + 14, next + 21];
  // The week looked at stays among those to choose from, wherever the rows have moved on to, and after
  // rows of a season before there is the one to come.
  const others = new Set([week.monday, mondayOf(today) + 7].filter((day) => !near.includes(day)));
  const mondays = [...others, ...near];
  const already = weekAlready(workbook, week.monday);
  const difference = weekDifference(workbook, weekToWrite(week, null));
  const lines = week.lines.map((one) => {
    const line = weekLine(state, one);
    const own = difference?.own.filter(({ athlete }) => athlete === line.athlete) ?? [];
    const deleted = difference?.deleted.filter(({ athlete }) => athlete === line.athlete) ?? [];
    const said = [
      ...(own.length === 0 ? [] : [ownCellsWords(own.map(({ cell }) => cell))]),
      ...(deleted.length === 0 ? [] : [deletedDaysWords(deleted.map(({ day }) => day))]),
    ];
    return { ...line, why: [...line.why, ...said], deleted: deleted.length };
  });
  const deleted = lines.reduce((sum, line) => sum + line.deleted, 0);
  return {
    damaged: damagedMemories(workbook, ["answers", "next week", "week changes"]),
    numbers: state.numbers.style,
    monday: isoFromDay(week.monday),
    mondays: mondays.map((day) => ({ monday: isoFromDay(day), label: dayWords(day) })),
    notes: weekNotes(week),
    lines: [...lines].sort((a, b) => Number(b.odd) - Number(a.odd)),
    rowsToWrite: lines.reduce(
      (sum, line) => sum + (line.leftOut ? 0 : line.sessions.length - line.deleted),
      0,
    ),
    deleted,
    already: already === 0 || difference === null ? "" : ifWrittenWords(difference),
    isWritten: already > 0 && difference !== null && standsAsProposed(difference),
    stepKg: plateStepKg(gymPlates(state.read.rows.plates, state.numbers.unit)) || usualStepKg,
    canTakeBack: already > 0 || week.lines.some(({ byHand }) => byHand.length > 0),
    toCheck: toCheck(state),
    cautions,
  };
}

/** How many lines of a week stand in the Next week tab already. */
function weekAlready(workbook: Workbook, monday: Day): number {
  const tab = findWeekTab(workbook);
  if (!tab) return 0;
  const names = [...readWeekTab(workbook, tab).rowOf.keys()];
  return names.filter((name) => name.startsWith(`${isoFromDay(monday)} `)).length;
}
