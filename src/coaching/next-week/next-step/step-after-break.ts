import { hairKg } from "../../blocks/plate-loading";
import type { Restart } from "../../blocks/restart";
import type { WayBack } from "../../blocks/way-back";
import { mondayOf } from "../../calendar/day";
import type { PlannedStep } from "./planned-step";
import { sameBlock } from "./same-block";
import type { StepGiven } from "./step-given";

/** Share off between the rest after a marathon and usual loads again (common practice, no source). */
const easedAfterMarathon = 0.1;

/** The step after time off the lift; null when there was none, or a marathon's easing asks for more. */
export function stepAfterTimeOff(given: StepGiven, back: WayBack | null): PlannedStep | null {
  const { rest, step, lighterDays } = given;
  if (given.marathonDays !== null && !rest?.halfSets) return null;
  const otherLifts =
    lighterDays === null
      ? []
      : [{ code: "other-lifts", facts: { days: lighterDays, eased: Number(rest !== null) } }];
  if (rest === null) {
    const [held] = otherLifts;
    return held ? sameBlock(given, step.loadKg, held) : null;
  }
  const eased = afterTimeOff(given, back, rest);
  return { ...eased, reasons: [...eased.reasons, ...otherLifts] };
}

function afterTimeOff(given: StepGiven, back: WayBack | null, rest: Restart): PlannedStep {
  const { step } = given;
  // Lifted only in the week it was taken down for the last time off: nothing is taken off it once more.
  const again = back !== null && mondayOf(step.lastDay) === mondayOf(back.sinceDay) ? back : null;
  const loadKg = (again?.beforeKg ?? step.loadKg) * (1 - rest.off);
  const facts = {
    days: rest.daysOff,
    percent: 100 * rest.off,
    ...(again && { before: again.beforeKg }),
  };
  return again && loadKg >= step.loadKg - hairKg
    ? sameBlock(given, step.loadKg, { code: "restart-again", facts }, rest.halfSets)
    : sameBlock(given, loadKg, { code: "restart", facts }, rest.halfSets);
}

/** The step while the easing after a marathon lasts; null otherwise. */
export function stepAfterMarathon(given: StepGiven): PlannedStep | null {
  const { marathonDays, step } = given;
  if (marathonDays === null) return null;
  const reason = { code: "after-marathon", facts: { days: marathonDays } };
  // A session since the race was eased already: nothing is taken off twice, and as few sets as then are done.
  return given.liftedSince
    ? sameBlock(given, step.liftedKg, reason, step.volumeDone === false)
    : sameBlock(given, step.loadKg * (1 - easedAfterMarathon), reason, true);
}
