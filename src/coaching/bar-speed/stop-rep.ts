/** Doubles put 0.50 → 0.45 a hair under 10 %: a cap is reached within this much of itself. */
const tolerance = 1e-9;

/**
 * Repetition at which a set has reached its loss cap: the first whose loss from the fastest so far
 * is the cap or more. A stop rule needs more than one such repetition or a change in form, for the
 * loss does not repeat well enough in free squats (Jukic et al. 2023, Sports Med Open,
 * doi 10.1186/s40798-023-00626-z): ask for `running` repetitions in a row.
 *
 * @param speeds m/s, in order
 * @param cap fraction
 * @param running repetitions in a row at or past the cap
 * @returns number of the repetition, the first is 1; null when the cap was not reached
 */
export function stopRep(speeds: readonly number[], cap: number, running = 1): number | null {
  let past = 0;
  for (const [index, loss] of runningLoss(speeds).entries()) {
    past = loss >= cap - tolerance ? past + 1 : 0;
    if (past === running) return index + 1;
  }
  return null;
}

/** Loss at each repetition from the fastest up to then, fraction. */
export function runningLoss(speeds: readonly number[]): number[] {
  let fastest = 0;
  return speeds.map((speed) => {
    fastest = Math.max(fastest, speed);
    return (fastest - speed) / fastest;
  });
}
