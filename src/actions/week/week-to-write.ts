import { plateStepKg } from "../../coaching/blocks/plate-loading";
import { isoFromDay } from "../../coaching/calendar/day";
import type { ProposedWeek } from "../week-view";
import { plannedLines } from "./planned-lines";
import type { WeekToWrite } from "./write-week";

/** Lightest change of load worth writing, kg. */
const leastStepKg = 2.5;

/** A proposed week as lines of the tab, for some athletes or all. */
export function weekToWrite(week: ProposedWeek, athletes: readonly string[] | null): WeekToWrite {
  const stepKg = Math.max(plateStepKg(week.state.read.rows.plates), leastStepKg);
  return {
    monday: isoFromDay(week.monday),
    lines: week.lines
      .filter(({ leftOut }) => !leftOut)
      .flatMap(({ line }) => plannedLines(line, stepKg)),
    athletes,
  };
}
