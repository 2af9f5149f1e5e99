import { heightStep } from "../jumps/height-step";
import { isOfOne, type TestDay } from "../jumps/test-day";
import type { Dated } from "./past-values";

/** A test's values in percent on days comparable with one of them; more is better. */
export function jumpValues(days: readonly TestDay[], like: TestDay | undefined) {
  if (!like) return null;
  const unit = like.heightCm !== null ? "cm" : "s";
  const sign = unit === "cm" ? 1 : -1;
  const dated: Dated[] = [];
  let sum = 0;
  for (const one of days) {
    const { day } = one;
    const value = unit === "cm" ? one.heightCm : one.contactS;
    if (value === null || !(value > 0) || one.dropCm !== like.dropCm) continue;
    if (isOfOne(one) !== isOfOne(like)) continue;
    sum += value;
    dated.push({ day, value: sign * 100 * Math.log(value) });
  }
  if (!dated.some(({ day }) => day === like.day)) return null;
  const step = unit === "cm" ? heightStep(days) : null;
  return {
    unit,
    dated,
    // Reading to a step errs by step/√12.
    leastSd: step === null ? 0 : (29 * step * dated.length) / sum,
    valueAt: (percent: number) => Math.exp((sign * percent) / 100),
  } as const;
}
