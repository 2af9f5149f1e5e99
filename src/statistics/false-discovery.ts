import { accept, type Outcome, refuse } from "../outcome";

/**
 * Adjusted p-values that hold the share of false finds among all finds at the level they are compared
 * with (Benjamini & Hochberg 1995, J R Stat Soc B 57:289–300): the smallest of p·m/rank over this
 * rank and all larger ones. Refuses `probability-impossible` by place; an empty list stays empty.
 *
 * @param p in any order; the answers keep it
 */
export function adjustedForMany(p: readonly number[]): Outcome<number[]> {
  const bad = p.findIndex((one) => !(one >= 0 && one <= 1));
  if (bad >= 0) return refuse("probability-impossible", { place: bad + 1 });
  const order = p.map((_, index) => index).sort((a, b) => p[b]! - p[a]!);
  const adjusted = Array<number>(p.length);
  let least = 1;
  order.forEach((index, fromLargest) => {
    least = Math.min(least, (p[index]! * p.length) / (p.length - fromLargest));
    adjusted[index] = least;
  });
  return accept(adjusted);
}
