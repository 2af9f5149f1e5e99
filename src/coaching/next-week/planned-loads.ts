import { leastReserve } from "../blocks/next-block";
import { restartAfter } from "../blocks/restart";
import type { Day } from "../calendar/day";
import { mostSessions } from "../season/usual-sessions-a-week";
import {
  type AskedLess,
  type LessOn,
  type LiftedDay,
  lightDays,
  reasonUnderPlan,
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
 * @param lessOn why a session's day asked for less
 * @param plannedFor load a slow session's card must have begun from, up to one; null where none is known
 */
export function plannedLoads<Session extends LiftedDay>(
  sessions: readonly Session[],
  sessionsAWeek: number,
  lessOn: (session: Session) => AskedLess,
  plannedFor: (session: Session, atMostKg: number) => number | null = () => null,
): readonly PlannedLoad[] {
  const planned: PlannedLoad[] = [];
  /** Most sets at the present plan, and the first day of a lighter week under it. */
  let fullSets = 0;
  let lightFrom: Day | null = null;
  const down = takenDown(sessions);
  const days = sessions.map(({ day }) => day);
  const isAfterRun = (before: readonly PlannedLoad[]) => slowRun(before, days) !== null;
  /** The last session at its plan. */
  let whole = sessions[0]!;
  for (const [at, session] of sessions.entries()) {
    const { gap, loadKg, sets, reps, movedWell } = session;
    // The first is its own plan.
    const before = sessions[at - 1] ?? session;
    const lastKg = planned[at - 1]?.loadKg ?? loadKg;
    const begunKg = begunAt(sessions, at, lastKg, { lessOn, plannedFor });
    const planKg = begunKg ?? lastKg;
    const isUnder = loadKg < planKg && (begunKg !== null || reps <= before.reps);
    const isDown = down[at]!;
    const isLess = isUnder || isDown;
    const asked = isLess ? lessOn(session) : null;
    const rest = restartAfter(gap, sessionsAWeek);
    const isJudged = isLess && (rest === null || (asked === "eased" && !rest.halfSets));
    const after = sessions[at + 1];
    const found = isJudged
      ? reasonUnderPlan({
          session,
          asked,
          planKg,
          isUnder,
          isDown,
          after,
          whole,
          fullSets,
          lightFrom,
        })
      : null;
    const less = found === "may not" || movedWell === false ? null : found;
    const isUnexplained =
      isJudged && found === null && !isExplained(before, gap) && !isAfterRun(planned);
    if (less === "light") lightFrom ??= session.day;
    if (less === null) {
      fullSets = loadKg === planKg && reps === before.reps ? Math.max(fullSets, sets) : sets;
      lightFrom = null;
      whole = session;
    }
    const liftedKg = isDown ? session.lastKg : loadKg;
    planned.push({
      loadKg: less === null ? liftedKg : isUnder ? planKg : loadKg,
      liftedKg,
      less,
      droppedFromKg: isUnexplained ? planKg : null,
    });
  }
  return planned;
}

/** What few repetitions in reserve or missed ones explain, or another rhythm would have taken for time off, is not asked about. */
const isExplained = ({ missed, reserve }: LiftedDay, gap: number) =>
  missed ||
  (reserve !== null && reserve < leastReserve) ||
  restartAfter(gap, mostSessions) !== null;

/** The load a new rotation began at where its first session was a slow day, kg; null otherwise. */
function begunAt<Session extends LiftedDay>(
  sessions: readonly Session[],
  at: number,
  lastKg: number,
  given: {
    readonly lessOn: (session: Session) => AskedLess;
    readonly plannedFor: (session: Session, atMostKg: number) => number | null;
  },
): number | null {
  const [before, session, after] = [sessions[at - 1], sessions[at]!, sessions[at + 1]];
  const { day, loadKg, reps } = session;
  if (before === undefined || reps <= before.reps || given.lessOn(session) !== "slow") return null;
  const again = after?.reps === reps && after.day - day <= lightDays ? after.loadKg : 0;
  return again > loadKg ? Math.min(again, lastKg) : given.plannedFor(session, lastKg);
}
