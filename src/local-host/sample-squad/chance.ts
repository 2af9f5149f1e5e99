/** Chance with a seed: the same seed gives the same figures on every machine. */
export type Chance = {
  /** Even between 0 and 1, 1 left out. */
  readonly uniform: () => number;
  /** Bell-shaped with mean 0 and SD 1. */
  readonly normal: () => number;
};

/**
 * A small generator of our own (a Weyl sequence stirred by integer products, whole 32-bit steps).
 * The bell is twelve even figures added up, less six: logarithms and cosines may differ in their
 * last digits from one machine to the next, sums do not.
 */
export function chance(seed: number): Chance {
  let state = seed | 0;
  const uniform = () => {
    state = (state + 0x9e3779b9) | 0;
    let bits = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
    return ((bits ^ (bits >>> 16)) >>> 0) / 4294967296;
  };
  const normal = () => {
    let sum = -6;
    for (let i = 0; i < 12; i++) sum += uniform();
    return sum;
  };
  return { uniform, normal };
}

export function rounded(value: number, places: number): number {
  const scale = [1, 10, 100, 1000][places] ?? 1000;
  return Math.round(value * scale) / scale;
}
