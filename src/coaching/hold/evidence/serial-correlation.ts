/** Squads smaller than this are not asked. */
const leastAthletes = 10;
const mostCorrelation = 0.6;

/**
 * Correlation of one session's error with the next, pooled over the squad's seasons so far, to be used
 * by the evidence; 0 of fewer than ten athletes, never over 0.6.
 *
 * With G1 and G2 half the mean squared differences of readings one and two apart, errors of which each
 * is ρ of the last give G2/G1 = 1 + ρ: a ratio that a lasting change, which meets each reading once or
 * twice, hardly moves (the variogram of an autoregression; Matheron 1963, Box & Jenkins 1970). The
 * estimate's variance is about 2/n for n differences; it is shrunk by as much (positive part; James &
 * Stein 1961), so that squads without such errors are asked for next to nothing.
 *
 * @param series values of one measure of one athlete each, percent, NaN where missing
 * @param athletes how many athletes they come from
 */
export function serialCorrelation(
  series: readonly (readonly number[])[],
  athletes: number,
): number {
  if (athletes < leastAthletes) return 0;
  let nearSquares = 0;
  let nearCount = 0;
  let farSquares = 0;
  let farCount = 0;
  for (const values of series) {
    let last = Number.NaN;
    let beforeLast = Number.NaN;
    for (const value of values) {
      if (Number.isNaN(value)) continue;
      if (!Number.isNaN(last)) {
        nearSquares += (value - last) ** 2;
        nearCount++;
      }
      if (!Number.isNaN(beforeLast)) {
        farSquares += (value - beforeLast) ** 2;
        farCount++;
      }
      beforeLast = last;
      last = value;
    }
  }
  if (farCount === 0 || nearSquares === 0) return 0;
  const correlation = farSquares / farCount / (nearSquares / nearCount) - 1;
  if (correlation <= 0) return 0;
  const variance = 2 / farCount;
  return Math.min(mostCorrelation, Math.max(0, correlation - (2 * variance) / correlation));
}
