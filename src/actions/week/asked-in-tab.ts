import { setsByReps } from "../../coaching/blocks/block";
import { type Day, dayFromIso, isoFromDay, mondayOf } from "../../coaching/calendar/day";
import type { AskedSession } from "../../coaching/next-week/proposed-line";
import { grouped } from "../../coaching/series/grouped";
import { athleteOfLine, mondayOfLine } from "./plan-lines";
import { massFrom } from "./typed-in-tab";
import type { WeekTab } from "./week-tab";
import { earlierTexts, type WrittenBefore } from "./written-before";

/**
 * What the weeks as they stand in the Next week tab ask for, by athlete and day: sets and load of that
 * day's row; where the day was moved, the fewest sets of its week. What is asked for is told by what
 * was written, not by races as they are now.
 */
export function askedInTab(
  tab: WeekTab,
  before: WrittenBefore,
): (athlete: string, day: Day) => AskedSession | undefined {
  const lines = [...tab.rowOf].map(([name, row]) => ({
    athlete: athleteOfLine(name),
    monday: mondayOfLine(name),
    day: dayFromIso(tab.text(row, tab.columnOf.day)),
    sets: setsByReps(tab.text(row, tab.columnOf.sets))?.sets ?? null,
    loadKg: massFrom(tab.text(row, tab.columnOf.load), tab.unit),
    isProposed: earlierTexts(before, name, "load").includes(tab.text(row, tab.columnOf.load)),
  }));
  const byAthlete = grouped(lines, ({ athlete }) => athlete);
  return (athlete, day) => {
    const own = byAthlete.get(athlete) ?? [];
    const week = own.filter(({ monday }) => monday === isoFromDay(mondayOf(day)));
    const [ofDay] = own.filter((line) => line.day === day);
    if (ofDay) return { ...ofDay, isOfDay: true, ofWeek: week.length };
    const sets = week.flatMap((line) => line.sets ?? []);
    if (sets.length === 0) return undefined;
    const fewest = { sets: Math.min(...sets), loadKg: null, isProposed: false };
    return { ...fewest, isOfDay: false, ofWeek: week.length };
  };
}
