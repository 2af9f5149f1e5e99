import type { Day } from "../../calendar/day";
import type { DayChoice } from "../../season/gym-days";
import type { SessionStep } from "../next-step/session-steps";
import type { ProposedSession } from "../proposed-line";
import { handSet } from "./hand-set";
import type { LiftPlan } from "./lift-plan";
import { type SessionsGiven, sessionProposer } from "./propose-session";

/** What one lift's sessions of a week depend on besides its plan. */
export type WriterGiven = Omit<
  SessionsGiven,
  "state" | "step" | "size" | "guard" | "setsOf" | "bar"
> & {
  /** Name of the lift's turn on its ladder, or of what is done in turn with that. */
  readonly turnOf: (onLadder: boolean) => string;
  /** Days of the lift's own ladder in the week. */
  readonly ladderDays: readonly Day[];
  /** So many sets, or fewer on a day that an A race has cut. */
  readonly setsOn: (sets: number, day: Day) => number;
};

/** Writes the sessions of one lift's week: a step of its ladder for each of the ladder's days, and what is done in turn with them on the others. */
export function sessionWriter(
  plan: LiftPlan,
  { turnOf, ladderDays, setsOn, ...given }: WriterGiven,
): (on: DayChoice) => ProposedSession {
  const { state, step, size, guard, bar } = plan;
  const wanted = (onLadder: boolean) => handSet(given.change ?? {}, turnOf(onLadder));
  const steps = plan.onLadder(ladderDays.length, wanted(true));
  const stepsAsProposed = plan.onLadder(ladderDays.length, {});
  const asProposed = ({ block, loadKg }: SessionStep, day: Day) => ({
    sets: setsOn(plan.setsOf(block, {}), day),
    reps: block.reps,
    loadKg: bar(loadKg).loadKg,
  });
  const sessionOf = sessionProposer({
    ...given,
    state,
    step,
    size,
    bar,
    guard,
    setsOf: (block, day) =>
      given.change?.sets ?? setsOn(plan.setsOf(block, wanted(ladderDays.includes(day))), day),
  });
  return (on) => {
    const onLadder = ladderDays.includes(on.day);
    // A day set by hand comes first and may lie after the other: steps go by day.
    const before = ladderDays.filter((day) => day < on.day).length;
    const planned = onLadder ? steps[before]! : plan.inTurn(wanted(false));
    return {
      ...sessionOf(on, planned),
      asProposed: asProposed(onLadder ? stepsAsProposed[before]! : plan.inTurn({}), on.day),
      onLadder,
      turn: turnOf(onLadder),
    };
  };
}
