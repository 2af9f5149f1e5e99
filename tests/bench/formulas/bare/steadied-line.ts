import type { DaySums } from "./day-sums";

/** Day and set SDs, m/s, and how days lose weight; both as variances. */
export type Spread = { readonly day: number; readonly set: number };
export type Prior = { readonly speed: number; readonly variance: number };
export type Line = {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptVariance: number;
};

// The product's settings, written down a second time: what they are is part of the figure.
export const assumed: Spread = { day: 0.04 ** 2, set: 0.02 ** 2 };
const assumedFreedom = 10;
const leastVariance = 0.008 ** 2;
const usual = { speed: 1.35, spread: 0.1 ** 2, doubt: 0.35 ** 2 } as const;
const surest = 2 ** 2;
const varianceDoubt = 0.02 ** 2;

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

/** Analysis of variance of sets in days around given lines, steadied by the assumed spread. */
export function squadSpread(
  squad: readonly { readonly days: readonly DaySums[]; readonly slope: number }[],
): Spread {
  let within = assumedFreedom * assumed.set;
  let withinFreedom = assumedFreedom;
  for (const { days, slope } of squad) {
    for (const { sets, kgKg, kgSpeed, speedSpeed } of days) {
      within += speedSpeed - 2 * slope * kgSpeed + slope ** 2 * kgKg;
      withinFreedom += sets - 1;
    }
  }
  const set = Math.max(leastVariance, within / withinFreedom);
  let between = assumedFreedom * assumed.day;
  let betweenFreedom = assumedFreedom;
  for (const { days, slope } of squad) {
    const means = days.map(({ kg, speed }) => speed - slope * kg);
    const level = means.reduce((sum, mean) => sum + mean, 0) / means.length;
    const inverse = days.reduce((sum, { sets }) => sum + 1 / sets, 0) / days.length;
    for (const mean of means) between += (mean - level) ** 2;
    between -= (days.length - 2) * set * inverse;
    betweenFreedom += days.length - 2;
  }
  return { set, day: Math.max(leastVariance, between / betweenFreedom) };
}

/** The squad's speed at zero load (DerSimonian & Laird 1986), its spread weighed against the usual. */
export function zeroLoad(lines: readonly Line[]): Prior {
  const sure = lines.filter(({ interceptVariance }) => interceptVariance <= surest);
  const pooled = (extra: number) => {
    const weights = sure.map(({ interceptVariance }) => 1 / (interceptVariance + extra));
    const all = weights.reduce((sum, weight) => sum + weight, 0);
    const squares = weights.reduce((sum, weight) => sum + weight ** 2, 0);
    const mean =
      sure.reduce((sum, { intercept }, at) => sum + (weights[at] as number) * intercept, 0) / all;
    return { all, squares, mean };
  };
  const fixed = pooled(0);
  const spreadOut = sure.reduce(
    (sum, { intercept, interceptVariance }) =>
      sum + (intercept - fixed.mean) ** 2 / interceptVariance,
    0,
  );
  const freedom = sure.length - 1;
  const information = fixed.all - fixed.squares / fixed.all;
  const seen = Math.max(0, (spreadOut - freedom) / information);
  const trust = varianceDoubt / (varianceDoubt + (2 * freedom) / information ** 2);
  const variance = trust * seen + (1 - trust) * usual.spread;
  const random = pooled(variance);
  const all = random.all + 1 / usual.doubt;
  return {
    speed: (random.all * random.mean + usual.speed / usual.doubt) / all,
    variance: variance + 1 / all,
  };
}
