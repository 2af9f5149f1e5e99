import type { Day } from "../calendar/day";
import type { HoldMeasure, SeasonHold } from "../hold/season-hold";
import { aroundLevel } from "./around-level";

/** One value of a session against the athlete's own level around that time. */
export type ValueOfDay = Pick<HoldMeasure, "kind" | "of"> & {
  /** Percent of the level around it; above zero is good. */
  readonly percent: number;
  /** In units of the athlete's own wobble. */
  readonly size: number;
};

/** How one session stood against the athlete's own level around that time. */
export type PerformanceDay = {
  readonly day: Day;
  /** Mean over the day's values, percent. */
  readonly percent: number;
  /** The values together, in units of the athlete's own wobble (a standard normal score). */
  readonly size: number;
  readonly values: readonly ValueOfDay[];
};

/** Correlation of two values of one day within an athlete, as the season's evidence takes it. */
const betweenValues = 0.4;

/**
 * Every session of a season against the level of the sessions around it, so that a slow slide or
 * rise of the season makes no day unusual. A size lies midway between the distance from that level
 * and the one from the nearer of the levels before and after (beside a lasting change no day is
 * unusual for it), divided by the athlete's wobble in the value and by the level's own uncertainty.
 *
 * @param hold the judged season: percents by session, wobble by value
 * @returns sessions with at least one value that has a level, in order of day
 */
export function performanceDays({ sessions, measures }: SeasonHold): readonly PerformanceDay[] {
  const distances = measures.map((_, m) =>
    aroundLevel(sessions.map(({ percents }) => percents[m] ?? null)),
  );
  return sessions.flatMap(({ day }, s) => {
    const values = measures.flatMap(({ kind, of, wobble }, m): readonly ValueOfDay[] => {
      const distance = distances[m]![s];
      if (!distance) return [];
      const spread = wobble * Math.sqrt(1 + distance.levelVariance);
      const size = (distance.away + distance.fromNearer) / 2 / spread;
      return [{ kind, of, percent: distance.away, size }];
    });
    const count = values.length;
    if (count === 0) return [];
    const sizes = values.reduce((sum, { size }) => sum + size, 0);
    return [
      {
        day,
        percent: values.reduce((sum, { percent }) => sum + percent, 0) / count,
        size: sizes / Math.sqrt(count + count * (count - 1) * betweenValues),
        values,
      },
    ];
  });
}
