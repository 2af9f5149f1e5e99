import type { DaySums } from "./day-sums";
import { assumed, type Line, type Prior, type Spread } from "./steadied-line";

// The product's settings, written down a second time.
const assumedFreedom = 10;
const leastVariance = 0.008 ** 2;
const usual = { speed: 1.35, spread: 0.1 ** 2, doubt: 0.35 ** 2 } as const;
const surest = 2 ** 2;
const varianceDoubt = 0.02 ** 2;

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
