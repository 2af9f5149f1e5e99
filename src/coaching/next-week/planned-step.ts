import type { WhoMay } from "../availability/who-may";
import type { Block } from "../blocks/block";
import { leastReserve, type NextBlockReason, nextBlock } from "../blocks/next-block";
import { chartReps, mostReps, singleFromSet } from "../blocks/repetition-load";
import type { Restart } from "../blocks/restart";
import { type StepSize, stepUpKg } from "../blocks/step-up";
import { wayBack } from "../blocks/way-back";
import { weeksToHold } from "../blocks/weeks-to-hold";
import type { Day } from "../calendar/day";
import type { SquadRules } from "../record/squad-rules";
import type { WeekKind } from "../season/race-hours";
import type { AthleteState } from "./athlete-state";
import type { LineReason } from "./line-reason";
import type { PresentStep } from "./present-step";

/** Share of the load before a break under which the sets were halved. */
const halvedUnder = 0.85;
/** Share off between the rest after a marathon and usual loads again (common practice, no source). */
const easedAfterMarathon = 0.1;

/**
 * The strength a step is guarded by: the cautious end of the estimate, or without one what the sets'
 * own repetitions in reserve say by the repetition table. It never raises a load.
 */
export function guardOf(state: AthleteState, step: PresentStep): number | null {
  return state.strengthLowKg ?? strengthSeen(step);
}

/**
 * The same for the repetitions told to be in reserve: whoever was seen with fewer than two left has no
 * more because a line through speeds says so, and the lesser of the two is told.
 */
export function toldGuardOf(state: AthleteState, step: PresentStep): number | null {
  const guardKg = guardOf(state, step);
  const seenKg = fewLeft(step) ? strengthSeen(step) : null;
  return guardKg === null || seenKg === null ? guardKg : Math.min(guardKg, seenKg);
}

const fewLeft = ({ reserveSeen }: PresentStep) =>
  reserveSeen !== null && reserveSeen < leastReserve;

function strengthSeen({ reserveSeen, loadKg, block }: PresentStep): number | null {
  if (reserveSeen === null) return null;
  const single = singleFromSet(loadKg, Math.min(chartReps, block.reps + Math.floor(reserveSeen)));
  return single.ok ? single.value : null;
}

export type PlannedStep = {
  readonly block: Block;
  readonly loadKg: number;
  readonly halfSets: boolean;
  readonly reasons: readonly LineReason[];
  /** Every gate stood open: with steps by session the week's second session may go on. */
  readonly ready: boolean;
};

/** The step for next week: time off first, then the way back, then the season, then the gates in order. */
export function plannedStep(given: {
  readonly state: AthleteState;
  readonly step: PresentStep;
  readonly rest: Restart | null;
  readonly guardKg: number | null;
  readonly size: StepSize;
  readonly rules: SquadRules;
  readonly mayDo: WhoMay["mayDo"];
  readonly sessionsAWeek: number;
  readonly monday: Day;
  /** Days since a marathon whose easing is not over; null otherwise. */
  readonly marathonDays: number | null;
  /** The last session lies after that marathon. */
  readonly liftedSince: boolean;
  readonly kind: WeekKind;
}): PlannedStep {
  const { state, step, rest, guardKg, size, rules, mayDo } = given;
  const smallStep = size.stepKg;
  /** The same block at a load, or at less where it would not keep its reserve, which is said too. */
  const at = (wantedKg: number, code: string, facts: LineReason["facts"], halfSets = false) => {
    const loadKg = guarded(step.block, wantedKg, guardKg, smallStep);
    const reasons = [{ code, facts }];
    if (loadKg < wantedKg && code !== "reserve-short")
      reasons.push({ code: "reserve-short", facts: {} });
    return { block: step.block, loadKg, halfSets, reasons, ready: false };
  };
  const hold = (code: string, facts: LineReason["facts"] = {}): PlannedStep =>
    at(step.loadKg, code, facts);
  if (rest && (given.marathonDays === null || rest.halfSets)) {
    const facts = { days: rest.daysOff, percent: 100 * rest.off };
    return at(step.loadKg * (1 - rest.off), "restart", facts, rest.halfSets);
  }
  if (given.marathonDays !== null) {
    const facts = { days: given.marathonDays };
    // A session since the race was eased already: nothing is taken off twice, and as few sets as then are done.
    return given.liftedSince
      ? at(step.loadKg, "after-marathon", facts, step.volumeDone === false)
      : at(step.loadKg * (1 - easedAfterMarathon), "after-marathon", facts, true);
  }
  // What left fewer than two is not gone on from because the estimate says more; without one it guards itself.
  const seenLess = state.strengthLowKg !== null && fewLeft(step);
  const back = wayBack(step.sessions, given.sessionsAWeek, given.monday, smallStep);
  const held =
    state.word === "slipping"
      ? hold("slipping-held")
      : // The grades of the way back are what a clearance is for.
        mayDo === "modified" || (mayDo === "cleared" && back === null)
        ? hold("modified-held", { mayDo })
        : state.lastWord === "well below usual"
          ? hold("last-well-below")
          : state.soreness
            ? hold("sore-held")
            : state.unwellDay !== null
              ? hold("unwell-held")
              : null;
  if (held) return held;
  // Once the guard lets the way back rise no further, the ladder leads on.
  const rises = back && guarded(step.block, back.gradeKg, guardKg, smallStep) > step.loadKg;
  if (back && (rises || back.gradeKg <= step.loadKg)) {
    if (step.movedWell !== true) {
      return hold(step.movedWell === null ? "quality-not-recorded" : "moved-poorly");
    }
    // The first sessions back had half the sets by plan, so missing sets say nothing there.
    const halved = step.loadKg < halvedUnder * back.beforeKg;
    if (step.volumeDone === false && !halved) return hold("volume-missed");
    // No grade is climbed before an A race either.
    if (rises && given.kind === "race week") return hold("race-week-held");
    if (rises && seenLess) return hold("reserve-seen");
    return at(back.gradeKg, "grade-back", { before: back.beforeKg });
  }
  const gates = {
    movedWell: step.movedWell,
    volumeDone: step.volumeDone,
    // Without a bar speed the step rests on quality and volume; a lost pattern still holds it.
    heldSpeed: state.heldSpeed ?? true,
  };
  const ready = gates.movedWell === true && gates.volumeDone === true && gates.heldSpeed;
  const weeks = weeksToHold(step.block, step.firstTurn, rules);
  if (ready && step.weeksHeld < weeks) {
    return hold("hold-week", { week: step.weeksHeld + 1, of: weeks });
  }
  // Volume falls before an A race and load is kept (Bosquet et al. 2007): no new step that week.
  if (ready && given.kind === "race week") return hold("race-week-held");
  if (ready && seenLess) return hold("reserve-seen");
  const next = nextBlock({
    block: step.block,
    loadKg: step.loadKg,
    ...gates,
    strengthKg: guardKg,
    stepKg: smallStep,
    riseOf: (kg) => stepUpKg(kg, size),
    resetShare: rules.resetShare,
  });
  if (!next.ok) return hold("reserve-short");
  const { loadKg } = next.value;
  const reason: NextBlockReason = next.value.reason;
  const level = reason === "step-too-coarse" && size.wanted === 0;
  // Later blocks have as many repetitions or fewer, so a ladder from here never has to begin lower.
  return {
    block: next.value.block,
    loadKg,
    halfSets: false,
    reasons: [
      {
        code: level ? "step-level" : reason,
        facts: {
          fromKg: step.loadKg,
          toKg: loadKg,
          speedKnown: state.heldSpeed === null ? 0 : 1,
        },
      },
    ],
    ready,
  };
}

/** The load, or less of it where two repetitions would not stay in reserve. */
function guarded(block: Block, loadKg: number, guardKg: number | null, stepKg: number): number {
  if (guardKg === null) return loadKg;
  let kg = loadKg;
  while (kg > stepKg && mostReps(kg / guardKg) - block.reps < leastReserve) kg -= stepKg;
  return kg;
}
