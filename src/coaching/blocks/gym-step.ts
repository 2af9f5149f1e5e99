import type { Plate } from "../record/plate";
import { plateStepKg } from "./plate-loading";
import type { StepSize } from "./step-up";

/** Lightest change of load worth writing, kg (common practice, no source). */
const usualStepKg = 2.5;
/** Plates of 2.5 lb make 5 lb, 2.27 kg: in a gym of pounds that is the step. */
const leastStepKg = 2.2;
/** More is asked of no step: where the lightest pair is heavier, plates alone decide. */
const mostStepKg = 20;

/** Smallest change of load that is planned in a gym, kg: its lightest pair, or 2.5 where that is less or not known. */
export function gymStepKg(plates: readonly Plate[]): number {
  const stepKg = plateStepKg(plates);
  return stepKg > leastStepKg ? Math.min(stepKg, mostStepKg) : usualStepKg;
}

/**
 * A step in a gym whose lightest pair is less than the usual 2.5 kg: where that would be more than the
 * largest step of a light bar, whole pairs that make the rise asked for, so that such plates serve the
 * athlete they were bought for.
 */
export function fineStep(size: StepSize, loadKg: number, plates: readonly Plate[]): StepSize {
  const { stepKg, largestStep, wanted = 0 } = size;
  const pairKg = plateStepKg(plates);
  const pairs = (kg: number) => kg / pairKg;
  const most = Math.floor(pairs(largestStep * loadKg) + 1e-9);
  if (stepKg <= largestStep * loadKg + 1e-9 || pairKg === 0 || most < 1) return size;
  return {
    ...size,
    stepKg: Math.min(most, Math.max(1, Math.ceil(pairs(wanted * loadKg) - 1e-9))) * pairKg,
  };
}
