import type { Block } from "../../blocks/block";
import { wayBack } from "../../blocks/way-back";
import type { LineReason } from "../line-reason";
import { heldByState } from "./held-by-state";
import { fewLeft } from "./reserve-guard";
import { seenReason } from "./same-block";
import { stepAfterMarathon, stepAfterTimeOff } from "./step-after-break";
import type { StepGiven } from "./step-given";
import { stepOnLadder } from "./step-on-ladder";
import { stepOnWayBack } from "./step-on-way-back";

/** Next week's block and load of one athlete, and why. */
export type PlannedStep = {
  readonly block: Block;
  readonly loadKg: number;
  readonly halfSets: boolean;
  readonly reasons: readonly LineReason[];
  /** The plan has followed a run of slow days: speeds are those of late. */
  readonly isFollowed?: boolean;
  /** Every gate stood open: with steps by session the week's second session may go on. */
  readonly ready: boolean;
};

/** The step for next week; whatever it is, fewer than two repetitions seen in reserve are told. */
export function plannedStep(given: StepGiven): PlannedStep {
  const planned = firstStep(given);
  const [first, ...others] = planned.reasons;
  const seen = seenReason(given.step);
  return !fewLeft(given.step) || first?.code === seen.code
    ? planned
    : { ...planned, reasons: [first!, seen, ...others] };
}

/** The first of these that has a say. */
function firstStep(given: StepGiven): PlannedStep {
  const { step, size } = given;
  const back = wayBack(step.sessions, step.sessionsAWeek, given.monday, size.stepKg);
  return (
    stepAfterTimeOff(given, back) ??
    stepAfterMarathon(given) ??
    heldByState(given, back) ??
    stepOnWayBack(given, back) ??
    stepOnLadder(given)
  );
}
