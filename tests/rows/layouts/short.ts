import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import type { Reading } from "../../../src/rows/reading";

/** The day the layouts are asked about. */
export const today = dayFromIso("2026-06-16") as number;

/** "05-12 Ilka 1 65x5 .66" for a set: day, athlete, number, load, repetitions, speeds. */
export function shortSet(set: LiftingSet): string {
  const speeds =
    set.repSpeeds.length > 0
      ? set.repSpeeds.map((speed) => speed ?? "-").join(" ")
      : (set.setSpeed ?? "");
  const number = set.set ?? set.kind;
  return [
    isoFromDay(set.day).slice(5),
    set.athlete,
    number,
    `${set.loadKg ?? "?"}x${set.reps ?? "?"}`,
    speeds,
  ]
    .filter((part) => part !== "")
    .join(" ");
}

/** "06-23 Kofi 15 15 10 ✗" for an attempt on a stack, "06-23 Kofi 0.168/0.55" for a drop jump. */
export function shortJump(jump: JumpAttempt): string {
  const figure =
    jump.contactS !== null || jump.flightS !== null
      ? `${jump.contactS ?? "?"}/${jump.flightS ?? "?"}`
      : jump.heightCm !== null
        ? `${jump.heightCm} cm`
        : `${jump.stackKg.join(" ")} ${jump.cleared === null ? "?" : jump.cleared ? "✓" : "✗"}`;
  return `${isoFromDay(jump.day).slice(5)} ${jump.athlete} ${figure}`;
}

export const problems = (reading: Reading<unknown>) =>
  reading.issues.map(({ cell, code, found }) => `${cell} ${code}: ${found}`);

export const notes = (reading: Reading<unknown>) =>
  (reading.notes ?? []).map(({ cell, athlete, words }) => `${cell} ${athlete}: ${words}`);

/** Read, reported, blank, heading. */
export const counts = (reading: Reading<unknown>) => [
  reading.rowsRead,
  reading.rowsReported,
  reading.rowsBlank,
  reading.rowsHeading,
];
