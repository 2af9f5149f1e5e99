import type { Day } from "../../calendar/day";
import { gapBetweenSeasons } from "../../series/season-start";

/**
 * A value's readings before this season, in runs that no gap between seasons cuts. Their level says nothing about
 * this season, but how they wobble is the athlete's own.
 *
 * @param readings in order of day
 */
export function earlierRuns(
  readings: Iterable<{ readonly day: Day; readonly percent: number }>,
): readonly (readonly number[])[] {
  const runs: number[][] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const { day, percent } of readings) {
    const run = runs[runs.length - 1];
    if (run && day - last <= gapBetweenSeasons) run.push(percent);
    else runs.push([percent]);
    last = day;
  }
  return runs;
}
