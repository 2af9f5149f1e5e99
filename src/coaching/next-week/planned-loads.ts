import { leastReserve } from "../blocks/next-block";
import { restartAfter } from "../blocks/restart";
import type { Day } from "../calendar/day";
import { mostSessions } from "../season/usual-sessions-a-week";
import { harderThanPlan } from "./harder-than-plan";
import type { LiftSession } from "./lift-session";
import { takenDown } from "./taken-down";

/** What a session's load is judged by. */
export type LiftedDay = Omit<LiftSession, "all" | "work" | "isBuiltUp">;

/**
 * Why a day asked for less than its plan: a slow day, eased for or after a race, a lighter week, as noted
 * beside a set, harder than the plan though lighter, or taken down within the day.
 */
export type LessOn = "slow" | "eased" | "light" | "noted" | "heavy" | "down";
/** The same as the rows of a day tell it by themselves; "may not" where what the athlete may do was limited. */
export type AskedLess = Exclude<LessOn, "light" | "heavy" | "down"> | "may not" | null;

/** The load a session stands for on the ladder, and why less was lifted; null where it was not. */
export type PlannedLoad = {
  readonly loadKg: number;
  /** Lifted in the first work set, or in the last where the day was taken down from it, kg. */
  readonly liftedKg: number;
  readonly less: LessOn | null;
  /** The load before it, kg, where a lighter one has no reason in the rows; null otherwise. */
  readonly droppedFromKg: number | null;
};

/** A lighter week is one (common practice, no source). */
const lightDays = 7;

/**
 * The load each session stands for: what was lifted, but on a day that asked for less than its plan
 * the load from before it. Were such a day's load the next plan, a season of ordinary slow days and
 * lighter weeks would take the bar down step by step while the athlete holds. A first set at its plan
 * with lighter ones after it is such a day. A new rotation begun on a
 * slow day stands for what its next session has within the week, or its card must have begun from.
 * Lighter and with fewer sets for no more than a week is a lighter week. After time off, where it moved poorly, and where a
 * new rotation began with more repetitions, the lighter load is the plan itself; the rest after a race
 * is no time off.
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
  /** The last session at its plan. */
  let whole = sessions[0];
  for (const [at, session] of sessions.entries()) {
    const { day, gap, loadKg, sets, reps, movedWell } = session;
    // The first is its own plan.
    const before = sessions[at - 1] ?? session;
    const last = planned[at - 1]?.loadKg ?? loadKg;
    const begun = begunAt(sessions, at, last, { sessionsAWeek, lessOn, plannedFor });
    const plan = begun ?? last;
    const isUnder = loadKg < plan && (begun !== null || reps <= before.reps);
    const liftedKg = down[at] ? session.lastKg : loadKg;
    let less: LessOn | null = null;
    let droppedFromKg: number | null = null;
    if (isUnder || down[at]) {
      const why = lessOn(session);
      const rest = restartAfter(gap, sessionsAWeek);
      if (rest === null || (why === "eased" && !rest.halfSets)) {
        const isLight = isUnder && sets < fullSets && day - (lightFrom ?? day) < lightDays;
        const after = sessions[at + 1];
        // Back at its plan within the week, it was of that day, whoever judged it, and by what.
        const returned =
          isUnder && after !== undefined && after.loadKg >= plan && after.day - day <= lightDays;
        const seen =
          isLight && (why === null || why === "noted")
            ? "light"
            : (why ??
              (returned ? "slow" : isUnder && harderThanPlan(session, whole!) ? "heavy" : null));
        const found = seen ?? (down[at] ? "down" : null);
        less = found === "may not" || movedWell === false ? null : found;
        // What few repetitions in reserve or missed ones explain, or another rhythm would have taken for time off, is not asked about.
        const hard = before.missed || (before.reserve !== null && before.reserve < leastReserve);
        const asked = found === null && !hard && restartAfter(gap, mostSessions) === null;
        if (asked) droppedFromKg = plan;
      }
    }
    if (less === "light") lightFrom ??= day;
    if (less === null) {
      fullSets = loadKg === plan && reps === before.reps ? Math.max(fullSets, sets) : sets;
      lightFrom = null;
      whole = session;
    }
    const kg = less === null ? liftedKg : isUnder ? plan : loadKg;
    planned.push({ loadKg: kg, liftedKg, less, droppedFromKg });
  }
  return planned;
}

/** The load a new rotation began at where its first session was a slow day, kg; null otherwise. */
function begunAt<Session extends LiftedDay>(
  sessions: readonly Session[],
  at: number,
  lastKg: number,
  given: {
    readonly sessionsAWeek: number;
    readonly lessOn: (session: Session) => AskedLess;
    readonly plannedFor: (session: Session, atMostKg: number) => number | null;
  },
): number | null {
  const [before, session, after] = [sessions[at - 1], sessions[at]!, sessions[at + 1]];
  const { day, gap, loadKg, reps } = session;
  if (before === undefined || reps <= before.reps || loadKg >= lastKg) return null;
  if (restartAfter(gap, given.sessionsAWeek) !== null || given.lessOn(session) !== "slow") {
    return null;
  }
  const again = after?.reps === reps && after.day - day <= lightDays ? after.loadKg : 0;
  return again > loadKg ? Math.min(again, lastKg) : given.plannedFor(session, lastKg);
}
