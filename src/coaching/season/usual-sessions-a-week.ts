import { middleOf } from "../../statistics/spread";
import { type Day, mondayOf } from "../calendar/day";
import type { Athlete } from "../record/athlete";
import { grouped } from "../series/grouped";

/** Gym sessions of a week at most, in a racing season (common practice, no source). */
export const mostSessions = 2;
/** Sessions a week of an athlete nothing is known of, and what tells otherwise (common practice, no source). */
const usual = 2;
const leastWeeks = 3;
const lastWeeks = 6;
/** Days between sessions from which on an athlete comes rarer than once a week, and how many gaps tell. */
const rareGap = 11;
const leastGaps = 3;
const lastGaps = 6;

/**
 * Gym sessions a week as the Athletes table says; where it says nothing as often as the athlete came of
 * late: once a week where hardly one of the last weeks with a session had a second one, and less than
 * one where the middle one of the last gaps is longer than that, as once a fortnight.
 *
 * @param days of the athlete's sessions, in any order
 * @returns sessions a week; 0.5 is once a fortnight
 */
export function usualSessionsAWeek(
  about: Pick<Athlete, "sessionsAWeek"> | null | undefined,
  days: readonly Day[],
): number {
  const written = about?.sessionsAWeek ?? null;
  if (written !== null) return written;
  const rare = middleGap(days);
  if (rare !== null && rare >= rareGap) return 7 / rare;
  const weeks = grouped([...new Set(days)], mondayOf);
  const last = [...weeks].sort(([a], [b]) => a - b).slice(-lastWeeks);
  // A third session of a week does not make up for one that another week lacks.
  const sessions = last.reduce((sum, [, week]) => sum + Math.min(week.length, mostSessions), 0);
  return last.length >= leastWeeks && sessions < 1.5 * last.length ? 1 : usual;
}

/** The middle one of the last gaps between sessions, days; null of too few. */
function middleGap(days: readonly Day[]): number | null {
  const sorted = [...new Set(days)].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((day, at) => day - sorted[at]!);
  return gaps.length < leastGaps ? null : middleOf(gaps.slice(-lastGaps));
}
