import type { LineFit, LineRow } from "./line-fit";
import type { LineSettings } from "./line-settings";
import { noSums, sumUpDay } from "./sums-of-day";

/** Fewer days than this cannot tell a drift from a slope. */
const leastDays = 5;
const perDay = 4;

/**
 * The same weighted least squares as `lineFit`, all days alike and without a prior on the speed at zero
 * load, with a steady drift of the athlete's level as a third unknown: over a season loads climb while
 * form may slide, and without the drift a slide would pass for a steeper line. Where a usual size of
 * drifts is given, it acts as one more observation of none (Efron & Morris 1973); whoever looks for a
 * fall gives none. The intercept is that of the season's middle.
 *
 * @param rows in order of day
 * @param driftSd SD of drifts between athletes, m/s a day
 * @returns null when the rows cannot tell the three apart
 */
export function lineFitWithDrift(
  rows: readonly LineRow[],
  settings: LineSettings,
  driftSd = Number.POSITIVE_INFINITY,
): LineFit | null {
  const setVariance = settings.setSd ** 2;
  // Weight, time, load and speed, one after the other for each day.
  const days: number[] = [];
  let withinSquares = 0;
  let withinProducts = 0;
  const sums = noSums();
  for (let start = 0, end = 0; start < rows.length; start = end) {
    end = sumUpDay(rows, start, sums);
    withinSquares += sums.squares / setVariance;
    withinProducts += sums.products / setVariance;
    const weight = 1 / (settings.daySd ** 2 + setVariance / (end - start));
    days.push(weight, rows[start]!.day, sums.load, sums.speed);
  }
  if (days.length < perDay * leastDays) return null;

  // Around the weighted means, intercept and the other two unknowns separate.
  let w = 0;
  const mean = { time: 0, load: 0, speed: 0 };
  for (let at = 0; at < days.length; at += perDay) {
    const weight = days[at]!;
    w += weight;
    mean.time += weight * days[at + 1]!;
    mean.load += weight * days[at + 2]!;
    mean.speed += weight * days[at + 3]!;
  }
  mean.time /= w;
  mean.load /= w;
  mean.speed /= w;
  let tt = 1 / driftSd ** 2;
  let tl = 0;
  let tv = 0;
  let ll = withinSquares;
  let lv = withinProducts;
  for (let at = 0; at < days.length; at += perDay) {
    const weight = days[at]!;
    const t = days[at + 1]! - mean.time;
    const l = days[at + 2]! - mean.load;
    const v = days[at + 3]! - mean.speed;
    tt += weight * t * t;
    tl += weight * t * l;
    tv += weight * t * v;
    ll += weight * l * l;
    lv += weight * l * v;
  }
  const determinant = tt * ll - tl * tl;
  // At one load all along, what rounding leaves of its spread draws any slope at all.
  if (!(determinant > 1e-9 * tt * ll && ll > 1e-9 * w * mean.load ** 2)) return null;
  const slope = (tt * lv - tl * tv) / determinant;
  const slopeVariance = tt / determinant;
  return {
    intercept: mean.speed - slope * mean.load,
    slope,
    interceptVariance: 1 / w + mean.load ** 2 * slopeVariance,
    covariance: -mean.load * slopeVariance,
    slopeVariance,
  };
}
