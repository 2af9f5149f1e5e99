import type { Day } from "../../calendar/day";
import type { LiftingSet } from "../../record/lifting-set";
import { nameKey } from "../../record/name-key";

/** Assistance exercises by the words coaches write for them, of the legs and of the trunk (common practice, no source). */
const ofLegs = [/split.?squat|rear.?foot|lunge/i, /step.?ups?\b/i, /leg.?press/i];
const written: readonly RegExp[] = [...ofLegs, /twist/i, /plank|dead.?bug/i];

const familyOf = (exercise: string) => written.find((words) => words.test(exercise)) ?? null;

/** Whether a lift is assistance that loads the legs. */
export const isLegAssistance = (exercise: string): boolean =>
  ofLegs.some((words) => words.test(exercise));

/** Whether a lift is assistance: never the main lift, however many sets of it stand in the rows. */
export const isAssistance = (exercise: string): boolean => familyOf(exercise) !== null;

/**
 * Load an athlete last did an assistance exercise with, kg: the last set with a load on the last day
 * that has one. One leg and two are different exercises.
 *
 * @returns null when it was never done with a load
 */
export function assistanceLoad(
  sets: readonly LiftingSet[],
  athlete: string,
  exercise: string,
  asOf: Day,
): number | null {
  const family = familyOf(exercise);
  if (family === null || /no weight/.test(exercise)) return null;
  const key = nameKey(athlete);
  const single = /single|one.leg/i;
  let last: LiftingSet | null = null;
  for (const set of sets) {
    if (set.day > asOf || !set.loadKg || set.kind === "warm-up") continue;
    if (nameKey(set.athlete) !== key || !family.test(set.exercise)) continue;
    if (single.test(set.exercise) !== single.test(exercise)) continue;
    if (last === null || set.day >= last.day) last = set;
  }
  return last?.loadKg ?? null;
}
