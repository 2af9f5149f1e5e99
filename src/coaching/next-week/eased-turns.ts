import { wayBack } from "../blocks/way-back";
import type { Day } from "../calendar/day";
import { exerciseKey } from "../record/exercise-key";
import type { InTurn } from "./in-turn";
import type { PresentStep } from "./present-step";
import type { SessionStep } from "./session-steps";
import { inTurnOn } from "./turn-of-week";

/** What takes the step's place on a day: its own step, as last time or eased, and the other lift if it is one. */
export type EasedTurn = {
  readonly last: InTurn;
  readonly step: SessionStep;
  readonly otherLift: InTurn | null;
};

/**
 * What takes the step's place on some of a week's days, by day. What takes load off the step for its
 * own reasons leaves it as it is; a break or a marathon eases it by the same share, and what was not done
 * yet since a break comes back in the lift's grades, also where another one followed.
 *
 * @param days of the week's sessions
 * @param eased.loadKg planned for the step this week, kg
 * @param eased.now a break or a marathon eases this week
 */
export function easedTurns(
  days: readonly Day[],
  step: PresentStep,
  eased: {
    readonly loadKg: number;
    readonly now: boolean;
    readonly monday: Day;
    readonly gradeKg: number;
    readonly wholeKg: number;
    readonly sessionsAWeek: number;
  },
): ReadonlyMap<Day, EasedTurn> {
  const { loadKg, now, monday, gradeKg, wholeKg, sessionsAWeek } = eased;
  const share = now ? loadKg / step.loadKg : 1;
  const back = wayBack(step.sessions, sessionsAWeek, monday, gradeKg);
  const shareOf = ({ lastDay }: InTurn) =>
    back !== null && lastDay < back.sinceDay ? loadKg / back.beforeKg : share;
  const turns = [...inTurnOn(days, step)].map(([day, last]): [Day, EasedTurn] => {
    const { sets, reps, exercise } = last;
    const own = easedTo(last.loadKg, shareOf(last), wholeKg);
    const isLift = exerciseKey(exercise) === exerciseKey(step.exercise);
    return [
      day,
      {
        last,
        step: { block: { sets, reps }, loadKg: own, otherwise: null },
        otherLift: isLift ? null : { ...last, loadKg: own },
      },
    ];
  });
  return new Map(turns);
}

/** A load in whole steps, at or under so much of it; itself where nothing is taken off. */
const easedTo = (loadKg: number, share: number, wholeKg: number) =>
  share === 1 ? loadKg : Math.floor((share * loadKg) / wholeKg + 1e-9) * wholeKg;
