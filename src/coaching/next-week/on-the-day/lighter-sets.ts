import { accept, type Outcome, refuse } from "../../../outcome";
import { platesASide, roundDownToPlates } from "../../blocks/plate-loading";
import type { DayPlan, LeftOfPlan } from "./day-decision";

/**
 * The heaviest load that exists at or under the one wanted, kg, always under the plan; the bar alone is
 * the lightest there is, and nothing is lighter where it is the plan.
 *
 * @param slower m/s under usual; null when judged by eye
 * @returns Refuses `step-too-large` when no load is left.
 */
export function lighterSets(
  wantedKg: number,
  slower: number | null,
  plan: DayPlan,
): Outcome<LeftOfPlan> {
  const { plannedKg, setsLeft, stepKg, gym } = plan;
  const under = Math.min(wantedKg, plannedKg - 1e-6);
  let loadKg = plannedKg - Math.ceil((plannedKg - under) / stepKg - 1e-9) * stepKg;
  let plates: readonly number[] = [];
  if (gym) {
    const { barKg } = gym;
    if (gym.plates.length > 0) {
      const rounded = roundDownToPlates(under, barKg, gym.plates);
      loadKg = rounded.ok ? rounded.value : 0;
    }
    loadKg = Math.max(loadKg, barKg);
    if (loadKg >= plannedKg) {
      return accept({ kind: "nothing lighter", loadKg: plannedKg, slower });
    }
    const side = platesASide(loadKg, barKg, gym.plates);
    if (side.ok) plates = side.value;
  }
  if (!(loadKg > 0)) return refuse("step-too-large", { stepKg, loadKg: plannedKg });
  return accept({
    kind: "lighter",
    loadKg,
    share: 1 - loadKg / plannedKg,
    slower,
    setsLeft,
    plates,
  });
}
