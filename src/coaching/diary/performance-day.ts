import type { Day } from "../calendar/day";
import type { HoldMeasure, SeasonHold } from "../hold/season-hold";
import { aroundLevel } from "./around-level";

/** How one session stood against the athlete's own level around that time. */
export type PerformanceDay = {
  readonly day: Day;
  /** Mean over the day's values, percent of the level around it; above zero is good. */
  readonly percent: number;
  /**
   * The values together, in units of the athlete's own wobble: from the nearer of the levels before
   * and after, so that beside a lasting change no day is called unusual for it.
   */
  readonly size: number;
  /** The value that says most, and its own percent. */
  readonly value: Pick<HoldMeasure, "kind" | "of">;
  readonly valuePercent: number;
};

/** Correlation of two values of one day within an athlete, as the season's evidence takes it. */
const betweenValues = 0.4;

/**
 * Every session of a season against the level of the sessions around it, so that a slow slide or
 * rise of the season makes no day unusual. Each value's distance is divided by the athlete's wobble
 * in it and by the level's own uncertainty; the day's size is their sum over the spread of that sum.
 *
 * @param hold the judged season: percents by session, wobble by value
 * @returns sessions with at least one value that has a level, in order of day
 */
export function performanceDays({ sessions, measures }: SeasonHold): readonly PerformanceDay[] {
  const distances = measures.map((_, m) =>
    aroundLevel(sessions.map(({ percents }) => percents[m] ?? null)),
  );
  return sessions.flatMap(({ day }, s) => {
    const present = measures.flatMap((measure, m) => {
      const distance = distances[m]![s];
      if (!distance) return [];
      const spread = measure.wobble * Math.sqrt(1 + distance.levelVariance);
      return [{ measure, percent: distance.away, size: distance.fromNearer / spread }];
    });
    const count = present.length;
    if (count === 0) return [];
    const sum = present.reduce((total, { size }) => total + size, 0);
    const size = sum / Math.sqrt(count + count * (count - 1) * betweenValues);
    const most = present.reduce((a, b) => (b.size * sum > a.size * sum ? b : a));
    return [
      {
        day,
        percent: present.reduce((total, { percent }) => total + percent, 0) / count,
        size,
        value: { kind: most.measure.kind, of: most.measure.of },
        valuePercent: most.percent,
      },
    ];
  });
}
