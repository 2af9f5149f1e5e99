import { accept, certain, type Outcome } from "../../outcome";
import { mean, standardDeviation } from "../../statistics/spread";
import { usablePairs } from "../../statistics/usable";

/** Mean difference of two devices and the range that holds 95 % of differences, in their unit. */
export type Agreement = { readonly bias: number; readonly low: number; readonly high: number };

/**
 * Limits of agreement, first less second: bias ± 1.96·SD (Bland & Altman 1986, Lancet i:307–310, who
 * used 2; 1.96 is the later usage). Refuses `lengths-differ`, `value-not-finite`, `values-too-few`.
 */
export function agreement(first: readonly number[], second: readonly number[]): Outcome<Agreement> {
  const given = usablePairs(first, second, 2);
  if (!given.ok) return given;
  const differences = first.map((value, index) => value - second[index]!);
  const bias = certain(mean(differences));
  const half = 1.96 * certain(standardDeviation(differences));
  return accept({ bias, low: bias - half, high: bias + half });
}
