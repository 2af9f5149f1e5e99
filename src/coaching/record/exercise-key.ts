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
  ["kb", "back squat"],
]);

/** One key for every spelling of a lift. */
export function exerciseKey(exercise: string): string {
  const key = nameKey(exercise);
  return sameLift.get(key) ?? key;
}
