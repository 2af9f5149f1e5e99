import { accept, type Outcome, refuse } from "../../outcome";

/**
 * Share of the best single that can be lifted 1, 2 … 10 times, as the handbooks' training-load chart
 * prints it. People differ: more repetitions are common at moderate loads (Nuzzo, Pinto, Nosaka &
 * Steele 2024, Sports Med 54:303–321), so the chart guards on the cautious side.
 */
export const chartShares: readonly number[] = [
  1, 0.95, 0.93, 0.9, 0.87, 0.85, 0.83, 0.8, 0.77, 0.75,
];

/** The chart's last row. Past ten repetitions no estimate is asked of it (Reynolds et al. 2006). */
export const chartReps = chartShares.length;

/**
 * Share of the best single for a number of repetitions to the limit.
 * Refuses `reps-not-charted` outside 1–10.
 */
export function chartShare(reps: number): Outcome<number> {
  const share = Number.isInteger(reps) ? chartShares[reps - 1] : undefined;
  return share === undefined
    ? refuse("reps-not-charted", { reps, most: chartReps })
    : accept(share);
}

/**
 * Most repetitions at a share of the best single, a real number: straight lines between the chart's
 * rows; 0 above the best single. Below the chart's last row Epley's line r = 30·(1/share − 1)
 * (Epley 1985) goes on, never under the chart's own ten.
 */
export function mostReps(share: number): number {
  if (share > 1) return 0;
  const last = chartShares[chartReps - 1]!;
  if (share <= last) return Math.max(chartReps, 30 * (1 / share - 1));
  for (let reps = 1; reps < chartReps; reps++) {
    const high = chartShares[reps - 1]!;
    const low = chartShares[reps]!;
    if (share >= low) return reps + (high - share) / (high - low);
  }
  return chartReps;
}

/**
 * Best single from a set to the limit, kg: load·(1 + reps/30) (Epley 1985); one repetition is the
 * single itself, where the printed equation would add 3 %.
 * Refuses `reps-not-charted` outside 1–10 and `load-impossible`.
 */
export function singleFromSet(loadKg: number, reps: number): Outcome<number> {
  if (!(loadKg > 0)) return refuse("load-impossible", { loadKg });
  if (!Number.isInteger(reps) || reps < 1 || reps > chartReps) {
    return refuse("reps-not-charted", { reps, most: chartReps });
  }
  return accept(reps === 1 ? loadKg : loadKg * (1 + reps / 30));
}
