/** Seeded chance: the same seed gives the same season on every machine. */
export type Chance = {
  /** Uniform on (0, 1). */
  readonly uniform: () => number;
  readonly normal: () => number;
  /** Student t scaled to variance 1; infinite degrees of freedom is the normal. */
  readonly heavy: (degrees: number) => number;
  /** Whole number from `low` to `high`, both possible. */
  readonly whole: (low: number, high: number) => number;
};

/** Mulberry32, a 32-bit generator in the public domain, with Box–Muller normals. */
export function chance(seed: number): Chance {
  let state = seed | 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const heavy = (degrees: number) => {
    if (!Number.isFinite(degrees)) return normal();
    let chiSquare = 0;
    for (let i = 0; i < degrees; i++) chiSquare += normal() ** 2;
    return (normal() / Math.sqrt(chiSquare / degrees)) * Math.sqrt((degrees - 2) / degrees);
  };
  return {
    uniform,
    normal,
    heavy,
    whole: (low, high) => low + Math.floor(uniform() * (high - low + 1)),
  };
}
