import { valueOrNull } from "../../../outcome";
import { leastReserve } from "../../blocks/next-block";
import { chartReps, singleFromSet } from "../../blocks/repetition-load";
import { type LiftSession, repsDone } from "./lift-session";

/** A whole turn of the rotation (common practice, no source). */
const turnDays = 84;

/**
 * Most that sessions of late with more on the bar say of the strength by their repetitions and those left,
 * two or more, kg. Who writes three in reserve of every load is no weaker where a new rotation begins
 * lighter; fewer left at the same load are another matter. Null without such a session.
 *
 * @param sessions of one athlete's lift, in order, at least one
 */
export function heavierSeen(sessions: readonly LiftSession[], loadKg: number): number | null {
  const last = sessions[sessions.length - 1]!;
  const seen = sessions.flatMap(({ day, loadKg: kg, work, reserve }) => {
    if (kg <= loadKg || day <= last.day - turnDays || (reserve ?? 0) < leastReserve) return [];
    const reps = Math.max(...work.map(repsDone)) + Math.floor(reserve!);
    return valueOrNull(singleFromSet(kg, Math.min(chartReps, reps))) ?? [];
  });
  return seen.length === 0 ? null : Math.max(...seen);
}
