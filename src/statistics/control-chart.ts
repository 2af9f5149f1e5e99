import { accept, type Outcome, refuse } from "../outcome";
import { usable } from "./usable";

/** Mean moving range of two over SD for normal values, as the tables print it. */
const rangeOverSd = 1.128;

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
 */
export function individualsChart(values: readonly number[]): Outcome<IndividualsChart> {
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
