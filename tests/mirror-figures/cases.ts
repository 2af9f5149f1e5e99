/** Cases a figure is checked on; fewer where every fault of a source is tried in turn. */
const cases = Number(process.env.MIRROR_CASES ?? 10_000);

/** Seeded random numbers of one case. */
export type Chance = {
  /** A real number in [low, high). */
  readonly real: (low: number, high: number) => number;
  /** A whole number from low to high, both possible. */
  readonly whole: (low: number, high: number) => number;
  readonly coin: (share?: number) => boolean;
  readonly list: <T>(length: number, one: (index: number) => T) => T[];
};

/** Runs a check on 10,000 seeded random cases; a failure names the case. */
export function onCases(seed: number, check: (chance: Chance) => void): void {
  for (let at = 0; at < cases; at++) {
    try {
      check(chanceOf(seed * 1_000_003 + at));
    } catch (error) {
      throw new Error(`case ${at}: ${error instanceof Error ? error.message : error}`);
    }
  }
}

/** Fails when two figures differ by more than 1e-9 of the larger one, or of 1. */
export function agree(found: number, mirrored: number, what = "figure"): void {
  const size = Math.max(1, Math.abs(found), Math.abs(mirrored));
  if (!(Math.abs(found - mirrored) <= 1e-9 * size)) {
    throw new Error(`${what}: ${found}, and by the second way ${mirrored}`);
  }
}

/** Fails when two answers that are no figures differ. */
export function same<T>(found: T, mirrored: T, what = "answer"): void {
  if (JSON.stringify(found) !== JSON.stringify(mirrored)) {
    throw new Error(`${what}: ${JSON.stringify(found)}, and ${JSON.stringify(mirrored)}`);
  }
}

/** Weyl sequence mixed by multiplication and shifts, 32 bits (a plain generator, not for secrets). */
function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
  const real = (low: number, high: number) => low + (high - low) * next();
  return {
    real,
    whole: (low, high) => low + Math.floor(next() * (high - low + 1)),
    coin: (share = 0.5) => next() < share,
    list: (length, one) => Array.from({ length }, (_, index) => one(index)),
  };
}
