import { exerciseKey } from "../../record/exercise-key";
import type { LiftingSet } from "../../record/lifting-set";
import { remembered } from "../../series/remembered";
import { type Guard, guardLeaving, guardOf } from "../next-step/reserve-guard";
import type { LineGiven, ProposedSession, ProposedWeek } from "../proposed-line";

/** What is lifted in a week. */
export type Lifted = Pick<ProposedWeek, "sessions" | "step">;

/**
 * The rows of an athlete as they would be once a proposed week was lifted as it stands: every set done
 * and moved well. Soreness is over by then; of the last day nothing unusual is known. What the
 * season says stays: whoever slips is not taken to have stopped.
 */
export function asDone(given: LineGiven, { sessions, step }: Lifted): LineGiven {
  const { state, rows, monday, asOf } = given;
  // A session of this week that lies behind was not lifted; what stands for the lift is no set of it.
  const lifted = sessions.filter(({ day, instead }) => day > asOf && instead === null);
  const sets = lifted.flatMap((one) => {
    const key = exerciseKey(one.exercise);
    const like = rows.sets.find((set) => exerciseKey(set.exercise) === key && set.kind === "work");
    return setsOf(like!, one);
  });
  const steps = step === null ? [] : [step, ...step.others];
  const ofLift = remembered((lift: string) => {
    const on = state.ofLift(lift);
    const isOf = ({ exercise }: { readonly exercise: string }) =>
      exerciseKey(exercise) === exerciseKey(lift);
    const at = steps.find(isOf);
    return {
      ...on,
      // What guards a step by reserves seen is not raised by loads that nobody has lifted yet.
      ...(at && { seenKg: lifted.filter(isOf).reduce(guardLeaving, seenKgOf(guardOf(on, at))) }),
      // Of sets that nobody has lifted yet no speed is known.
      heldSpeed: null,
    };
  });
  const rested = { ...state, ofLift, soreness: null, unwellDay: null };
  return {
    ...given,
    asOf: monday + 6,
    rows: { ...rows, sets: [...rows.sets, ...sets] },
    state: sets.length === 0 ? rested : { ...rested, lastWord: "as usual" },
  };
}

const seenKgOf = (guard: Guard | null) => (guard?.from === "seen" ? guard.kg : null);

/**
 * Sets of a session in the manner of one of the lift's own, done and moved well; no speed of theirs is
 * known. Each figure is asked for by its name: a row read in place holds none of its own.
 */
function setsOf(
  { row, athlete, exercise, kind, speedIs, tool, gym, by }: LiftingSet,
  { day, minute, sets, reps, loadKg, barKg }: ProposedSession,
): readonly LiftingSet[] {
  return Array.from({ length: sets }, (_, at) => ({
    ...{ row, athlete, exercise, kind, speedIs, tool, gym, by },
    ...{ day, minute, set: at + 1, reps, loadKg, barKg },
    repSpeeds: [],
    setSpeed: null,
    setSpeedIs: null,
    movedWell: true,
    repsInReserve: null,
    note: "",
  }));
}
