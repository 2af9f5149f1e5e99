import type { WhoMay } from "../../availability/who-may";
import type { Block } from "../../blocks/block";
import { fineStep } from "../../blocks/gym-step";
import { halfSetsOf, type Restart, restartAfter } from "../../blocks/restart";
import type { StepSize } from "../../blocks/step-up";
import type { Day } from "../../calendar/day";
import type { Plate } from "../../record/plate";
import type { WeekKind } from "../../season/race-hours";
import type { LineReason } from "../line-reason";
import { type BarLoad, barLoad } from "../next-step/bar-load";
import { easedTurn } from "../next-step/eased-turn";
import { type PlannedStep, plannedStep } from "../next-step/planned-step";
import { fewLeft, type Guard, guardAgainst, guardOf } from "../next-step/reserve-guard";
import { type SessionStep, sessionSteps } from "../next-step/session-steps";
import type { PresentStep } from "../present-step/present-step";
import type { LineGiven, Wanted } from "../proposed-line";
import { changingReasons, droppedReasons, newBarReasons } from "../reasons/line-reasons";
import { onLift, type StateOnLift } from "../state/athlete-state";

/** What all lifts of an athlete's week have in common. */
export type LiftsGiven = Pick<LineGiven, "state" | "rows"> & {
  readonly mayDo: WhoMay["mayDo"];
  readonly monday: Day;
  readonly firstDay: Day;
  /** A week in which one session prepares a race goes no step on. */
  readonly kind: WeekKind;
  /** Out on a day between the last session of any lift and the first of this week. */
  readonly wasOut: boolean;
  /** Days between the last session of any main lift and the first of this week, as a restart counts them. */
  readonly gap: number;
  /** The same with those that other lifts of the legs have filled counted in full. */
  readonly offBar: number;
  readonly marathonDays: number | null;
  readonly usualSize: StepSize;
  readonly plates: readonly Plate[];
};

/** One lift's week: its next step, and what its sessions are made of. */
export type LiftPlan = {
  readonly step: PresentStep;
  readonly state: StateOnLift;
  readonly size: StepSize;
  readonly planned: PlannedStep;
  readonly guard: Guard | null;
  /** Fewer than two repetitions were seen in reserve, or would not stay at the load of before. */
  readonly isShort: boolean;
  /** Time off the lift that takes something off; null otherwise. */
  readonly rest: Restart | null;
  /** A break or a marathon eases it. */
  readonly easedNow: boolean;
  /** A load as this gym's plates make it. */
  readonly bar: (kg: number) => BarLoad;
  /** Sets of a block: no more than the coach asks for time and again, half of them where the step asks for it. */
  readonly setsOf: (block: Block, wanted: Wanted) => number;
  /** So many sessions of its ladder, from the step or from what the coach wants of it. */
  readonly onLadder: (count: number, wanted: Wanted) => readonly SessionStep[];
  /** The session done in turn with the ladder's, as last time. */
  readonly inTurn: (wanted: Wanted) => SessionStep;
  readonly dropped: readonly LineReason[];
  /** Told after the step's own reasons: what the last session was read as. */
  readonly readAs: readonly LineReason[];
};

/** The most repetitions of the rotation's blocks. */
const mostOfRotation = 5;

/** What is done in turn with more repetitions than the rotation's stays as it was: only what takes load off has a say. */
export function asLastTime(planned: PlannedStep, { done, loadKg }: PresentStep): PlannedStep {
  if (done.reps <= mostOfRotation) return planned;
  const kept = { ...planned, block: done, ready: false };
  const seen = planned.reasons.filter(({ code }) => code === "reserve-seen");
  return planned.loadKg < loadKg
    ? kept
    : { ...kept, loadKg, reasons: [{ code: "as-last-time", facts: {} }, ...seen] };
}

/** Two repetitions in reserve have taken the load under what it would be. */
const isLowered = ({ code, facts: { fromKg, toKg } }: LineReason) =>
  code === "reserve-short" && Number(toKg) < Number(fromKg);

/** Plans one lift of an athlete's week. */
export function liftPlan(
  present: PresentStep,
  given: LiftsGiven,
  asPlanned: (planned: PlannedStep, present: PresentStep) => PlannedStep = (planned) => planned,
): LiftPlan {
  const { rows, plates, usualSize, monday, firstDay, marathonDays } = given;
  const { rules } = rows;
  const state = onLift(given.state, present.exercise);
  const { sessionsAWeek, gapSince } = present;
  const rest = restartAfter(Math.max(given.gap, gapSince), sessionsAWeek);
  const restOffBar = restartAfter(given.offBar, sessionsAWeek);
  const size = fineStep(usualSize, present.loadKg, plates);
  const guard = guardOf(state, present);
  const guardKg = guard?.kg ?? null;
  const planned = asPlanned(
    plannedStep({
      ...given,
      state,
      step: present,
      rest,
      lighterDays: (restOffBar?.off ?? 0) > (rest?.off ?? 0) ? given.offBar : null,
      guardKg,
      size,
      rules,
      liftedSince: present.lastDay > firstDay - (marathonDays ?? 0),
    }),
    present,
  );
  const easedNow = rest !== null || marathonDays !== null;
  const bar = (kg: number) => barLoad(kg, present.barKg, present.loadKg, plates);
  return {
    step: present,
    // Followed down, it is not judged by speeds from before once more.
    state: planned.isFollowed ? { ...state, ...state.recent, onDay: () => null } : state,
    size,
    planned,
    guard,
    isShort: fewLeft(present) || planned.reasons.some(isLowered),
    rest,
    easedNow,
    bar,
    setsOf: (block, wanted) => {
      const sets = wanted.block ? block.sets : Math.min(block.sets, present.mostSets);
      return planned.halfSets ? halfSetsOf(sets) : sets;
    },
    onLadder: (count, { block, loadKg }) =>
      sessionSteps({
        ...size,
        block: block ?? planned.block,
        loadKg: bar(loadKg ?? planned.loadKg).loadKg,
        guardKg,
        resetShare: rules.resetShare,
        count,
        stepEach:
          rules.stepBySession >= 0.5 &&
          planned.ready &&
          block === undefined &&
          loadKg === undefined,
      }),
    inTurn: ({ block, loadKg }) => {
      const eased = easedTurn(present, {
        loadKg: planned.loadKg,
        now: easedNow,
        monday,
        gradeKg: size.stepKg,
        wholeKg: usualSize.stepKg,
      });
      return { block: block ?? eased.block, loadKg: loadKg ?? eased.loadKg, otherwise: null };
    },
    dropped: droppedReasons(present, guardAgainst(guard, present), rest),
    readAs: [...changingReasons(present), ...newBarReasons(present)],
  };
}
