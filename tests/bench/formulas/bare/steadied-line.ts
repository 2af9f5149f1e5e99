import type { DaySums } from "./day-sums";

/** Day and set SDs, m/s, and how days lose weight; both as variances. */
export type Spread = { readonly day: number; readonly set: number };
export type Prior = { readonly speed: number; readonly variance: number };
export type Line = {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptVariance: number;
};

// The product's setting, written down a second time: what it is is part of the figure.
export const assumed: Spread = { day: 0.04 ** 2, set: 0.02 ** 2 };
const alike = () => 1;

/** Weighted least squares of day means and of the sets within days, by the normal equations. */
export function nestedLine(
  days: readonly DaySums[],
  { day, set }: Spread,
  prior: Prior | null,
  weightOf: (day: number) => number = alike,
): Line {
  let one = prior ? 1 / prior.variance : 0;
  let v = prior ? prior.speed / prior.variance : 0;
  let [x, xx, xv] = [0, 0, 0];
  for (const sums of days) {
    const keeps = weightOf(sums.day);
    const weight = keeps / (day + set / sums.sets);
    one += weight;
    x += weight * sums.kg;
    v += weight * sums.speed;
    xx += weight * sums.kg ** 2 + (keeps / set) * sums.kgKg;
    xv += weight * sums.kg * sums.speed + (keeps / set) * sums.kgSpeed;
  }
  const slope = (xv - (x * v) / one) / (xx - x ** 2 / one);
  return { slope, intercept: (v - slope * x) / one, interceptVariance: xx / (one * xx - x ** 2) };
}

/** The same with a steady drift as a third unknown, worked out of the other two. */
export function driftingLine(
  days: readonly DaySums[],
  { day, set }: Spread,
  driftVariance: number,
): Line {
  const weights = days.map(({ sets }) => 1 / (day + set / sets));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const over = (of: (sums: DaySums) => number) =>
    days.reduce((sum, sums, at) => sum + (weights[at] as number) * of(sums), 0);
  const about = {
    t: over((sums) => sums.day) / all,
    x: over(({ kg }) => kg) / all,
    v: over(({ speed }) => speed) / all,
  };
  const tt = over((sums) => (sums.day - about.t) ** 2) + 1 / driftVariance;
  const tx = over((sums) => (sums.day - about.t) * (sums.kg - about.x));
  const tv = over((sums) => (sums.day - about.t) * (sums.speed - about.v));
  const within = (of: (sums: DaySums) => number) =>
    days.reduce((sum, sums) => sum + of(sums), 0) / set;
  const xx = over(({ kg }) => (kg - about.x) ** 2) + within(({ kgKg }) => kgKg);
  const xv =
    over(({ kg, speed }) => (kg - about.x) * (speed - about.v)) + within(({ kgSpeed }) => kgSpeed);
  const left = xx - tx ** 2 / tt;
  const slope = (xv - (tx * tv) / tt) / left;
  return {
    slope,
    intercept: about.v - slope * about.x,
    interceptVariance: 1 / all + about.x ** 2 / left,
  };
}

export const surer = (a: Line, b: Line): Line =>
  b.interceptVariance < a.interceptVariance ? b : a;
