import { accept, type Outcome, refuse } from "../../src/outcome";
import { usable } from "../../src/statistics/usable";

/** Mean moving range of two over SD for normal values, as the tables print it; exactly 2/√π. */
const printedRangeOverSd = 1.128;

/** Mean with limits three SD away, the SD from the mean moving range. */
export type IndividualsChart = {
  readonly centre: number;
  readonly meanRange: number;
  readonly low: number;
  readonly high: number;
};

/**
 * Individuals chart (NIST/SEMATECH e-Handbook 6.3.2.2): mean ± 3·mean moving range / 1.128.
 * Refuses `values-too-few` below two, `value-not-finite`.
 *
 * @param rangeOverSd mean moving range of normal values in SD, where more digits than the tables' are wanted
 */
export function individualsChart(
  values: readonly number[],
  rangeOverSd = printedRangeOverSd,
): Outcome<IndividualsChart> {
  const given = usable(values, 2);
  if (!given.ok) return given;
  const centre = values.reduce((sum, value) => sum + value, 0) / values.length;
  let ranges = 0;
  for (let i = 1; i < values.length; i++) ranges += Math.abs(values[i]! - values[i - 1]!);
  const meanRange = ranges / (values.length - 1);
  const half = (3 * meanRange) / rangeOverSd;
  return accept({ centre, meanRange, low: centre - half, high: centre + half });
}

/**
 * Exponentially weighted moving average (e-Handbook 6.3.2.4): z = weight·x + (1 − weight)·z.
 * Refuses `value-not-finite`, `share-impossible` unless 0 < weight ≤ 1.
 */
export function weightedAverages(
  values: readonly number[],
  start: number,
  weight: number,
): Outcome<number[]> {
  const given = usable([start, ...values], 1);
  if (!given.ok) return given;
  if (!(weight > 0 && weight <= 1)) return refuse("share-impossible", { share: weight });
  let average = start;
  return accept(
    values.map((value) => {
      average = weight * value + (1 - weight) * average;
      return average;
    }),
  );
}

/**
 * How far from its start such an average strays, in its limits' widths of SD: width·√(weight/(2 −
 * weight)·(1 − (1 − weight)^(2·rows))) (e-Handbook 6.3.2.4; Roberts 1959). Infinite rows give the
 * limit it settles at. Refuses `share-impossible` unless 0 < weight ≤ 1.
 */
export function weightedAverageLimit(
  sd: number,
  weight: number,
  width: number,
  rows = Number.POSITIVE_INFINITY,
): Outcome<number> {
  if (!(weight > 0 && weight <= 1)) return refuse("share-impossible", { share: weight });
  const settled = 1 - (1 - weight) ** (2 * rows);
  return accept(width * sd * Math.sqrt((weight / (2 - weight)) * settled));
}

/** Sums of what lies beyond the slack above and below the aim, after each value. */
export type CumulativeSums = { readonly above: number[]; readonly below: number[] };

/**
 * Tabular CUSUM (e-Handbook 6.3.2.3). Refuses `value-not-finite` (the aim, the slack, then the values).
 *
 * @param aim level that is expected
 * @param slack distance from it that is let pass, in the values' unit
 */
export function cumulativeSums(
  values: readonly number[],
  aim: number,
  slack: number,
): Outcome<CumulativeSums> {
  const given = usable([aim, slack, ...values], 2);
  if (!given.ok) return given;
  const above: number[] = [];
  const below: number[] = [];
  for (const [index, value] of values.entries()) {
    above.push(Math.max(0, (above[index - 1] ?? 0) + value - aim - slack));
    below.push(Math.max(0, (below[index - 1] ?? 0) + aim - slack - value));
  }
  return accept({ above, below });
}

/**
 * Slack and limit of a tabular CUSUM that is to find a lasting shift: half the shift, and the V-mask's
 * lead distance 2·(sd/shift)²·ln(1/falseShare) of it (e-Handbook 6.3.2.3; its author, Johnson 1961,
 * from memory).
 * Refuses `share-impossible` unless 0 < falseShare < 1.
 *
 * @param sd of one value charted, in its unit like the shift, above 0 both
 * @param falseShare share of false signals let pass on one side
 */
export function sumsPlan(
  shift: number,
  sd: number,
  falseShare: number,
): Outcome<{ readonly slack: number; readonly limit: number }> {
  if (!(falseShare > 0 && falseShare < 1)) return refuse("share-impossible", { share: falseShare });
  const slack = shift / 2;
  return accept({ slack, limit: -2 * (sd / shift) ** 2 * Math.log(falseShare) * slack });
}
