/** Squads smaller than this are not asked; smaller correlations are taken for none. */
const leastAthletes = 10;
const leastCorrelation = 0.1;
const mostCorrelation = 0.6;

/**
 * Correlation of one session's error with the next, pooled over the squad's baselines, to be used by
 * the evidence: 0 unless at least ten athletes show more than 0.10, and never over 0.6.
 *
 * Of n values about their own mean even independent errors correlate by −1/(n − 1); the pooled
 * lag-1 correlation is therefore multiplied by n/(n − 1) and raised by 1/(n − 1), n the mean number
 * of baseline rows.
 *
 * @param baselines baseline values of one measure of one athlete each, percent, NaN where missing
 * @param athletes how many athletes they come from
 */
export function serialCorrelation(
  baselines: readonly (readonly number[])[],
  athletes: number,
): number {
  if (athletes < leastAthletes) return 0;
  let products = 0;
  let squares = 0;
  let series = 0;
  let rows = 0;
  for (const baseline of baselines) {
    const values = baseline.filter((value) => !Number.isNaN(value));
    if (values.length < 3) continue;
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    for (let i = 0; i < values.length; i++) {
      squares += (values[i]! - mean) ** 2;
      if (i > 0) products += (values[i]! - mean) * (values[i - 1]! - mean);
    }
    series++;
    rows += values.length;
  }
  if (!(squares > 0)) return 0;
  const n = rows / series;
  const correlation = (products / squares) * (n / (n - 1)) + 1 / (n - 1);
  return correlation > leastCorrelation ? Math.min(mostCorrelation, correlation) : 0;
}
