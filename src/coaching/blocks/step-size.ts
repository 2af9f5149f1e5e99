import type { Athlete } from "../record/athlete";
import type { SquadRules } from "../record/squad-rules";
import type { StepSize } from "./step-up";

/**
 * An athlete's step: the Athletes table's own share, else the squad's rule. The largest step is the
 * squad's for novices or trained; a share written down on purpose may be larger than it, up to 10 %.
 */
export function stepSizeOf(
  athlete: Pick<Athlete, "experience" | "stepShare"> | null,
  rules: Pick<SquadRules, "stepSize" | "largestStep" | "noviceStep">,
  stepKg: number,
): StepSize {
  const wanted = athlete?.stepShare ?? rules.stepSize;
  const usualMost = athlete?.experience === "novice" ? rules.noviceStep : rules.largestStep;
  return { stepKg, wanted, largestStep: Math.max(usualMost, wanted) };
}
