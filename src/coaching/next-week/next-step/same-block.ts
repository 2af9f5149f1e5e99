import type { LineReason } from "../line-reason";
import type { PresentStep } from "../present-step/present-step";
import type { PlannedStep } from "./planned-step";
import { keepingReserve } from "./reserve-guard";
import type { StepGiven } from "./step-given";

/** The same block at a load, or at less where it would not keep its reserve, which is said too. */
export function sameBlock(
  { step, guardKg, size }: StepGiven,
  wantedKg: number,
  reason: LineReason,
  halfSets = false,
): PlannedStep {
  const loadKg = keepingReserve(step.block, wantedKg, guardKg, size.stepKg);
  const short = loadKg < wantedKg && reason.code !== "reserve-short";
  return {
    block: step.block,
    loadKg,
    halfSets,
    reasons: [
      reason,
      ...(short ? [{ code: "reserve-short", facts: { fromKg: wantedKg, toKg: loadKg } }] : []),
    ],
    ready: false,
  };
}

/** The same block and load again, and why; after a day that asked for less than its plan that, too. */
export function held(given: StepGiven, code: string, facts: LineReason["facts"] = {}): PlannedStep {
  const again = sameBlock(given, given.step.loadKg, { code, facts });
  const [first, ...others] = again.reasons;
  // What was planned and lifted is told before what becomes of it.
  return { ...again, reasons: [first!, ...lighterReasons(given.step), ...others] };
}

/** The same again, as the last session left fewer than two repetitions in reserve: at less load, where they were those of the plan. */
export const heldByReserve = (given: StepGiven): PlannedStep => {
  const { code, facts } = seenReason(given.step);
  return held(given, code, facts);
};

/** How many repetitions were seen in reserve. */
export const seenReason = ({ reserveSeen }: PresentStep): LineReason => ({
  code: "reserve-seen",
  facts: { left: reserveSeen ?? 0 },
});

/** Why the plan is not what was lifted last. */
export function lighterReasons({ liftedKg, loadKg, less }: PresentStep): LineReason[] {
  return less === null
    ? []
    : [{ code: "lighter-day", facts: { lifted: liftedKg, kg: loadKg, less } }];
}
