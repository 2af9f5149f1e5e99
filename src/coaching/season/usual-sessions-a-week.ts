import { type Day, mondayOf } from "../calendar/day";
import type { Athlete } from "../record/athlete";

/** Gym sessions of a week at most, in a racing season (common practice, no source). */
export const mostSessions = 2;
/** Sessions a week of an athlete nothing is known of, and what tells otherwise (common practice, no source). */
const usual = 2;
const leastWeeks = 3;
const lastDays = 12;

/**
 * Gym sessions a week as the Athletes table says; where it says nothing as often as the athlete came of
 * late: once a week where hardly a week with a session had a second one. Whoever comes rarer than once
 * a week is planned once.
 *
 * @param days of the athlete's sessions, in any order
 */
export function usualSessionsAWeek(
  about: Pick<Athlete, "sessionsAWeek"> | null | undefined,
  days: readonly Day[],
): number {
  const written = about?.sessionsAWeek ?? null;
  if (written !== null) return written;
  const last = [...new Set(days)].sort((a, b) => a - b).slice(-lastDays);
  const weeks = new Set(last.map(mondayOf)).size;
  return weeks >= leastWeeks && last.length < 1.5 * weeks ? 1 : usual;
}
