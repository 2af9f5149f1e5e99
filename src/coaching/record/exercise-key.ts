import { nameKey } from "./name-key";

/** Words coaches use for the same lift, and how they shorten them (common practice, no source). */
const spellings: Readonly<Record<string, string>> = {
  "back squat":
    "squat|high bar squat|high bar back squat|barbell squat|barbell back squat|bb squat|bb back squat|bs|sq|bsq|back sq|kniebeuge|kniebeugen|kb",
  "front squat": "fs|fsq|front sq",
  deadlift: "dl|dead lift",
  "romanian deadlift": "rdl|romanian dl",
  "trap bar deadlift": "tbdl|trap bar dl|trap bar|hex bar deadlift|hex bar dl|hex bar",
};
const sameLift = new Map(
  Object.entries(spellings).flatMap(([lift, written]) =>
    written.split("|").map((one) => [one, lift] as const),
  ),
);

/** One key for every spelling of a lift: "Squats" are the squat, "Trap-bar DL" the trap bar deadlift, a press is no plural. */
export function exerciseKey(exercise: string): string {
  const key = nameKey(exercise.replace(/[-‐‑–.]/g, " "));
  const one = /[^s]s$/.test(key) && !sameLift.has(key) ? key.slice(0, -1) : key;
  return sameLift.get(one) ?? one;
}
