import { accept, type Outcome, refuse } from "../outcome";

/** Probabilities of a 2 × 2 table with its margins held. */
export type FisherExact = {
  readonly less: number;
  readonly greater: number;
  readonly twoSided: number;
};

/**
 * Fisher's exact test (Fisher 1935). `greater`: as many or more in the first cell; `twoSided`: all
 * tables no more likely than this one.
 * Refuses `counts-impossible` for a count that is not a whole number from 0 up.
 */
export function fisherExact(a: number, b: number, c: number, d: number): Outcome<FisherExact> {
  if (![a, b, c, d].every((count) => Number.isInteger(count) && count >= 0)) {
    return refuse("counts-impossible");
  }
  const log = logFactorials(a + b + c + d);
  const chance = (x: number) =>
    Math.exp(
      log[a + b]! +
        log[c + d]! +
        log[a + c]! +
        log[b + d]! -
        log[a + b + c + d]! -
        log[x]! -
        log[a + b - x]! -
        log[a + c - x]! -
        log[d - a + x]!,
    );
  const here = chance(a);
  let less = 0;
  let greater = 0;
  let twoSided = 0;
  for (let x = Math.max(0, a - d); x <= Math.min(a + b, a + c); x++) {
    const one = chance(x);
    if (x <= a) less += one;
    if (x >= a) greater += one;
    // A hair for tables that are equally likely but for rounding.
    if (one <= here * (1 + 1e-7)) twoSided += one;
  }
  return accept({
    less: Math.min(1, less),
    greater: Math.min(1, greater),
    twoSided: Math.min(1, twoSided),
  });
}

function logFactorials(upTo: number): number[] {
  const log = [0];
  for (let i = 1; i <= upTo; i++) log.push(log[i - 1]! + Math.log(i));
  return log;
}
