/**
 * How much wider a mean of n successive readings errs when each error is ρ of the last: its variance is
 * this many times that of n independent ones, (1 + ρ)/(1 − ρ) − 2ρ(1 − ρⁿ)/(n(1 − ρ)²)
 * (Box & Jenkins 1970).
 */
export function runInflation(readings: number, serial: number): number {
  const rest = 1 - serial;
  return (1 + serial) / rest - (2 * serial * (1 - serial ** readings)) / (readings * rest ** 2);
}

/**
 * Variance of the difference of two neighbouring runs' means. The readings on either side of the border
 * err alike, which takes some of it off.
 *
 * @param weights what each run would weigh if its readings were independent
 */
export function runsApartVariance(
  readings: readonly [number, number],
  weights: readonly [number, number],
  serial: number,
): number {
  const [a, b] = readings;
  const [weightA, weightB] = weights;
  const shared =
    ((serial * (1 - serial ** a) * (1 - serial ** b)) / ((1 - serial) ** 2 * a * b)) *
    Math.sqrt((a * b) / (weightA * weightB));
  return runInflation(a, serial) / weightA + runInflation(b, serial) / weightB - 2 * shared;
}
