import type { WhoMay } from "../availability/who-may";
import type { Block } from "../blocks/block";
import { fineStep, gymStepKg } from "../blocks/gym-step";
import { halfSetsOf, type Restart, restartAfter } from "../blocks/restart";
import { stepSizeOf } from "../blocks/step-size";
import type { Day } from "../calendar/day";
import { daysSinceMarathon, raceNear } from "../season/race-hours";
import { mostSessions } from "../season/usual-sessions-a-week";
import type { AthleteState } from "./athlete-state";
import { barLoad } from "./bar-load";
import { chosenDays } from "./chosen-days";
import { dayReasons } from "./day-reasons";
import { easedTurns } from "./eased-turns";
import { gapBefore } from "./gap-before";
import { isStrained } from "./is-strained";
import { jumpsAloneReasons } from "./jumps-alone-reasons";
import {
  absenceReasons,
  changingReasons,
  contactReasons,
  cutReasons,
  droppedReasons,
  dropReasons,
  inTurnReasons,
  manySessionsReasons,
  newBarReasons,
  newLiftReasons,
  otherwiseReasons,
  stateReasons,
  swapReasons,
  unwellReasons,
} from "./line-reasons";
import { plannedStep } from "./planned-step";
import type { PresentStep } from "./present-step";
import { sessionProposer } from "./propose-session";
import type { LineGiven, ProposedWeek } from "./proposed-line";
import { guardAgainst, guardOf, toldGuardOf } from "./reserve-guard";
import { sessionSteps } from "./session-steps";
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
  const usualSize = stepSizeOf(athlete, rules, gymStepKg(plates));
  const size = fineStep(usualSize, step.loadKg, plates);
  const guardKg = guardOf(state, step);
  const { mayLift } = frame;
  const gap = gapBefore({ lastDay: step.trainedDay, firstDay, monday, asOf, mayLift });
  const rest = restartAfter(gap, sessionsAWeek);
  const marathonDays = daysSinceMarathon(firstDay, races, rules);
  const easedNow = rest !== null || marathonDays !== null;
  const chosen = chosenDays(days, change.day, frame.wanted);
  const racing = chosen.some(({ day }) => cutOn(day));
  const planned = plannedStep({
    state,
    step,
    rest,
    guardKg,
    size,
    rules,
    mayDo: who.mayDo,
    monday,
    // A week in which one session prepares a race goes no step on.
    kind: racing ? "race week" : kind,
    marathonDays,
    liftedSince: step.lastDay > firstDay - (marathonDays ?? 0),
  });
  const byHand = change.block !== undefined || change.loadKg !== undefined;
  const bar = (kg: number) => barLoad(kg, step.barKg, step.loadKg, plates);
  const block = change.block ?? planned.block;
  const first = bar(change.loadKg ?? planned.loadKg);
  const bySession = rules.stepBySession >= 0.5;
  const steps = sessionSteps({
    ...size,
    block,
    loadKg: first.loadKg,
    guardKg,
    resetShare: rules.resetShare,
    count: chosen.length,
    stepEach: bySession && planned.ready && !byHand,
  });
  const halved = (sets: number) => (planned.halfSets ? halfSetsOf(sets) : sets);
  const setsOf = (one: Block, day: Day) => change.sets ?? frame.setsOn(halved(one.sets), day);
  // Who comes back lands less, too, not only lifts less.
  const eased = easedNow || isStrained(state);
  const sessionOf = sessionProposer({
    ...given,
    races,
    step,
    size,
    toldGuardKg: toldGuardOf(state, step),
    cutOn,
    eased,
    mayOn,
    setsOf,
    bar,
  });
  const turns = easedTurns(
    chosen.map(({ day }) => day),
    step,
    {
      loadKg: planned.loadKg,
      now: easedNow,
      monday,
      gradeKg: size.stepKg,
      wholeKg: usualSize.stepKg,
      sessionsAWeek,
    },
  );
  // A load or block set by hand is the lift's own: then it is lifted, whoever's turn it is.
  const inTurn = byHand && turns.size === chosen.length ? new Map<Day, never>() : turns;
  // A day set by hand comes first and may lie after the other: steps go by day.
  const before = (day: Day) => chosen.filter((one) => one.day < day && !inTurn.has(one.day)).length;
  const sessions = chosen.map((one) => {
    const turn = inTurn.get(one.day);
    return turn === undefined
      ? sessionOf(one, steps[before(one.day)]!, null)
      : sessionOf(one, turn.step, turn.otherLift);
  });
  const dropped = droppedReasons(step, guardAgainst(state, step), rest);
  const cut = sessions.find(({ day }) => cutOn(day));
  const reasons = [
    ...absent,
    ...swapReasons(sessions, who),
    // Of a week without the lift its step says nothing, but what takes load off everything does.
    ...(inTurn.size < chosen.length || (easedNow && planned.loadKg !== step.loadKg)
      ? [...planned.reasons, ...first.reasons]
      : []),
    ...inTurnReasons(sessions, inTurn),
    ...dropped,
    ...changingReasons(step),
    ...newLiftReasons(step),
    ...newBarReasons(step),
    ...(cut
      ? cutReasons(
          halved(cut.block.sets),
          cut,
          kind === "race week" ? null : raceNear(cut.day, races),
        )
      : []),
    ...((eased || racing) && change.contacts === undefined ? contactReasons(sessions) : []),
    ...otherwiseReasons(sessions),
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
    odd: absent.length + dropped.length > 0 || isReadFirst(state, step, who, rest),
  };
}

const isEased = (who: WhoMay, state: AthleteState) => who.mayDo !== "full" || isStrained(state);

/** Worth reading before writing. */
const isReadFirst = (
  state: AthleteState,
  step: PresentStep,
  who: WhoMay,
  rest: Restart | null,
): boolean =>
  state.word === "slipping" ||
  isEased(who, state) ||
  rest !== null ||
  step.movedWell === false ||
  step.changed?.isLeftOut === false ||
  // Where nobody's movement is written down, it is said once for all.
  (step.movedWell === null && state.movementKept);
