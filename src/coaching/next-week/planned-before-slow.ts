import type { DayPlan } from "./day-decision";
import { decideToday } from "./decide-today";
import type { LiftSession } from "./lift-session";

/**
 * The load that a slow day's card must have begun from, kg: the least of which its decision, by the
 * markers as they were, leaves what was lifted. Without a marker the first work set is at the plan.
 *
 * @param atMostKg a load the plan was not above, kg
 * @param plan of the day but for its load and sets
 * @returns null where no load up to that one gives it
 */
export function plannedBeforeSlow(
  { all, loadKg, sets: setsLeft }: Pick<LiftSession, "all" | "loadKg" | "sets">,
  atMostKg: number,
  plan: Omit<DayPlan, "plannedKg" | "setsLeft">,
): number | null {
  const sets = all
    .filter(({ kind }) => kind === "marker")
    .map(({ repSpeeds, setSpeed }) =>
      repSpeeds.length > 0
        ? repSpeeds.flatMap((one) => one ?? [])
        : setSpeed === null
          ? []
          : [setSpeed],
    )
    .filter((speeds) => speeds.length > 0);
  if (sets.length === 0) return null;
  for (let kg = loadKg + plan.stepKg; kg <= atMostKg + 1e-9; kg += plan.stepKg) {
    const decided = decideToday({ kind: "speeds", sets }, { ...plan, plannedKg: kg, setsLeft });
    if (!decided.ok) return null;
    const { value } = decided;
    const left = value.kind === "repeat the marker" ? value.ifSame : value;
    if (left.kind === "lighter" && Math.abs(left.loadKg - loadKg) < 1e-6) return kg;
  }
  return null;
}
