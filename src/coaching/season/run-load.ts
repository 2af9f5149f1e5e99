import { accept, type Outcome, refuse } from "../../outcome";
import { mean, standardDeviation } from "../../statistics/spread";
import type { Day } from "../calendar/day";
import type { Run } from "../record/run";

/**
 * Load of one run: exertion (0–10) × minutes (Foster et al. 2001, J Strength Cond Res 15(1):109–115).
 * Refuses `exertion-impossible` outside 0–10 and `minutes-impossible` (not in 0–1440, nor 0).
 */
export function runLoad(exertion: number, minutes: number): Outcome<number> {
  if (!(exertion >= 0 && exertion <= 10)) return refuse("exertion-impossible", { exertion });
  if (!(minutes > 0 && minutes <= 1440)) return refuse("minutes-impossible", { minutes });
  return accept(exertion * minutes);
}

/** Seven days' load: each day's, their sum, and how alike the days were. */
export type WeekLoad = {
  /** From six days before the last day to the last; a rest day is 0. */
  readonly days: readonly number[];
  readonly total: number;
  /** Mean of the seven days / their SD (n − 1); null where all are equal, as without a run. */
  readonly monotony: number | null;
  /** Total × monotony. */
  readonly strain: number | null;
};

/**
 * Load of the seven days that end on a day, context only: no ratio of recent to past load is made.
 * Monotony and strain after Foster 1998; whether its SD divides
 * by n or n − 1 is not settled, here n − 1. Rest days count as 0: dropping them would double the
 * figure of an ordinary week.
 *
 * @param runs one athlete's; a run outside the seven days is not read
 * @returns Refuses `run-not-rated` when a run in the week lacks exertion or minutes (a sum without it
 * would be too low), and as `runLoad`, with the `row`.
 */
export function weekLoad(runs: readonly Run[], lastDay: Day): Outcome<WeekLoad> {
  const days = Array<number>(7).fill(0);
  for (const run of runs) {
    const place = run.day - lastDay + 6;
    if (place < 0 || place > 6) continue;
    if (run.exertion === null || run.minutes === null) {
      return refuse("run-not-rated", { row: run.row, day: run.day });
    }
    const load = runLoad(run.exertion, run.minutes);
    if (!load.ok) return refuse(load.refusal.code, { ...load.refusal.facts, row: run.row });
    days[place]! += load.value;
  }
  if (days.some((load) => load !== days[0])) return likeness(days);
  return accept({ days, total: 7 * days[0]!, monotony: null, strain: null });
}

/**
 * Total, monotony and strain of seven days' loads, in the loads' unit. Refuses `load-unvarying` when
 * all are equal.
 */
export function likeness(
  days: readonly number[],
): Outcome<WeekLoad & { readonly monotony: number; readonly strain: number }> {
  const middle = mean(days);
  if (!middle.ok) return middle;
  const spread = standardDeviation(days);
  if (!spread.ok) return spread;
  if (spread.value === 0) return refuse("load-unvarying", { days: days.length });
  const total = days.reduce((sum, load) => sum + load, 0);
  const monotony = middle.value / spread.value;
  return accept({ days, total, monotony, strain: total * monotony });
}
