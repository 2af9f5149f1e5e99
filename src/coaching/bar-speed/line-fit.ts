import type { Day } from "../calendar/day";
import type { LineSettings } from "./line-settings";
import { recencyWeight } from "./recency";
import { noSums, sumUpDay } from "./sums-of-day";

/** One set as the line reads it. */
export type LineRow = {
  readonly day: Day;
  readonly loadKg: number;
  readonly speed: number;
  /** The day's marker set or its first work set; left out of any other set. */
  readonly leads?: "marker" | "work" | null;
};

/** Speed at zero load expected before any row is read, m/s, and its SD. */
export type ZeroLoadPrior = { readonly speed: number; readonly sd: number };

/** Intercept (m/s) and slope (m/s per kg) with their variances and covariance. */
export type LineFit = {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptVariance: number;
  readonly covariance: number;
  readonly slopeVariance: number;
};

/**
 * Weighted least squares for sets nested in days: sets of one day share that day's error, so a day
 * of n sets weighs 1/(daySd² + setSd²/n) for its level, and its own spread of loads speaks for the
 * slope with setSd alone (Fuller & Battese 1974). Days lose weight by half-life. A prior on the speed
 * at zero load, which differs little between athletes while slopes in kg differ with strength, acts
 * like one more observation at zero load (Efron & Morris 1973).
 *
 * @param rows in order of day
 * @param now day the weights are taken from; null weighs all days alike
 * @returns null when the rows and the prior together cannot tell a slope
 */
export function lineFit(
  rows: readonly LineRow[],
  now: Day | null,
  prior: ZeroLoadPrior | null,
  settings: LineSettings,
): LineFit | null {
  const dayVariance = settings.daySd ** 2;
  const setVariance = settings.setSd ** 2;
  // Sums of weight, weight·load, weight·load², weight·speed, weight·load·speed.
  let w = 0;
  let wl = 0;
  let wll = 0;
  let wv = 0;
  let wlv = 0;
  const sums = noSums();
  for (let start = 0, end = 0; start < rows.length; start = end) {
    end = sumUpDay(rows, start, sums);
    const { load, speed } = sums;
    const recency = now === null ? 1 : recencyWeight(now - rows[start]!.day, settings);
    const weight = recency / (dayVariance + setVariance / (end - start));
    const within = recency / setVariance;
    w += weight;
    wl += weight * load;
    wll += weight * load * load + within * sums.squares;
    wv += weight * speed;
    wlv += weight * load * speed + within * sums.products;
  }
  if (prior) {
    w += 1 / prior.sd ** 2;
    wv += prior.speed / prior.sd ** 2;
  }
  const determinant = w * wll - wl * wl;
  if (!(determinant > 1e-9 * w * wll)) return null;
  return {
    intercept: (wll * wv - wl * wlv) / determinant,
    slope: (w * wlv - wl * wv) / determinant,
    interceptVariance: wll / determinant,
    covariance: -wl / determinant,
    slopeVariance: w / determinant,
  };
}
