import { medianSorted, mean as plainMean } from "simple-statistics";
import { accept, type Outcome } from "../outcome";
import { usable } from "./usable";

/** Arithmetic mean, in the values' unit. Refuses `values-too-few` (none) and `value-not-finite`. */
export function mean(values: readonly number[]): Outcome<number> {
  const given = usable(values, 1);
  return given.ok ? accept(centre(values)) : given;
}

/**
 * Sample standard deviation (n − 1), in the values' unit. Two passes with the corrected sum of squares
 * (Chan, Golub & LeVeque 1983, Am Stat 37:242–247): Σx² − n·x̄² loses every digit when the mean is
 * large beside the spread. Refuses `values-too-few` below two and `value-not-finite`.
 */
export function standardDeviation(values: readonly number[]): Outcome<number> {
  const given = usable(values, 2);
  if (!given.ok) return given;
  return accept(Math.sqrt(squaresAbout(values, centre(values)) / (values.length - 1)));
}

/** Mean of figures, one at least. */
export const meanOf = (values: readonly number[]): number => plainMean([...values]);

/** The same; null without one. */
export const meanIfAny = (values: readonly number[]): number | null =>
  values.length === 0 ? null : meanOf(values);

/** Middle value of figures, one at least; of an even number, the mean of the two in the middle. */
export const middleOf = (values: readonly number[]): number =>
  medianSorted([...values].sort((a, b) => a - b));

/** The mean with its own rounding taken out by a second pass. */
function centre(values: readonly number[]): number {
  const first = meanOf(values);
  return first + meanOf(values.map((value) => value - first));
}

function squaresAbout(values: readonly number[], middle: number): number {
  let squares = 0;
  let rest = 0;
  for (const value of values) {
    squares += (value - middle) ** 2;
    rest += value - middle;
  }
  return Math.max(0, squares - rest ** 2 / values.length);
}
