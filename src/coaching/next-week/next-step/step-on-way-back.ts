import { onSteps } from "../../blocks/on-steps";
import type { WayBack } from "../../blocks/way-back";
import type { PlannedStep } from "./planned-step";
import { fewLeft, keepingReserve, leavesReserve } from "./reserve-guard";
import { held, heldByReserve, sameBlock } from "./same-block";
import type { StepGiven } from "./step-given";

/** Share of the load before a break under which the sets were halved. */
const halvedUnder = 0.85;

/** The next grade after a break; null without one, or once the guard lets it rise no further and the ladder leads on. */
export function stepOnWayBack(given: StepGiven, back: WayBack | null): PlannedStep | null {
  if (back === null) return null;
  const { step, guardKg, size } = given;
  const whole = leavesReserve(step.block, back.gradeKg, guardKg);
  // What the reserve allows is looked for in steps from the present load: between them plates make none.
  const gradeKg = whole ? back.gradeKg : onSteps(step.loadKg, back.gradeKg, size.stepKg);
  const rises = keepingReserve(step.block, gradeKg, guardKg, size.stepKg) > step.loadKg;
  if (!rises && back.gradeKg > step.loadKg) return null;
  if (step.movedWell === null) return held(given, "quality-not-recorded");
  if (!step.movedWell) return held(given, "moved-poorly");
  // The first sessions back had half the sets by plan, so missing sets say nothing there.
  const halved = step.loadKg < halvedUnder * back.beforeKg;
  if (step.volumeDone === false && !halved) return held(given, "volume-missed", step.sets);
  // No grade is climbed before an A race either.
  if (rises && given.kind === "race week") return held(given, "race-week-held");
  if (rises && fewLeft(step)) return heldByReserve(given);
  return sameBlock(given, gradeKg, { code: "grade-back", facts: { before: back.beforeKg } });
}
