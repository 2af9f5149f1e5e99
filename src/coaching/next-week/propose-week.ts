import type { WhoMay } from "../availability/who-may";
import { gymStepKg } from "../blocks/gym-step";
import { stepSizeOf } from "../blocks/step-size";
import type { Day } from "../calendar/day";
import { nameKey } from "../record/name-key";
import { daysSinceMarathon, raceNear } from "../season/race-hours";
import { mostSessions } from "../season/usual-sessions-a-week";
import type { AthleteState } from "./athlete-state";
import { chosenDays } from "./chosen-days";
import { dayReasons } from "./day-reasons";
import { gapBefore } from "./gap-before";
import { handSet } from "./hand-set";
import { isSquat } from "./is-squat";
import { isStrained } from "./is-strained";
import { jumpsAloneReasons } from "./jumps-alone-reasons";
import { asLastTime, type LiftPlan, type LiftsGiven, liftPlan } from "./lift-plan";
import {
  absenceReasons,
  contactReasons,
  cutReasons,
  dropReasons,
  fewerSetsReasons,
  manySessionsReasons,
  newLiftReasons,
  otherSpeedsReasons,
  otherwiseReasons,
  stateReasons,
  swapReasons,
  unwellReasons,
} from "./line-reasons";
import type { LineGiven, ProposedWeek } from "./proposed-line";
import { sessionWriter } from "./session-writer";
import { firstTurn, turnName, turnsByDay } from "./turn-of-week";
import { turnReasons } from "./turn-reasons";
import { gymPlates } from "./usual-plates";
import { weekFrame } from "./week-frame";

/** One week's sets for one athlete from the rows as they stand, with every reason. */
export function proposeWeek(given: LineGiven): ProposedWeek {
  const { athlete, name, state, rows, monday, asOf, change = {} } = given;
  const { rules } = rows;
  const frame = weekFrame(given);
  const { races, kind, step, sessionsAWeek, days, firstDay, mayOn, cutOn } = frame;
  const who = mayOn(firstDay);
  const exercise = step?.exercise ?? "";
  const base = { athlete: name, who, kind, exercise, sessionsAWeek, days, step };
  const absent = absenceReasons(state, monday);
  const { weekdays = [] } = step ?? frame.alone ?? {};
  const toldDays = dayReasons(days, frame.wanted, weekdays.slice(0, mostSessions));
  const nothing = (not: NonNullable<ProposedWeek["not"]>): ProposedWeek => ({
    ...base,
    not,
    sessions: [],
    reasons: [
      { code: not, facts: {} },
      ...(not === "out" ? [] : [...absent, ...unwellReasons(state)]),
      ...toldDays,
    ],
    odd: not !== "out",
  });
  if (who.not !== null) return nothing(who.not);
  if (days !== null && frame.alone !== null) {
    const reasons = jumpsAloneReasons(given, { ...frame, alone: frame.alone });
    return {
      ...nothing(days.best.length === 0 ? "no-day" : "no-sets-yet"),
      reasons: [...absent, ...reasons, ...toldDays],
      odd: absent.length > 0 || state.word === "slipping" || isEased(who, state),
    };
  }
  if (step === null || days === null) return nothing("no-sets-yet");
  if (days.best.length === 0 && change.day === undefined) return nothing("no-day");

  const plates = gymPlates(rows.plates, given.unit);
  const { mayLift } = frame;
  const marathonDays = daysSinceMarathon(firstDay, races, rules);
  const chosen = chosenDays(days, change.day, frame.wanted);
  const daysSince = (lastDay: Day) => gapBefore({ lastDay, firstDay, monday, asOf, mayLift });
  const offBar = daysSince(step.trainedDay);
  const racing = chosen.some(({ day }) => cutOn(day));
  const lifts: LiftsGiven = {
    state,
    rows,
    mayDo: who.mayDo,
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
    marathonDays,
    usualSize: stepSizeOf(athlete, rules, gymStepKg(plates)),
    plates,
  };
  const own = liftPlan(step, lifts);
  const plans = [own, ...step.others.map((one) => liftPlan(one, lifts, asLastTime))];
  const turns = turnsByDay(chosen, step, change.day);
  const planOn = (day: Day) => plans.find((plan) => plan.step === turns.get(day)!.step)!;
  const first = firstTurn([...turns.values()], step);
  // What is set by hand without a name is of the week's first turn.
  const turnOf = (plan: LiftPlan, onLadder: boolean) =>
    plan.step === first.step && onLadder === first.onLadder
      ? ""
      : turnName({ step: plan.step, onLadder });
  const inWeek = plans.filter((plan) => chosen.some(({ day }) => planOn(day) === plan));
  // Who comes back lands less, too, not only lifts less.
  const eased = own.easedNow || isStrained(state);
  const writers = new Map(
    inWeek.map((plan) => [
      plan,
      sessionWriter(plan, {
        ...given,
        races,
        cutOn,
        eased,
        mayOn,
        setsOn: frame.setsOn,
        needsRack: plan === own || isSquat(plan.step.exercise),
        turnOf: (onLadder) => turnOf(plan, onLadder),
        ladderDays: chosen.flatMap(({ day }) =>
          planOn(day) === plan && turns.get(day)!.onLadder ? [day] : [],
        ),
      }),
    ]),
  );
  const sessions = chosen.map((one) => writers.get(planOn(one.day))!(one));
  const dropped = inWeek.flatMap((plan) => plan.dropped);
  const cut = sessions.find(({ day }) => cutOn(day));
  const isOwn = sessions.map(({ day, onLadder }) => planOn(day) === own && onLadder);
  const ownKg = handSet(change, turnOf(own, true)).loadKg ?? own.planned.loadKg;
  const reasons = [
    ...absent,
    ...swapReasons(sessions, who),
    ...(isOwn.includes(true) ||
    (inWeek[0] === own && own.easedNow && own.planned.loadKg !== step.loadKg)
      ? [...own.planned.reasons, ...own.bar(ownKg).reasons]
      : []),
    ...sessions.flatMap((session, at) =>
      isOwn[at] ? [] : turnReasons(session, planOn(session.day), handSet(change, session.turn)),
    ),
    ...own.dropped,
    ...own.readAs,
    ...(change.block === undefined && isOwn.includes(true) ? fewerSetsReasons(own) : []),
    ...newLiftReasons(step),
    ...(cut
      ? cutReasons(
          planOn(cut.day).setsOf(cut.block, handSet(change, cut.turn)),
          cut,
          kind === "race week" ? null : raceNear(cut.day, races),
        )
      : []),
    ...((eased || racing) && change.contacts === undefined ? contactReasons(sessions) : []),
    ...otherwiseReasons(sessions),
    ...otherSpeedsReasons(own.state, sessions),
    ...toldDays,
    ...manySessionsReasons(sessionsAWeek),
    ...dropReasons(sessions),
    ...stateReasons(state, who),
  ];
  return {
    ...base,
    not: null,
    sessions,
    reasons,
    odd: absent.length + dropped.length > 0 || inWeek.some((plan) => isReadFirst(state, plan, who)),
  };
}

const isEased = (who: WhoMay, state: AthleteState) => who.mayDo !== "full" || isStrained(state);

/** Worth reading before writing. */
const isReadFirst = (state: AthleteState, { step, rest }: LiftPlan, who: WhoMay): boolean =>
  state.word === "slipping" ||
  isEased(who, state) ||
  rest !== null ||
  step.movedWell === false ||
  step.changed?.isLeftOut === false ||
  // Where nobody's movement is written down, it is said once for all.
  (step.movedWell === null && state.movementKept);
