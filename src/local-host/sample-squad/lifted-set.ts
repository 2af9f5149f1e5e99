import { type Chance, rounded } from "./chance";
import type { Member } from "./club";
import type { Gear } from "./gear";
import { dayOf, isoOf } from "./season-days";

/** One set as it was lifted. */
export type Lifted = {
  readonly kind: "warm-up" | "marker" | "work";
  readonly set: number | null;
  readonly reps: number;
  readonly loadKg: number;
  readonly speeds: readonly number[];
};

/** Mean bar speed at a load for a best squat of `bestKg`, m/s (invented club; common shape). */
const speedAt = (loadKg: number, bestKg: number) => 0.28 + 1.45 * (1 - loadKg / bestKg);
const repLoss = 0.015;
const setLoss = 0.01;
const repSd = 0.015;

/** Speeds of a set: 1.5 % lost a repetition, 1 % a set, and a wobble of each repetition. */
export function lifted(
  kind: "marker" | "work",
  set: number | null,
  reps: number,
  loadKg: number,
  bestKg: number,
  gear: Gear,
  random: Chance,
): Lifted {
  const speeds: number[] = [];
  let fresh = speedAt(loadKg, bestKg) * (1 - setLoss * ((set ?? 1) - 1));
  for (let rep = 0; rep < reps; rep++) {
    const speed = fresh + repSd * random.normal() + gear.readsMore;
    speeds.push(rounded(Math.max(0.2, speed), 2));
    fresh *= 1 - repLoss;
  }
  return { kind, set, reps, loadKg, speeds };
}

const tomasOn: Readonly<Record<string, readonly number[]>> = {
  "2026-05-05 marker": [0.86, 0.85, 0.86],
  "2026-05-05 1": [0.63, 0.62, 0.61, 0.61, 0.6],
  "2026-06-23 marker": [0.79, 0.8, 0.78],
};
const kofisLoss = new Map([
  [4, 0.12],
  [5, 0.2],
]);

/** Two days told rep by rep elsewhere, and the sets at which Kofi fell away on 28 May. */
export function typedOn({ athlete }: Member, day: number, done: Lifted): Lifted {
  if (athlete === "Tomas Reyerson") {
    const typed = tomasOn[`${isoOf(day)} ${done.set ?? done.kind}`];
    return typed ? { ...done, speeds: typed } : done;
  }
  const loss = kofisLoss.get(done.set ?? 0);
  if (athlete !== "Kofi Anstruther" || day !== dayOf("2026-05-28") || loss === undefined)
    return done;
  return { ...done, speeds: done.speeds.map((speed) => rounded(speed * (1 - loss), 2)) };
}
