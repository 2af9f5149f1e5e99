import { onSteps } from "../../blocks/on-steps";
import { plateStepKg, platesASide, roundDownToPlates } from "../../blocks/plate-loading";
import type { Plate } from "../../record/plate";
import type { LineReason } from "../line-reason";

/** A load as it can be built, its plates a side, and what had to give. */
export type BarLoad = {
  readonly loadKg: number;
  readonly plates: readonly number[];
  readonly reasons: readonly LineReason[];
};

/**
 * The heaviest load at or under one that this gym's plates make. When plates are too few even for a
 * load on the gym's own step, or the bar alone is more, the reason says so.
 *
 * @param lastKg the load lifted last, kg: a bar heavier than it is not proposed as a rise
 */
export function barLoad(
  wantedKg: number,
  barKg: number,
  lastKg: number,
  plates: readonly Plate[],
): BarLoad {
  const rounded = roundDownToPlates(wantedKg, barKg, plates);
  if (!rounded.ok) {
    const reasons = [{ code: "under-bar", facts: { wanted: wantedKg, bar: barKg } }];
    return { loadKg: Math.min(barKg, lastKg), plates: [], reasons };
  }
  const loadKg = rounded.value;
  const side = platesASide(loadKg, barKg, plates);
  const stepKg = plateStepKg(plates);
  const onStep = stepKg > 0 ? onSteps(barKg, wantedKg, stepKg) : 0;
  const short = stepKg === 0 || loadKg < onStep - 1e-6;
  return {
    loadKg,
    plates: side.ok ? side.value : [],
    reasons: short ? [{ code: "plates-short", facts: { wanted: wantedKg, kg: loadKg } }] : [],
  };
}
