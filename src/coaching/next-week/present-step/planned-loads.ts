import { rotation } from "../../blocks/block";
import { leastReserve, mostRise } from "../../blocks/next-block";
import { hairKg } from "../../blocks/plate-loading";
import { restartAfter } from "../../blocks/restart";
import { mondayOf } from "../../calendar/day";
import { mostSessions } from "../../season/usual-sessions-a-week";
import type { AskedSession } from "../proposed-line";
import {
  type AskedLess,
  type LessOn,
  type LiftedDay,
  lightDays,
  reasonUnderPlan,
  type UnderPlan,
} from "./reason-under-plan";
import { slowRun } from "./slow-run";
import { takenDown } from "./taken-down";

/** The load a session stands for on the ladder, and why less was lifted; null where it was not. */
export type PlannedLoad = {
  readonly loadKg: number;
  /** Lifted in the first work set, or in the last where the day was taken down from it, kg. */
  readonly liftedKg: number;
  readonly less: LessOn | null;
  /** The load before it, kg, where a lighter one has no reason in the rows; null otherwise. */
  readonly droppedFromKg: number | null;
};

/** What is known of a session's day besides what was lifted on it. */
export type ToldOfDay<Session> = {
  /** Why it asked for less. */
  readonly lessOn: (session: Session) => AskedLess;
  /** The load a slow session's card must have begun from, kg, up to one; null where none is known. */
  readonly plannedFor: (session: Session, atMostKg: number) => number | null;
  /** What the week as written asked for; undefined where nothing stands. */
  readonly asked?: (session: Session) => AskedSession | undefined;
};

/** No block of the rotation has fewer: a day with fewer begins no new turn of it. */
export const fewestSets = Math.min(...rotation.map(({ sets }) => sets));

/**
 * The load each session stands for: what was lifted, but on a day that asked for less than its plan
 * the load from before it. Were such a day's load the next plan, a season of ordinary slow days and
 * lighter weeks would take the bar down step by step while the athlete holds. A first set at its plan
 * with lighter ones after it is such a day. A new rotation begun on a slow day stands for what its next
 * session has within the week, or its card must have begun from. Lighter and with fewer sets for no more
 * than a week is a lighter week. After time off, where it moved poorly, and where a new rotation began
 * with more repetitions, the lighter load is the plan itself; the rest after a race is no time off.
 *
 * @param sessions of one athlete's lift, in order
 * @param told what is known of a session's day besides
 */
export function plannedLoads<Session extends LiftedDay>(
  sessions: readonly Session[],
  sessionsAWeek: number,
  told: ToldOfDay<Session>,
): readonly PlannedLoad[] {
  const planned: PlannedLoad[] = [];
  const down = takenDown(sessions);
  const days = sessions.map(({ day }) => day);
  let plan: PlanNow = { whole: sessions[0]!, fullSets: 0, lightFrom: null };
  for (const [at, session] of sessions.entries()) {
    const { loadKg, lastKg, reps } = session;
    // The first is its own plan.
    const before = sessions[at - 1] ?? session;
    const plannedKg = planned[at - 1]?.loadKg ?? loadKg;
    const begunKg = begunAt(sessions, at, plannedKg, told);
    const planKg = begunKg ?? plannedKg;
    const isExtra = isBesides(session, sessions, told);
    const isNewTurn = reps > before.reps && session.sets >= fewestSets && !isExtra;
    const isUnder = loadKg < planKg && (begunKg !== null || !isNewTurn);
    const isDown = down[at]!;
    const { less, isUnexplained } =
      (isUnder || isDown) && !isAsProposed(session, told)
        ? lessLifted(
            {
              ...plan,
              session,
              asked: told.lessOn(session),
              planKg,
              isUnder,
              isDown,
              isExtra,
              after: sessions[at + 1],
            },
            before,
            sessionsAWeek,
          )
        : asPlanned;
    const isSamePlan = loadKg === planKg && reps === before.reps;
    plan = planAfter(plan, session, less, isSamePlan);
    const liftedKg = isDown ? lastKg : loadKg;
    const heldKg = isUnder ? planKg : loadKg;
    planned.push({
      loadKg: less === null ? liftedKg : heldKg,
      liftedKg,
      less,
      // What followed sessions slow again and again has their reason.
      droppedFromKg: isUnexplained && slowRun(planned, days) === null ? planKg : null,
    });
  }
  return planned;
}

/** The present plan: its last session done whole, most sets done at it, first day of a lighter week under it. */
type PlanNow = Pick<UnderPlan, "whole" | "fullSets" | "lightFrom">;

/** Why less was lifted than planned, and whether the rows ought to say why and do not. */
type Less = { readonly less: LessOn | null; readonly isUnexplained: boolean };

const asPlanned: Less = { less: null, isUnexplained: false };

/** Of no row of the written week, all of whose sessions were done on their days. */
function isBesides<Session extends LiftedDay>(
  session: Session,
  sessions: readonly Session[],
  { asked }: ToldOfDay<Session>,
): boolean {
  const written = asked?.(session);
  if (written === undefined || written.isOfDay) return false;
  const monday = mondayOf(session.day);
  const ofWeek = sessions.filter(({ day }) => mondayOf(day) === monday);
  return ofWeek.filter((one) => asked?.(one)?.isOfDay).length >= written.ofWeek;
}

/** Lifted in all sets as the week was proposed and written, and not for a race's sake: nothing less was done. */
const isAsProposed = <Session extends LiftedDay>(
  session: Session,
  { asked, lessOn }: ToldOfDay<Session>,
): boolean => {
  const written = asked?.(session);
  const { loadKg, lastKg } = session;
  return (
    written?.isProposed === true &&
    written.loadKg !== null &&
    Math.abs(loadKg - written.loadKg) < hairKg &&
    lastKg >= loadKg &&
    lessOn(session) !== "eased"
  );
};

/** After time off, and where it moved poorly, the lighter load is the plan itself. */
function lessLifted(under: UnderPlan, before: LiftedDay, sessionsAWeek: number): Less {
  const { gap, movedWell } = under.session;
  const rest = restartAfter(gap, sessionsAWeek);
  const isOfRace = under.asked === "eased" && !rest?.halfSets;
  if (rest !== null && !isOfRace) return asPlanned;
  const found = reasonUnderPlan(under);
  return {
    less: found === "may not" || movedWell === false ? null : found,
    isUnexplained: found === null && !isExplained(before, gap),
  };
}

/** A session for which less was asked leaves the plan as it was. */
function planAfter(
  plan: PlanNow,
  session: LiftedDay,
  less: LessOn | null,
  isSamePlan: boolean,
): PlanNow {
  if (less === "light") return { ...plan, lightFrom: plan.lightFrom ?? session.day };
  if (less !== null) return plan;
  const { sets } = session;
  const fullSets = isSamePlan ? Math.max(plan.fullSets, sets) : sets;
  return { whole: session, fullSets, lightFrom: null };
}

/** What few repetitions in reserve or missed ones explain, or another rhythm would have taken for time off, is not asked about. */
const isExplained = ({ missed, reserve }: LiftedDay, gap: number) =>
  missed ||
  (reserve !== null && reserve < leastReserve) ||
  restartAfter(gap, mostSessions) !== null;

/** The load a step or a new rotation began at where its first session was a slow day, kg; null otherwise. */
function begunAt<Session extends LiftedDay>(
  sessions: readonly Session[],
  at: number,
  lastKg: number,
  { lessOn, plannedFor, asked }: ToldOfDay<Session>,
): number | null {
  const [before, session, after] = [sessions[at - 1], sessions[at]!, sessions[at + 1]];
  const { day, loadKg, reps } = session;
  if (before === undefined || lessOn(session) !== "slow") return null;
  const askedKg = asked?.(session)?.loadKg ?? 0;
  // More than any step is of another lift, done on another's day.
  if (askedKg > lastKg && askedKg <= lastKg * (1 + mostRise)) return askedKg;
  if (reps <= before.reps) return null;
  const again = after?.reps === reps && after.day - day <= lightDays ? after.loadKg : 0;
  return again > loadKg ? Math.min(again, lastKg) : plannedFor(session, lastKg);
}
