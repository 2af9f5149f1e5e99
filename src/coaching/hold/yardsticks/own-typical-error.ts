import type { HoldSettings } from "../hold-settings";

/**
 * An athlete's own typical error of one session (Hopkins 2000, Sports Med 30:1–15), session by
 * session: from the differences of successive rows, which a slow change of level hardly touches
 * (von Neumann 1941), steadied by the squad's typical error.
 *
 * √((worth·squad² + e·q/(1 − serial)) / (worth + e)), q half the mean squared successive difference
 * of the c rows so far, e = 2(c − 1)/3 its degrees of freedom. Rows of earlier seasons count like this
 * one's: an athlete's wobble stays when the level moves.
 *
 * @param values percent, one place a session, NaN where missing
 * @param squadError percent
 * @param earlier readings of seasons before, in runs without a long gap
 * @returns typical error after each session, percent
 */
export function ownTypicalErrors(
  values: readonly number[],
  squadError: number,
  settings: HoldSettings,
  earlier: readonly (readonly number[])[] = [],
): Float64Array {
  const errors = new Float64Array(values.length);
  let pairs = 0;
  let sum = 0;
  for (const run of earlier) {
    for (let i = 1; i < run.length; i++) sum += (run[i]! - run[i - 1]!) ** 2 / 2;
    pairs += run.length - 1;
  }
  let last = Number.NaN;
  for (let s = 0; s < values.length; s++) {
    const value = values[s]!;
    if (!Number.isNaN(value)) {
      if (!Number.isNaN(last)) {
        sum += (value - last) ** 2 / 2;
        pairs++;
      }
      last = value;
    }
    const freedom = (2 * pairs) / 3;
    const squad = settings.squadWorth * squadError ** 2;
    const steadied =
      pairs > 0
        ? (squad + (freedom * (sum / pairs)) / (1 - settings.serial)) /
          (settings.squadWorth + freedom)
        : squadError ** 2;
    errors[s] = Math.max(settings.leastError, Math.sqrt(steadied));
  }
  return errors;
}
