import { gymStepKg } from "../../blocks/gym-step";
import { stepSizeOf } from "../../blocks/step-size";
import type { Day } from "../../calendar/day";
import { nameKey } from "../../record/name-key";
import type { GymDays } from "../../season/gym-days";
import { daysSinceMarathon } from "../../season/race-hours";
import { isSquat } from "../exercises/is-squat";
import { gapBefore } from "../next-step/gap-before";
import type { PresentStep } from "../present-step/present-step";
import type { LineGiven, ProposedSession } from "../proposed-line";
import { asLastTime, type LiftPlan, type LiftsGiven, liftPlan } from "../session/lift-plan";
import { sessionWriter } from "../session/session-writer";
import { gymPlates } from "../session/usual-plates";
import { isStrained } from "../state/is-strained";
import { chosenDays } from "./chosen-days";
import { firstTurn, turnName, turnsByDay } from "./turn-of-week";
import type { WeekFrame } from "./week-frame";

/** The lifts of one athlete's week, and the sessions written from them. */
export type LiftingWeek = {
  /** The lift the athlete is on, in the week or not. */
  readonly own: LiftPlan;
  /** Lifts with a session in the week. */
  readonly plans: readonly LiftPlan[];
  readonly planOn: (day: Day) => LiftPlan;
  /** Name of a lift's turn, on its ladder or in turn with it; "" for the week's first. */
  readonly turnOf: (plan: LiftPlan, onLadder: boolean) => string;
  readonly sessions: readonly ProposedSession[];
  /** Ground contacts are halved and no stack rises: who comes back lands less, too, not only lifts less. */
  readonly eased: boolean;
  /** One of its sessions prepares an A race. */
  readonly racing: boolean;
};

/** Plans each lift of the week from its present step, and writes the sessions on the days that suit. */
export function liftingWeek(
  given: LineGiven,
  frame: WeekFrame,
  step: PresentStep,
  days: GymDays,
): LiftingWeek {
  const { state, change = {} } = given;
  const { races, mayOn, cutOn, setsOn } = frame;
  const chosen = chosenDays(days, change.day, frame.wanted);
  const racing = chosen.some(({ day }) => cutOn(day));
  const lifts = liftsGiven(given, frame, step, racing);
  const own = liftPlan(step, lifts);
  const all = [own, ...step.others.map((one) => liftPlan(one, lifts, asLastTime))];
  const turns = turnsByDay(chosen, step, change.day);
  const planOn = (day: Day) => all.find((plan) => plan.step === turns.get(day)!.step)!;
  const first = firstTurn([...turns.values()], step);
  // What is set by hand without a name is of the week's first turn.
  const turnOf = (plan: LiftPlan, onLadder: boolean) =>
    plan.step === first.step && onLadder === first.onLadder
      ? ""
      : turnName({ step: plan.step, onLadder });
  const plans = all.filter((plan) => chosen.some(({ day }) => planOn(day) === plan));
  const eased = own.easedNow || isStrained(state) || frame.landsAgain;
  const writers = new Map(
    plans.map((plan) => [
      plan,
      sessionWriter(plan, {
        ...given,
        races,
        cutOn,
        eased,
        mayOn,
        setsOn,
        needsRack: plan === own || isSquat(plan.step.exercise),
        turnOf: (onLadder) => turnOf(plan, onLadder),
        ladderDays: chosen
          .map(({ day }) => day)
          .filter((day) => planOn(day) === plan && turns.get(day)!.onLadder),
      }),
    ]),
  );
  const sessions = chosen.map((on) => writers.get(planOn(on.day))!(on));
  return { own, plans, planOn, turnOf, sessions, eased, racing };
}

/** What all lifts of the week have in common. */
function liftsGiven(
  { athlete, name, state, rows, unit, monday, asOf }: LineGiven,
  { races, kind, firstDay, mayOn, mayLift }: WeekFrame,
  step: PresentStep,
  racing: boolean,
): LiftsGiven {
  const daysSince = (lastDay: Day) => gapBefore({ lastDay, firstDay, monday, asOf, mayLift });
  const offBar = daysSince(step.trainedDay);
  const plates = gymPlates(rows.plates, unit);
  const { mayDo } = mayOn(firstDay);
  return {
    state,
    rows,
    mayDo,
    monday,
    firstDay,
    // A week in which one session prepares a race goes no step on.
    kind: racing ? "race week" : kind,
    wasOut: rows.availability.some(
      (spell) =>
        spell.mayDo === "out" &&
        nameKey(spell.athlete) === nameKey(name) &&
        spell.from < firstDay &&
        (spell.until ?? spell.from) > step.trainedDay,
    ),
    gap: (offBar + daysSince(step.legDay)) / 2,
    offBar,
    marathonDays: daysSinceMarathon(firstDay, races, rows.rules),
    usualSize: stepSizeOf(athlete, rows.rules, gymStepKg(plates)),
    plates,
  };
}
