import { lineRows } from "../../bar-speed/squad-lines";
import type { Day } from "../../calendar/day";
import type { TestDay } from "../../jumps/test-day";
import type { AthleteRows } from "../../series/squad-index";
import type { HoldNote, MeasureKind } from "../season-hold";
import { oldAfterDays } from "../word-caveats";
import { valueOfKind } from "./jump-measure";
import { firstOfDays, settingChanged } from "./setting-notes";

/** A lift or a jump test by its name, and the days it was done on, in order. */
type Done = { readonly name: string; readonly days: readonly Day[] };

/**
 * One note where the lift that the season is followed by has given way to another: the other's sessions
 * since then, which are held against no baseline. Nothing is said of a lift laid aside for two weeks.
 *
 * @param lift key of the lift that is followed
 */
export function replacedLiftNotes(rows: AthleteRows, lift: string): readonly HoldNote[] {
  const done = (key: string): Done => {
    const days = firstOfDays(lineRows(rows.lifts.get(key)!));
    return { name: days[days.length - 1]?.set.exercise ?? "", days: days.map(({ day }) => day) };
  };
  return replacedNotes(done(lift), [...rows.lifts.keys()].map(done), { what: "lift" });
}

/**
 * The same of a jump test, among the tests that give its value and are not followed themselves.
 *
 * @param test key of the test
 * @param followed keys of all that are followed
 */
export function replacedTestNotes(
  rows: AthleteRows,
  kind: Exclude<MeasureKind, "bar speed">,
  test: string,
  followed: readonly (string | undefined | null)[],
  testDaysOf: (rows: AthleteRows, test: string) => readonly TestDay[],
): readonly HoldNote[] {
  const done = (key: string): Done => ({
    name: rows.jumps.get(key)![0]!.test,
    days: testDaysOf(rows, key)
      .filter((day) => valueOfKind[kind](day) !== null)
      .map(({ day }) => day),
  });
  const others = [...rows.jumps.keys()].filter((key) => !followed.includes(key));
  const own = done(test);
  return replacedNotes(own, others.map(done), { what: "test", of: own.name });
}

function replacedNotes(
  { name, days }: Done,
  others: readonly Done[],
  how: { readonly what: string; readonly of?: string },
): readonly HoldNote[] {
  const last = days[days.length - 1];
  if (last === undefined) return [];
  const [other] = others
    .map((one) => ({ name: one.name, days: one.days.filter((day) => day > last) }))
    .sort((a, b) => b.days.length - a.days.length);
  const latest = other?.days[other.days.length - 1];
  if (!other || !latest || latest - last <= oldAfterDays) return [];
  return [settingChanged(other.days, { ...how, before: name, after: other.name })];
}
