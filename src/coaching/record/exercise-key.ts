import { nameKey } from "./name-key";

/** Words coaches use for the same lift (common practice, no source). */
const sameLift = new Map([
  ["squat", "back squat"],
  ["high-bar squat", "back squat"],
  ["high bar squat", "back squat"],
  ["high-bar back squat", "back squat"],
  ["high bar back squat", "back squat"],
  ["bs", "back squat"],
  ["kniebeuge", "back squat"],
  ["kniebeugen", "back squat"],
  ["kb", "back squat"],
]);

/** One key for every spelling of a lift: "Squats" are the squat, a press is no plural. */
export function exerciseKey(exercise: string): string {
  const key = nameKey(exercise);
  const one = /[^s]s$/.test(key) && !sameLift.has(key) ? key.slice(0, -1) : key;
  return sameLift.get(one) ?? one;
}
