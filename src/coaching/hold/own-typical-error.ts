import type { HoldSettings } from "./hold-settings";

/**
 * An athlete's own typical error of one session (Hopkins 2000, Sports Med 30:1–15), session by
 * session: from the differences of successive rows, which a slow change of level hardly touches
 * (von Neumann 1941), steadied by the squad's typical error.
 *
 * √((worth·squad² + e·q/(1 − serial)) / (worth + e)), q half the mean squared successive difference
 * of the c rows so far, e = 2(c − 1)/3 its degrees of freedom.
 *
 * @param values percent, one place a session, NaN where missing
 * @param squadError percent
 * @returns typical error after each session, percent
 */
export function ownTypicalErrors(
  values: readonly number[],
  squadError: number,
  settings: HoldSettings,
): Float64Array {
  const errors = new Float64Array(values.length);
  let rows = 0;
  let sum = 0;
  let last = 0;
  for (let s = 0; s < values.length; s++) {
    const value = values[s]!;
    if (!Number.isNaN(value)) {
      if (rows > 0) sum += (value - last) ** 2 / 2;
      rows++;
      last = value;
    }
    const pairs = rows - 1;
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
