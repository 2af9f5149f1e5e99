import { hundredths, speedHair } from "../../bar-speed/hundredths";
import type { LiftingSet } from "../../record/lifting-set";

/**
 * Repetitions of one set that differ by more say rather that one was misread or half done: a set
 * that would change the load is then repeated once (common practice, no source).
 */
const widestSet = 0.15;

/** Speeds taken of a set, m/s: its repetitions', else its one figure; none where nothing was taken. */
export function speedsTaken({ repSpeeds, setSpeed }: LiftingSet): readonly number[] {
  const reps = repSpeeds.flatMap((one) => one ?? []);
  return reps.length > 0 || setSpeed === null ? reps : [setSpeed];
}

/** Repetitions, m/s, too far apart to be of one day's speed. */
export const isUneven = (set: readonly number[]) =>
  Math.max(...set) - Math.min(...set) > widestSet + speedHair;

/** The mean of a set, m/s; of an uneven one no faster than its middle repetition, the slower of two. */
export function speedOfSet(set: readonly number[]): number {
  const mean = hundredths(set.reduce((sum, one) => sum + one, 0) / set.length);
  if (!isUneven(set)) return mean;
  const middle = [...set].sort((a, b) => a - b)[Math.floor((set.length - 1) / 2)]!;
  return Math.min(mean, hundredths(middle));
}
