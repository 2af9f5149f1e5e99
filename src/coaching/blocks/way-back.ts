import type { Day } from "../calendar/day";
import { mondayOf } from "../calendar/day";
import { restartAfter } from "./restart";

/** A session's day and the load of its first work set, kg. */
export type SessionLoad = { readonly day: Day; readonly loadKg: number };

/** An athlete who is back from time off, still under the load from before it. */
export type WayBack = {
  readonly beforeKg: number;
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
 * on one.
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
  const last = sessions[sessions.length - 1]!;
  for (let at = sessions.length - 1; at > 0; at--) {
    const [before, after] = [sessions[at - 1]!, sessions[at]!];
    if (from - after.day > longest) return null;
    if (restartAfter(after.day - before.day, sessionsAWeek) === null) continue;
    const beforeKg = before.loadKg;
    // Once reached, a lighter load is the rotation's own reset, not the break's.
    if (sessions.slice(at).some(({ loadKg }) => loadKg >= beforeKg)) return null;
    if (mondayOf(last.day) >= mondayOf(from)) return { beforeKg, gradeKg: last.loadKg };
    // Loads were rounded down to plates: the next grade is the first that is a step above the last.
    const grades = [3, 2, 1].map((tenths) => beforeKg * (1 - grade * tenths));
    return { beforeKg, gradeKg: grades.find((kg) => kg >= last.loadKg + stepKg) ?? beforeKg };
  }
  return null;
}
