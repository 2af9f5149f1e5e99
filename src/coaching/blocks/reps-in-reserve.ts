import { accept, type Outcome, refuse } from "../../outcome";
import { mostReps } from "./repetition-load";

/** Under half a kilogram nothing is a load, and the chart's line runs off to repetitions nobody does. */
const leastKg = 0.5;

/**
 * Repetitions left after a set: the most the chart allows at load/strength, less those planned.
 * Below zero says that the set is past what the chart allows.
 *
 * @param loadKg load on the bar, kg, 0.5–500
 * @param reps repetitions of the set
 * @param strengthKg strength estimate, kg; give its cautious end to be safe
 * @returns repetitions, to a tenth. Refuses `load-impossible`, `reps-impossible`, `strength-impossible`.
 */
export function repsInReserve(loadKg: number, reps: number, strengthKg: number): Outcome<number> {
  if (!(loadKg >= leastKg && loadKg <= 500)) return refuse("load-impossible", { loadKg });
  if (!(Number.isInteger(reps) && reps >= 1 && reps <= 30))
    return refuse("reps-impossible", { reps });
  if (!(strengthKg > 0 && strengthKg <= 500)) return refuse("strength-impossible", { strengthKg });
  return accept(Math.round(10 * (mostReps(loadKg / strengthKg) - reps)) / 10);
}
