import type { Day } from "../calendar/day";
import type { LiftingSet } from "../record/lifting-set";
import { nameKey } from "../record/name-key";

/** Sets more than so many minutes apart are of two sessions (common practice, no source). */
export const sessionsApart = 180;

const midnight = 24 * 60;

/**
 * Sets done past midnight are of the evening's session, whichever of the two days is written beside
 * them: they get its day, and the time of its last set before midnight.
 *
 * @returns the very same list where no set is so
 */
export function withEvening(sets: readonly LiftingSet[]): readonly LiftingSet[] {
  const isEarly = ({ minute }: LiftingSet) => minute !== null && minute < sessionsApart;
  if (!sets.some(isEarly)) return sets;
  const keyOf = (athlete: string, day: Day) => `${nameKey(athlete)} ${day}`;
  const latest = new Map<string, number>();
  for (const { athlete, day, minute } of sets) {
    const late = minute ?? 0;
    if (late < midnight - sessionsApart) continue;
    const key = keyOf(athlete, day);
    latest.set(key, Math.max(late, latest.get(key) ?? 0));
  }
  return sets.map((set) => {
    if (!isEarly(set)) return set;
    for (const day of [set.day - 1, set.day]) {
      const minute = latest.get(keyOf(set.athlete, day)) ?? 0;
      if (midnight + set.minute! - minute <= sessionsApart) return { ...set, day, minute };
    }
    return set;
  });
}
