import type { Day } from "../../calendar/day";
import type { PlannedLoad } from "./planned-loads";

/** Days in a row on none of which a plan was kept to. */
export type SlowRun = {
  readonly sinceDay: Day;
  readonly days: number;
  /** Lifted on the middle one of them, the lower of two, kg. */
  readonly loadKg: number;
};

/** So many days over so many weeks are no bad days any more (common practice, no source). */
const fewestDays = 4;
const fewestApart = 21;

/** A day of the athlete's own, not of a race, a lighter week or a note. */
const isSlow = ({ less }: PlannedLoad) => less === "slow" || less === "heavy" || less === "down";

/**
 * The latest run of days that asked for less than their plan, to the last session: one bad day takes
 * off what its card does, and so does the next, but weeks of nothing else say that the plan is too much.
 *
 * @param plans what each session stands for, in order
 * @param days of those sessions
 * @returns null where the run is none yet
 */
export function slowRun(plans: readonly PlannedLoad[], days: readonly Day[]): SlowRun | null {
  const from = plans.map(({ less }) => less).lastIndexOf(null) + 1;
  const slow = plans.flatMap((plan, at) =>
    at >= from && isSlow(plan) ? [{ day: days[at]!, kg: plan.liftedKg }] : [],
  );
  const [first] = slow;
  if (slow.length < fewestDays || slow[slow.length - 1]!.day - first!.day < fewestApart)
    return null;
  const loads = slow.map(({ kg }) => kg).sort((a, b) => a - b);
  return {
    sinceDay: first!.day,
    days: slow.length,
    loadKg: loads[Math.floor((loads.length - 1) / 2)]!,
  };
}
