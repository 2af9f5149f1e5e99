import { plateStepKg } from "../../coaching/blocks/plate-loading";
import { type Day, isoFromDay } from "../../coaching/calendar/day";
import { dayWords } from "../../words/reasons-figures";
import type { Done, WeekChange } from "../messages";
import { proposedWeek } from "../week-view";
import type { Workbook } from "../workbook";
import { plannedLines } from "./planned-lines";
import { writeWeek } from "./write-week";

/** Lightest change of load worth writing, kg. */
const leastStepKg = 2.5;

/** Writes the week as it is proposed with the coach's changes, for some athletes or all. */
export function writeProposedWeek(
  workbook: Workbook,
  today: Day,
  monday: Day,
  changes: readonly WeekChange[],
  athletes: readonly string[] | null,
): Done {
  const week = proposedWeek(workbook, today, monday, changes);
  const stepKg = Math.max(plateStepKg(week.state.read.rows.plates), leastStepKg);
  return writeWeek(workbook, {
    monday: isoFromDay(monday),
    title: `Next week: ${dayWords(monday)} to ${dayWords(monday + 6)}`,
    lines: week.lines
      .filter(({ leftOut }) => !leftOut)
      .flatMap(({ line }) => plannedLines(line, stepKg)),
    athletes,
  });
}
