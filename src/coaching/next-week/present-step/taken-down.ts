import type { LiftSession } from "./lift-session";

/**
 * The sessions whose later sets were taken down from their first one on the day. A heavier set with
 * lighter ones after it from the start on, or one that goes up with them still behind it, is how the
 * athlete lifts, and no heavy day.
 *
 * @param sessions of one athlete's lift, in order
 * @returns one for each session
 */
export function takenDown(
  sessions: readonly Pick<LiftSession, "loadKg" | "lastKg" | "sets">[],
): readonly boolean[] {
  let isHabit = false;
  let from: number | null = null;
  return sessions.map(({ loadKg, lastKg, sets }, at) => {
    if (lastKg >= loadKg) {
      if (sets > 1) from = null;
      return false;
    }
    from ??= at;
    if (at > from && (from === 0 || loadKg > sessions[from]!.loadKg)) isHabit = true;
    return at > 0 && !isHabit;
  });
}
