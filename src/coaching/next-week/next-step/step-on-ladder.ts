import { heldBy, nextBlock } from "../../blocks/next-block";
import { stepUpKg } from "../../blocks/step-up";
import { weeksToHold } from "../../blocks/weeks-to-hold";
import type { PlannedStep } from "./planned-step";
import { fewLeft } from "./reserve-guard";
import { held, heldByReserve } from "./same-block";
import type { StepGiven } from "./step-given";

/** The step of the rotation, by the gates in order, once the block's weeks are held. */
export function stepOnLadder(given: StepGiven): PlannedStep {
  const { state, step, size, rules } = given;
  const gates = {
    movedWell: step.movedWell,
    volumeDone: step.volumeDone,
    // Without a bar speed the step rests on quality and volume; a lost pattern still holds it.
    heldSpeed: state.heldSpeed ?? true,
  };
  const gate = heldBy(gates);
  if (gate !== null) return held(given, gate, step.sets);
  if (fewLeft(step)) return heldByReserve(given);
  const weeks = weeksToHold(step.block, step.firstTurn, rules);
  if (step.weeksHeld < weeks) {
    return held(given, "hold-week", { week: step.weeksHeld + 1, of: weeks });
  }
  // Volume falls before an A race and load is kept (Bosquet et al. 2007): no new step that week.
  if (given.kind === "race week") return held(given, "race-week-held");
  // Days out ill ask for no more on the first day back, few as they were.
  if (given.wasOut) return held(given, "out-held");
  // Bar speed comes before load: what has fallen by as much as would show waits until it is called, or back.
  if (state.fallen !== null) return held(given, "fallen-held", state.fallen);
  const next = nextBlock({
    block: step.block,
    loadKg: step.loadKg,
    ...gates,
    strengthKg: given.guardKg,
    stepKg: size.stepKg,
    riseOf: (kg) => stepUpKg(kg, size),
    resetShare: rules.resetShare,
  });
  if (!next.ok) return held(given, "reserve-short");
  const { block, loadKg, reason } = next.value;
  const speedKnown = state.heldSpeed === null ? 0 : 1;
  const facts = { ...step.sets, fromKg: step.loadKg, toKg: loadKg, speedKnown };
  const code = reason === "step-too-coarse" && size.wanted === 0 ? "step-level" : reason;
  // Later blocks have as many repetitions or fewer, so a ladder from here never has to begin lower.
  return {
    block,
    loadKg,
    halfSets: false,
    reasons: [{ code, facts }],
    ready: true,
  };
}
