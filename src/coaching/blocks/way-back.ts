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
  /** True when the next grade is the load from before. */
  readonly last: boolean;
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
 * @returns null without a break in the last six weeks, or once the load from before is reached
 */
export function wayBack(
  sessions: readonly SessionLoad[],
  sessionsAWeek: number,
  from: Day,
): WayBack | null {
  const last = sessions[sessions.length - 1];
  if (!last) return null;
  for (let at = sessions.length - 1; at > 0; at--) {
    const [before, after] = [sessions[at - 1]!, sessions[at]!];
    if (from - after.day > longest) return null;
    if (restartAfter(after.day - before.day, sessionsAWeek) === null) continue;
    const beforeKg = before.loadKg;
    if (last.loadKg >= beforeKg) return null;
    const off = Math.ceil((1 - last.loadKg / beforeKg) / grade - 0.05);
    const weekOver = mondayOf(last.day) < mondayOf(from);
    const gradeKg = weekOver ? beforeKg * (1 - grade * Math.max(0, off - 1)) : last.loadKg;
    return { beforeKg, gradeKg: Math.max(last.loadKg, gradeKg), last: weekOver && off <= 1 };
  }
  return null;
}
