import type { Block } from "../../blocks/block";
import { type Day, weekdayOfDay } from "../../calendar/day";
import { fewByPlan } from "./block-shown";
import { type LiftSession, repsDone } from "./lift-session";
import type { PlannedLoad } from "./planned-loads";

/** What is done in turn is told from so many sessions at most, days of time off among them. */
const turnSessions = 6;
const turnDays = 84;
/** Weekdays are those of the last six weeks. */
const weekdayDays = 42;
/** So few sessions in all are in turn when each differs from the one before it. */
const fewSessions = 3;

/** One session and what was done in it. */
export type Labelled = { readonly day: Day; readonly label: string };

/**
 * Whether sessions alternate of late: each of the last four differs from the one before it, or of the
 * last five or six all but one do, so that a new exercise, or a rotation of which each block is done
 * twice, does not.
 *
 * @param sessions in order of day
 * @param fromFirst the first sessions that stand in the rows tell it already
 */
export function alternate(sessions: readonly Labelled[], fromFirst = false): boolean {
  const isLate = ({ day }: Labelled) => day > sessions[sessions.length - 1]!.day - turnDays;
  const late = sessions.filter(isLate).slice(-turnSessions);
  const changes = (from: readonly Labelled[]) =>
    from.filter(({ label }, at) => at > 0 && label !== from[at - 1]!.label).length;
  const pairs = late.length - 1;
  if (fromFirst && sessions.length <= fewSessions) return pairs > 0 && changes(late) === pairs;
  return changes(late.slice(-4)) === 3 || changes(late) >= Math.max(3, pairs - 1);
}

/** A session done in turn with those on the ladder of its lift, as it was planned. */
export type InTurn = {
  readonly day: Day;
  readonly loadKg: number;
  readonly sets: number;
  readonly reps: number;
};

/** Sessions in turn as they were planned: the load each stands for, and where its few sets are by plan those of the one before it. */
export function inTurnAsPlanned(
  sessions: readonly LiftSession[],
  plans: readonly PlannedLoad[],
  plannedSets: (block: Block, day: Day) => number,
): readonly InTurn[] {
  const isFew = fewByPlan(sessions, plans, plannedSets);
  const planned: InTurn[] = [];
  for (const [at, { day, work, sets }] of sessions.entries()) {
    const before = isFew(at) ? planned[at - 1] : undefined;
    planned.push({
      day,
      loadKg: plans[at]!.loadKg,
      sets: before?.sets ?? sets,
      reps: Math.max(...work.map(repsDone)),
    });
  }
  return planned;
}

/** Weekdays of the sessions of the last six weeks. */
export function lateWeekdays(sessions: readonly { readonly day: Day }[]): readonly number[] {
  const last = sessions[sessions.length - 1]!.day;
  return sessions.flatMap(({ day }) => (day > last - weekdayDays ? [weekdayOfDay(day)] : []));
}
