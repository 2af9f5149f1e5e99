import type { Day } from "../calendar/day";

/** Readings further apart than this are not of one run: a season lies between. */
const gapDays = 56;

/**
 * A value's readings before this season, in runs without a long gap. Their level says nothing about
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
    if (run && day - last <= gapDays) run.push(percent);
    else runs.push([percent]);
    last = day;
  }
  return runs;
}
