import { accept, type Outcome, refuse } from "../../outcome";
import { hundredths, speedHair } from "../bar-speed/hundredths";

/** What the day's speed leaves of the plan. */
export type LoadDrop =
  | { readonly kind: "as planned"; readonly loadKg: number }
  | {
      readonly kind: "lighter";
      readonly loadKg: number;
      /** The real share off, after rounding to loads that exist: 25 kg less one step is 20 %. */
      readonly share: number;
      readonly slower: number;
    }
  | { readonly kind: "no heavy work"; readonly slower: number };

/** Speed below usual at the same load, m/s, from which the remaining sets are lighter (common practice). */
export const dropBands = {
  light: { from: 0.06 },
  clear: { above: 0.1 },
  none: { above: 0.15 },
} as const;

/** Share off a clearly slow day, and half of it a slightly slow one (common practice, no source). */
const usualShareOff = 0.1;

/**
 * Load for the remaining sets from the speed of the marker or first set against its usual: 0.06–0.10
 * m/s slower half the share off (5 %), more the whole of it (10 %), beyond 0.15 m/s no heavy work. Both
 * speeds are taken to a hundredth. Never above the plan, and always whole steps below it, rounded
 * down, as such loads exist on the bar.
 *
 * @param plannedKg load planned, on plates that exist, kg
 * @param speed of the set, m/s
 * @param usualSpeed at the same load, m/s
 * @param stepKg smallest change of load, kg
 * @param shareOff share off a clearly slow day, fraction
 * @returns Refuses `load-impossible`, `speed-impossible` (not in 0–4), `step-impossible` (not in
 * 0–20) and `step-too-large` when no load is left.
 */
export function loadDrop(
  plannedKg: number,
  speed: number,
  usualSpeed: number,
  stepKg: number,
  shareOff: number = usualShareOff,
): Outcome<LoadDrop> {
  const refused = refusedPlan(plannedKg, [speed, usualSpeed], stepKg);
  if (refused) return refused;
  const slower = hundredths(usualSpeed) - hundredths(speed);
  if (slower > dropBands.none.above + speedHair) return accept({ kind: "no heavy work", slower });
  if (slower < dropBands.light.from - speedHair) {
    return accept({ kind: "as planned", loadKg: plannedKg });
  }
  const wanted = slower > dropBands.clear.above + speedHair ? shareOff : shareOff / 2;
  const steps = Math.ceil((wanted * plannedKg) / stepKg - 1e-9);
  const loadKg = plannedKg - steps * stepKg;
  if (!(loadKg > 0)) return refuse("step-too-large", { stepKg, loadKg: plannedKg });
  return steps === 0
    ? accept({ kind: "as planned", loadKg })
    : accept({ kind: "lighter", loadKg, share: 1 - loadKg / plannedKg, slower });
}

/** Refuses what `loadDrop` does but for a step too large; null for figures that can be. Any number of speeds. */
export function refusedPlan(
  plannedKg: number,
  speeds: readonly number[],
  stepKg: number,
): Outcome<never> | null {
  if (!(plannedKg > 0 && plannedKg <= 500)) return refuse("load-impossible", { loadKg: plannedKg });
  for (const speed of speeds) {
    if (!(speed > 0 && speed <= 4)) return refuse("speed-impossible", { speed });
  }
  return stepKg > 0 && stepKg <= 20 ? null : refuse("step-impossible", { stepKg });
}
