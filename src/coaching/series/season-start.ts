import type { Day } from "../calendar/day";
import type { AthleteRows, SquadIndex } from "./squad-index";

/** Away from the gym for longer than this, days, and a new season begins (common practice, no source). */
export const gapBetweenSeasons = 56;

/**
 * First day of the season that the last day asked for belongs to: the first gym day after the
 * squad's latest gap of more than eight weeks, else its first gym day.
 * One athlete's long absence is no new season while others train.
 *
 * @returns the index's last day when there are no gym days
 */
export function seasonStart(index: SquadIndex): Day {
  const days = new Set<Day>();
  for (const athlete of index.athletes.values()) gymDays(athlete, days);
  const sorted = [...days].sort((a, b) => a - b);
  for (let i = sorted.length - 1; i > 0; i--) {
    if (sorted[i]! - sorted[i - 1]! > gapBetweenSeasons) return sorted[i]!;
  }
  return sorted[0] ?? index.asOf;
}

/** Adds the days an athlete has a speed or a jump on. */
export function gymDays(athlete: AthleteRows, days: Set<Day> = new Set()): Set<Day> {
  for (const sets of athlete.lifts.values()) addDays(sets, days);
  for (const attempts of athlete.jumps.values()) addDays(attempts, days);
  return days;
}

/** Adds the days of rows in order of day, each once. */
export function addDays(rows: readonly { readonly day: Day }[], days: Set<Day>): void {
  let last = Number.NaN;
  for (let at = 0; at < rows.length; at++) {
    const { day } = rows[at]!;
    if (day !== last) days.add(day);
    last = day;
  }
}
