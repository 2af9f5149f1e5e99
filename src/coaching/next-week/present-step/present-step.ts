import { type Block, isSame, rotation } from "../../blocks/block";
import type { SessionLoad } from "../../blocks/way-back";
import { type Day, mondayOf } from "../../calendar/day";
import type { Athlete } from "../../record/athlete";
import { exerciseKey } from "../../record/exercise-key";
import type { LiftingSet } from "../../record/lifting-set";
import { nameKey } from "../../record/name-key";
import { usualSessionsAWeek } from "../../season/usual-sessions-a-week";
import { inOrder } from "../../series/in-order";
import type { LineGiven } from "../proposed-line";
import { type BarInUse, barInUse } from "./bar-in-use";
import { blockShown } from "./block-shown";
import { byUse } from "./by-use";
import { heavierSeen } from "./heavier-seen";
import { type InTurn, inTurnAsPlanned } from "./in-turn";
import {
  blockOf,
  daysOff,
  type LiftSession,
  liftSessions,
  repsDone,
  setsAtLoad,
  setsRisen,
  volumeDone,
} from "./lift-session";
import { type LiftDay, latestDays, legDays, liftDays, liftsInTurn, mainLift } from "./main-lift";
import { plannedLoads } from "./planned-loads";
import type { AskedLess, LessOn } from "./reason-under-plan";
import { sessionsOfPlan } from "./sessions-of-plan";
import { type SlowRun, slowRun } from "./slow-run";
import { type UsualMarker, usualMarker } from "./usual-marker";
import { usualMinute, usualWeekdays } from "./usual-times";

/** Where an athlete stands on the rotation, from the rows. */
export type PresentStep = BarInUse &
  UsualMarker & {
    readonly exercise: string;
    readonly block: Block;
    /** Planned at the last session, kg: of a day that asked for less than its plan the load from before it. */
    readonly loadKg: number;
    /** Lifted in the first work set of the last session, kg: under the planned load on such a day. */
    readonly liftedKg: number;
    /**
     * The last session's sets rose to a load, those before it left out as warm-ups, or counted as it was
     * lifted once; or they fell from the first one's, as they always do. Null where neither was so.
     */
    readonly changed: { readonly toKg: number; readonly isLeftOut: boolean } | null;
    /** Why less was lifted on that day than planned; null where it was not. */
    readonly less: LessOn | null;
    /** Weeks of days on none of which the plan was kept to; null without. */
    readonly slowRun: SlowRun | null;
    /** The load before it, kg, where the last week's sessions were lighter and no row says why; null otherwise. */
    readonly droppedFromKg: number | null;
    readonly lastDay: Day;
    /** That day had another session of the lift, a lighter one, which is left out. */
    readonly isHeaviest: boolean;
    /** Last day with a main lift, this one or another. */
    readonly trainedDay: Day;
    /** Last day with a lift of the legs, whatever it was; no earlier than that one. */
    readonly legDay: Day;
    /** Key of the lift before this one, where it took its place within the latest week; null otherwise. */
    readonly liftBefore: string | null;
    /** Other sessions of the lift, done in turn with these, in order; their sets are no part of the ladder. */
    readonly inTurn: readonly InTurn[];
    /** Where the athlete stands on other lifts done in turn with this one. */
    readonly others: readonly PresentStep[];
    /** Days off from the last session to the last day with a main lift; 0 where they are the same. */
    readonly gapSince: number;
    /** Sets and repetitions of the session that shows the block, as they were done. */
    readonly done: Block;
    /** As written in the Athletes table or, where nothing is, as often as the athlete came. */
    readonly sessionsAWeek: number;
    /** Weeks with a session at this block and load, the latest run of them. */
    readonly weeksHeld: number;
    /** No other block than the rotation's first was done this season. */
    readonly firstTurn: boolean;
    /** Of the last session: every set moved well, one did not, or it was not recorded. */
    readonly movedWell: boolean | null;
    /** Every set and repetition done; null when repetitions were not recorded. */
    readonly volumeDone: boolean | null;
    /** Sets done at its load in that session, and those of its block on that day. */
    readonly sets: { readonly done: number; readonly of: number };
    /** No more sets than this are planned, though the rotation has more. */
    readonly mostSets: number;
    /** Least repetitions in reserve written down in that session; null when none were. */
    readonly reserveSeen: number | null;
    /** The same of the last session at its planned load, and that load, kg. */
    readonly plannedReserve: number | null;
    readonly reserveKg: number;
    /** Most that heavier sessions of late say of the strength by the repetitions they left, kg; null where none counts. */
    readonly heavierSeenKg: number | null;
    /** Usual gym weekdays, most used first, and the usual start in minutes after midnight. */
    readonly weekdays: readonly number[];
    readonly minute: number;
    /** Every session of the lift with its planned load, in order of day. */
    readonly sessions: readonly SessionLoad[];
  };

const weekLong = 7;

/** What an athlete's step is read from. */
export type StepRows = {
  readonly sets: readonly LiftingSet[];
  readonly athlete: string;
  readonly asOf: Day;
  /** Sets of a block that a day's week plans. */
  readonly plannedSets: (block: Block, day: Day) => number;
  /** Days that count as this season, back from `asOf`. */
  readonly seasonDays: number;
  /** The bar where no row says which, kg. */
  readonly barKg: number;
  /** The athlete's row of the Athletes table, for the sessions a week written there. */
  readonly about: Pick<Athlete, "sessionsAWeek"> | null;
  /** Why a day asked for less than its plan, from the lift's sets on it. */
  readonly lessOn: (session: readonly LiftingSet[], day: Day) => AskedLess;
  /** The load a slow session's card must have begun from, kg, up to one; null where none is known. */
  readonly plannedFor: (session: LiftSession, atMostKg: number) => number | null;
  /** What the week as written asked for on a day. */
  readonly asked?: LineGiven["asked"];
  /** A day of a week from which no race took any: the athlete came when it suits. */
  readonly isOwnDay?: (day: Day) => boolean;
};

/**
 * The step an athlete stands on, from the work sets of the lift the athlete is on, with those of lifts
 * done in turn with it; null without any.
 */
export function presentStep(given: StepRows): PresentStep | null {
  const { asOf, sets, athlete } = given;
  const key = nameKey(athlete);
  const own = sets.filter((set) => set.day <= asOf && nameKey(set.athlete) === key);
  const trained = liftDays(own);
  const main = mainLift(trained);
  if (main === null) return null;
  const gymDays = trained.map(({ day }) => day);
  const days = { trained, gymDays, legs: legDays(own, gymDays) };
  const stepOf = (lift: string) => stepOfLift(setsOfLift(own, lift), days, given);
  return { ...stepOf(main), others: liftsInTurn(trained, main).map(stepOf) };
}

/** All sets of a lift, in order. */
const setsOfLift = (own: readonly LiftingSet[], lift: string) =>
  inOrder(
    own.filter((set) => exerciseKey(set.exercise) === lift),
    (set) => set,
  );

/** An athlete's days in the gym, in order. */
type TrainingDays = {
  /** With a main lift, and which. */
  readonly trained: readonly LiftDay[];
  readonly gymDays: readonly Day[];
  /** Those and days with another lift of the legs. */
  readonly legs: readonly Day[];
};

/**
 * The step of one lift.
 *
 * @param lift its sets, in order, on one day at least a work set with a load
 */
function stepOfLift(
  lift: readonly LiftingSet[],
  { trained, gymDays, legs }: TrainingDays,
  given: StepRows,
): PresentStep {
  const { asOf, plannedSets } = given;
  const { planned: sessions, others } = sessionsOfPlan(liftSessions(lift, gymDays, legs));
  const last = sessions[sessions.length - 1]!;
  const days = sessions.map(({ day }) => day);
  const trainedDay = gymDays[gymDays.length - 1]!;
  const sessionsAWeek = usualSessionsAWeek(given.about, gymDays);
  const plansOf = (ones: readonly LiftSession[]) =>
    plannedLoads(ones, sessionsAWeek, {
      ...given,
      lessOn: ({ all, day }) => given.lessOn(all, day),
      asked: ({ day }) => given.asked?.(day),
    });
  const plans = plansOf(sessions);
  const { loadKg, liftedKg, less } = plans[plans.length - 1]!;
  let whole = sessions.length - 1;
  while (plans[whole]!.less !== null) whole--;
  const { block, like, since, isFew, setsAsked, mostSets } = blockShown(
    sessions,
    plans,
    plannedSets,
    sessionsAWeek,
  );
  const of = Math.min(
    setsAsked(plannedSets(block, last.day)),
    given.asked?.(last.day)?.sets ?? Number.POSITIVE_INFINITY,
  );
  const plannedReserve = reserveFor(last.reps, sessions[whole]!);
  const leastLeft = plannedReserve && Math.min(plannedReserve, last.reserve ?? plannedReserve);
  return {
    exercise: last.work[0]!.exercise,
    block,
    loadKg,
    liftedKg,
    // A day that was taken down is told as such, and what it was taken down to may be the plan.
    changed: less === null && loadKg === last.loadKg ? changedOf(last) : null,
    less,
    slowRun: slowRun(plans, days),
    droppedFromKg:
      plans.find(
        ({ droppedFromKg: from }, at) => (from ?? 0) > loadKg && days[at]! > last.day - weekLong,
      )?.droppedFromKg ?? null,
    lastDay: last.day,
    isHeaviest: last.isHeaviest,
    trainedDay,
    legDay: legs[legs.length - 1]!,
    gapSince: daysOff(last.day, trainedDay, gymDays, legs),
    done: { sets: like.sets, reps: Math.max(...like.work.map(repsDone)) },
    liftBefore: liftBefore(trained, days[0]!),
    inTurn: inTurnAsPlanned(others, plansOf(others), plannedSets),
    others: [],
    sessionsAWeek,
    weeksHeld: new Set(days.slice(since).map(mondayOf)).size,
    firstTurn: sessions
      .filter(({ day }, at) => day > asOf - given.seasonDays && !isFew(at))
      .every((session) => isSame(blockOf(session), rotation[0]!)),
    movedWell: last.movedWell,
    volumeDone: volumeDone(last, of, block.reps),
    sets: { done: setsAtLoad(last), of },
    mostSets,
    reserveSeen: last.reserve,
    plannedReserve,
    reserveKg: plans[whole]!.loadKg,
    heavierSeenKg: heavierSeen(sessions, loadKg, leastLeft),
    ...usualMarker(lift, sessions),
    ...barInUse(lift, given.barKg),
    weekdays: usualWeekdays(gymDays, given.isOwnDay),
    minute: byUse(lift.slice(-40).flatMap(({ minute }) => minute ?? []))[0] ?? usualMinute,
    sessions: sessions.map(({ day, gap }, at) => ({ day, gap, loadKg: plans[at]!.loadKg })),
  };
}

/** Repetitions a session left in reserve, counted from as many as are done now; null when none were written down. */
const reserveFor = (reps: number, { reps: done, reserve }: LiftSession) =>
  reserve === null ? null : reserve + done - reps;

/** The lift before one that took its place within the latest week; null otherwise. */
function liftBefore(days: readonly LiftDay[], firstDay: Day): string | null {
  const isNew = days[days.length - 1]!.day - firstDay < latestDays;
  return isNew ? mainLift(days.filter(({ day }) => day < firstDay)) : null;
}

function changedOf({ work, loadKg, lastKg, isBuiltUp }: LiftSession): PresentStep["changed"] {
  const top = work[setsRisen(work)]!.loadKg!;
  if (isBuiltUp || top > loadKg) return { toKg: top, isLeftOut: isBuiltUp };
  return lastKg < loadKg ? { toKg: lastKg, isLeftOut: false } : null;
}
