import { onSteps } from "../../blocks/on-steps";
import { wayBack } from "../../blocks/way-back";
import type { Day } from "../../calendar/day";
import type { PresentStep } from "../present-step/present-step";
import type { SessionStep } from "./session-steps";

/**
 * What is done in turn with a lift's ladder, as last time: a fast day beside the heavy ones, threes
 * beside fives. What takes load off the step for its own reasons leaves it as it is; a break or a
 * marathon eases it by the same share, of what it was before.
 *
 * @param eased.loadKg planned for the step this week, kg
 * @param eased.now a break or a marathon eases this week
 */
export function easedTurn(
  step: PresentStep,
  eased: {
    readonly loadKg: number;
    readonly now: boolean;
    readonly monday: Day;
    readonly gradeKg: number;
    readonly wholeKg: number;
  },
): Pick<SessionStep, "block" | "loadKg"> {
  const { loadKg, now, monday, gradeKg, wholeKg } = eased;
  // Also where another break followed: what was not done since the first stands as far under its load.
  const back = wayBack(step.sessions, step.sessionsAWeek, monday, gradeKg);
  const since = back?.sinceDay ?? Number.POSITIVE_INFINITY;
  const {
    sets,
    reps,
    loadKg: lastKg,
  } = step.inTurn.reduce((last, one) => (one.day < since ? one : last));
  const share = back !== null ? loadKg / back.beforeKg : now ? loadKg / step.loadKg : 1;
  return { block: { sets, reps }, loadKg: easedTo(lastKg, share, wholeKg) };
}

/** A load in whole steps, at or under so much of it; itself where nothing is taken off. */
const easedTo = (loadKg: number, share: number, wholeKg: number) =>
  share === 1 ? loadKg : onSteps(0, share * loadKg, wholeKg);
