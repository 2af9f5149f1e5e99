import type { Plate } from "../record/plate";
import { plateStepKg } from "./plate-loading";

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
