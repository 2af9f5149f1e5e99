import type { WayBack } from "../../blocks/way-back";
import type { PlannedStep } from "./planned-step";
import { held, lighterReasons, sameBlock } from "./same-block";
import type { StepGiven } from "./step-given";

/** The same again for what the season, availability, the last day or the diary says; null when nothing holds. */
export function heldByState(given: StepGiven, back: WayBack | null): PlannedStep | null {
  const { state, mayDo, step } = given;
  if (state.word === "slipping") {
    const { slowRun } = step;
    if (slowRun !== null) {
      const facts = {
        days: slowRun.days,
        since: slowRun.sinceDay,
        kg: slowRun.loadKg,
        plan: step.loadKg,
      };
      return {
        ...sameBlock(given, slowRun.loadKg, { code: "slow-run", facts }),
        isFollowed: true,
      };
    }
    return held(given, "slipping-held", back ? { before: back.beforeKg } : {});
  }
  // The grades of the way back are what a clearance is for.
  if (mayDo === "modified" || (mayDo === "cleared" && back === null)) {
    return held(given, "modified-held", { mayDo });
  }
  if (state.lastWord === "well below usual") return held(given, "last-well-below");
  if (state.soreness) return held(given, "sore-held");
  if (state.unwellDay !== null) return held(given, "unwell-held", state.unwellDay);
  // What was lifted lighter was not done yet.
  const [lighter] = lighterReasons(step);
  return lighter ? sameBlock(given, step.loadKg, lighter) : null;
}
