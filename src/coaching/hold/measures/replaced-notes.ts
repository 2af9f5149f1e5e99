import { lineRows } from "../../bar-speed/squad-lines";
import type { Day } from "../../calendar/day";
import type { TestDay } from "../../jumps/test-day";
import type { AthleteRows } from "../../series/squad-index";
import type { HoldNote, MeasureKind } from "../season-hold";
import { oldAfterDays } from "../word-caveats";
import { valueOfKind } from "./jump-measure";
import { firstOfDays, settingChanged } from "./setting-notes";

/** A lift or a jump test by its name, its last day at the latest, and the days it was done on, in order. */
type Other = {
  readonly name: string;
  readonly lastDay: Day;
  readonly days: () => readonly Day[];
};

/**
 * One note where the lift that the season is followed by has given way to another: the other's sessions
 * since then, which are held against no baseline. Nothing is said of a lift laid aside for two weeks.
 *
 * @param lift key of the lift that is followed
 */
export function replacedLiftNotes(rows: AthleteRows, lift: string): readonly HoldNote[] {
  const last = lastOf(lineRows(rows.lifts.get(lift)!));
  const others = [...rows.lifts.values()].map((sets): Other => {
    const latest = lastOf(sets);
    return {
      name: latest.set.exercise,
      lastDay: latest.day,
      days: () => firstOfDays(lineRows(sets)).map(({ day }) => day),
    };
  });
  return replacedNotes(last.day, others, { what: "lift", before: last.set.exercise });
}

/**
 * The same of a jump test, among the tests that give its value and are not followed themselves.
 *
 * @param own the test's name as the coach writes it, and its days
 * @param followed keys of all that are followed
 */
export function replacedTestNotes(
  rows: AthleteRows,
  kind: Exclude<MeasureKind, "bar speed">,
  own: { readonly name: string; readonly days: readonly TestDay[] },
  followed: readonly (string | undefined | null)[],
  testDaysOf: (rows: AthleteRows, test: string) => readonly TestDay[],
): readonly HoldNote[] {
  const daysIn = (days: readonly TestDay[]) =>
    days.filter((day) => valueOfKind[kind](day) !== null).map(({ day }) => day);
  const lastDay = lastOf(daysIn(own.days));
  const others = [...rows.jumps]
    .filter(([key]) => !followed.includes(key))
    .map(([key, jumps]): Other => {
      const { test, day } = lastOf(jumps);
      return { name: test, lastDay: day, days: () => daysIn(testDaysOf(rows, key)) };
    });
  return replacedNotes(lastDay, others, { what: "test", before: own.name, of: own.name });
}

function replacedNotes(
  lastDay: Day,
  others: readonly Other[],
  how: { readonly what: string; readonly before: string; readonly of?: string },
): readonly HoldNote[] {
  const isLater = (day: Day) => day - lastDay > oldAfterDays;
  // Every athlete is asked: days are laid out only of what was done late enough.
  const [other] = others
    .filter((one) => isLater(one.lastDay))
    .map(({ name, days }) => ({ name, days: days().filter((day) => day > lastDay) }))
    .filter(({ days }) => days.some(isLater))
    .sort((a, b) => b.days.length - a.days.length);
  return other ? [settingChanged(other.days, { ...how, after: other.name })] : [];
}

const lastOf = <One>(list: readonly One[]): One => list[list.length - 1]!;
