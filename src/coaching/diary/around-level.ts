/** A value's distance from the level around it. */
export type AroundLevel = {
  readonly away: number;
  /**
   * Distance from the nearer of the levels before and after, 0 between them: the first session of a
   * slide is no unusual day, for the days after it are like it.
   */
  readonly fromNearer: number;
  /** Variance of the level in units of one value's variance. */
  readonly levelVariance: number;
};

/** Neighbours on either side that make the level. */
const eitherSide = 4;
const leastNeighbours = 3;

/** Variance of a median against that of a mean of as many values, about π/2. */
const medianVariance = 1.57;

/**
 * Each value minus the median of up to four before it and four after it, itself left out. What
 * drifts slowly goes, a step of the season touches only the days beside it, and one odd neighbour
 * does not make an ordinary day look odd; what is particular to the day stays.
 *
 * @param values in order of day; null where missing
 * @returns null where the value is missing or fewer than three neighbours are there
 */
export function aroundLevel(values: readonly (number | null)[]): readonly (AroundLevel | null)[] {
  const present = values.flatMap((value, at) => (value === null ? [] : [at]));
  const result: (AroundLevel | null)[] = values.map(() => null);
  for (const [place, at] of present.entries()) {
    const before = present.slice(Math.max(0, place - eitherSide), place).map((one) => values[one]!);
    const after = present.slice(place + 1, place + 1 + eitherSide).map((one) => values[one]!);
    const around = [...before, ...after];
    if (around.length < leastNeighbours) continue;
    const value = values[at]!;
    const away = value - middle(around);
    const bothSides = before.length >= leastNeighbours && after.length >= leastNeighbours;
    result[at] = {
      away,
      fromNearer: bothSides ? nearer(value - middle(before), value - middle(after)) : away,
      levelVariance: medianVariance / around.length,
    };
  }
  return result;
}

function nearer(a: number, b: number): number {
  if (a * b <= 0) return 0;
  return Math.abs(a) < Math.abs(b) ? a : b;
}

function middle(values: number[]): number {
  values.sort((a, b) => a - b);
  const half = values.length >> 1;
  return values.length % 2 === 1 ? values[half]! : (values[half - 1]! + values[half]!) / 2;
}
