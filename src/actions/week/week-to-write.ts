import { gymStepKg } from "../../coaching/blocks/gym-step";
import { roundDownToPlates } from "../../coaching/blocks/plate-loading";
import { isoFromDay } from "../../coaching/calendar/day";
import type { ProposedSession } from "../../coaching/next-week/propose-line";
import { gymPlates } from "../../coaching/next-week/session/usual-plates";
import { columnName } from "../../rows/value/cell-address";
import type { ReadWorkbook } from "../read-workbook";
import { plannedLines } from "./planned-lines";
import type { ProposedWeek } from "./proposed-week";
import type { WeekToWrite } from "./write-week";

/** A proposed week as lines of the tab, for some athletes or all. */
export function weekToWrite(week: ProposedWeek, athletes: readonly string[] | null): WeekToWrite {
  const { read, numbers } = week.state;
  const { plates, rules } = read.rows;
  const stepKg = gymStepKg(gymPlates(plates, numbers.unit));
  const shareOff = rules.loadDrop;
  const range = platesRange(read);
  /** Whether a day's lighter loads, counted in steps, are loads that this gym's plates make. */
  const onSteps = ({ loadKg, barKg }: ProposedSession) =>
    [shareOff, shareOff / 2].every((share) => {
      const steps = Math.ceil((share * loadKg) / stepKg - 1e-9);
      const exists = roundDownToPlates(loadKg * (1 - share), barKg, plates);
      return exists.ok && Math.abs(exists.value - (loadKg - steps * stepKg)) < 1e-6;
    });
  return {
    monday: isoFromDay(week.monday),
    lines: week.lines
      .filter(({ leftOut }) => !leftOut)
      .flatMap(({ line }) =>
        plannedLines(line, {
          mark: numbers.mark,
          stepKg,
          shareOff,
          platesFor: (session) => (range === null || onSteps(session) ? null : range),
        }),
      ),
    unit: numbers.unit,
    athletes,
  };
}

/** The Plates table as a formula names it; null without one. */
function platesRange({ tabs, cells, rows }: ReadWorkbook): string | null {
  const found = tabs.find(({ table }) => table === "Plates");
  if (!found || rows.plates.length === 0) return null;
  const all = cells(found.tab.id);
  const width = Math.max(1, ...all.map((row) => row.length));
  return `'${found.tab.name.replace(/'/g, "''")}'!A1:${columnName(width)}${all.length}`;
}
