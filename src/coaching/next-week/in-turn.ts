import { type Day, weekdayOfDay } from "../calendar/day";
import { type LiftSession, repsDone } from "./lift-session";

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

/** What an athlete does in turn with the sets that are planned: another lift, or another session of it. */
export type InTurn = {
  readonly exercise: string;
  readonly sets: number;
  readonly reps: number;
  /** First work set of its last session, kg. */
  readonly loadKg: number;
  readonly lastDay: Day;
  /** Weekdays it was done on of late, 0 Monday … 6 Sunday. */
  readonly weekdays: readonly number[];
};

/** The last of its sessions, and when it is done. */
export function inTurnOf(sessions: readonly LiftSession[]): InTurn {
  const { day, work, sets, loadKg } = sessions[sessions.length - 1]!;
  return {
    exercise: work[0]!.exercise,
    sets,
    reps: Math.max(...work.map(repsDone)),
    loadKg,
    lastDay: day,
    weekdays: lateWeekdays(sessions),
  };
}

/** Weekdays of the sessions of the last six weeks. */
export function lateWeekdays(sessions: readonly { readonly day: Day }[]): readonly number[] {
  const last = sessions[sessions.length - 1]!.day;
  return sessions.flatMap(({ day }) => (day > last - weekdayDays ? [weekdayOfDay(day)] : []));
}
