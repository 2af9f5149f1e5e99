import { valueOrNull } from "../../../outcome";
import { leastReserve } from "../../blocks/next-block";
import { chartReps, singleFromSet } from "../../blocks/repetition-load";
import { type LiftSession, repsDone } from "./lift-session";

/** A whole turn of the rotation (common practice, no source). */
const turnDays = 84;

/**
 * Most that sessions of late with more on the bar say of the strength by their repetitions and those left,
 * kg. Who writes three in reserve of every load is no weaker where a new rotation begins lighter, and who
 * writes one of every load is not taken down week by week. Where fewer than two are left now, only
 * sessions that left no more count: it was more on the bar, and went no worse. Null without such a session.
 *
 * @param sessions of one athlete's lift, in order, at least one
 * @param left repetitions in reserve now; null where none are told
 */
export function heavierSeen(
  sessions: readonly LiftSession[],
  loadKg: number,
  left: number | null,
): number | null {
  if (left === null) return null;
  const last = sessions[sessions.length - 1]!;
  const seen = sessions.flatMap(({ day, loadKg: kg, work, reserve }) => {
    if (kg <= loadKg || day <= last.day - turnDays || reserve === null) return [];
    if (left < leastReserve && reserve > left) return [];
    const reps = Math.max(...work.map(repsDone)) + Math.floor(reserve);
    return valueOrNull(singleFromSet(kg, Math.min(chartReps, reps))) ?? [];
  });
  return seen.length === 0 ? null : Math.max(...seen);
}
