/** Degrees of freedom the default is worth against the squad's own rows. */
const defaultWorth = 10;

/**
 * Typical error of one session across a squad: the athletes' variances over their baselines, pooled,
 * and steadied by a default worth ten degrees of freedom.
 *
 * √((10·default² + Σ squares about each athlete's own mean) / (10 + Σ (rows − 1)))
 *
 * @param baselines each athlete's baseline values of one measure, percent; NaN where missing
 * @param usual default typical error, percent
 * @returns percent
 */
export function squadTypicalError(
  baselines: readonly (readonly number[])[],
  usual: number,
): number {
  let squares = 0;
  let freedom = 0;
  for (const values of baselines) {
    let rows = 0;
    let mean = 0;
    let about = 0;
    for (const value of values) {
      if (Number.isNaN(value)) continue;
      rows++;
      const step = value - mean;
      mean += step / rows;
      about += step * (value - mean);
    }
    if (rows < 2) continue;
    squares += about;
    freedom += rows - 1;
  }
  return Math.sqrt((defaultWorth * usual ** 2 + squares) / (defaultWorth + freedom));
}
