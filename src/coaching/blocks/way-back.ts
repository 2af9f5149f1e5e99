import { type Day, mondayOf } from "../calendar/day";
import { onSteps } from "./on-steps";
import { hairKg } from "./plate-loading";
import { restartAfter } from "./restart";

/** A session's day, the days since the athlete trained before it, and the load of its first work set, kg. */
export type SessionLoad = { readonly day: Day; readonly gap: number; readonly loadKg: number };

/** An athlete who is back from time off, still under the load from before it. */
export type WayBack = {
  readonly beforeKg: number;
  /** First session after the latest time off. */
  readonly sinceDay: Day;
  /** Load of the next grade, kg, not yet rounded to plates; the present one while its week lasts. */
  readonly gradeKg: number;
};

/** One grade a week, in tenths of the load before (common practice, no source). */
const grade = 0.1;
/** After this long the ladder alone leads on. */
const longest = 42;

/**
 * Grades after a break, one a week: 20 % off, then 10 % off, then the load from before, from which
 * the ladder goes on. A new week is what makes a new grade, so that two sessions of one week stay
 * on one. Away again before that load was reached, it is still the one to come back to.
 *
 * @param sessions one athlete's sessions of one lift, in order of day
 * @param from first day of the week to be planned
 * @param stepKg smallest change of load, kg
 * @returns null without a break in the last six weeks, or once the load from before is reached
 */
export function wayBack(
  sessions: readonly SessionLoad[],
  sessionsAWeek: number,
  from: Day,
  stepKg: number,
): WayBack | null {
  let beforeKg = 0;
  /** First session after the latest break that is not come back from; without one it lies too far back. */
  let since: Day = Number.NEGATIVE_INFINITY;
  for (const { day, gap, loadKg } of sessions) {
    if (restartAfter(gap, sessionsAWeek) !== null) since = day;
    // Once reached, a lighter load is the rotation's own reset, not the break's.
    if (loadKg >= beforeKg || day - since > longest) {
      beforeKg = loadKg;
      since = Number.NEGATIVE_INFINITY;
    }
  }
  if (from - since > longest) return null;
  const last = sessions[sessions.length - 1]!;
  if (mondayOf(last.day) >= mondayOf(from))
    return { beforeKg, sinceDay: since, gradeKg: last.loadKg };
  // Loads were rounded down to plates: the next grade is the first that is a step above the last.
  const grades = [3, 2, 1].map((tenths) => beforeKg * (1 - grade * tenths));
  const gradeKg = grades.find((kg) => kg >= last.loadKg + stepKg) ?? beforeKg;
  // Nor does what was rounded off make a grade larger than the steps nearest to a tenth.
  const steps = Math.max(1, Math.round((grade * beforeKg) / stepKg));
  const mostKg = last.loadKg + steps * stepKg;
  const isLarger = onSteps(last.loadKg, gradeKg, stepKg) > mostKg + hairKg;
  return { beforeKg, sinceDay: since, gradeKg: isLarger ? mostKg : gradeKg };
}
