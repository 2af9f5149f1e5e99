import type { Day } from "../calendar/day";
import type { Athlete } from "../record/athlete";

/** The days of a season's own baseline. */
export type BaselineWindow = {
  /** Sessions before this day are not of the season. */
  readonly from: Day;
  /** Last day of the baseline. */
  readonly to: Day;
  /** The athlete's own dates, from the Athletes table. */
  readonly own: boolean;
};

/**
 * The athlete's own baseline dates when the Athletes table gives them, otherwise the first sessions
 * from the season's start. With only a first day given, the baseline is the first sessions from it;
 * with only a last day, every session from the season's start up to it.
 *
 * @param days days with a session, in order
 */
export function baselineWindow(
  days: readonly Day[],
  seasonStart: Day,
  sessions: number,
  athlete: Athlete | undefined,
): BaselineWindow {
  const ownFrom = athlete?.baselineFrom ?? null;
  const ownTo = athlete?.baselineTo ?? null;
  const from = ownFrom ?? Math.min(seasonStart, ownTo ?? seasonStart);
  if (ownTo !== null) return { from, to: ownTo, own: true };
  const first = days.filter((day) => day >= from).slice(0, sessions);
  return { from, to: first[first.length - 1] ?? from, own: ownFrom !== null };
}
