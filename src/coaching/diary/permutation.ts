import type { ComparedDays } from "./link";

/** Shuffles at most, and as-large ones after which more would change nothing. */
const mostShuffles = 4999;
const enoughAsLarge = 30;

/**
 * Two-sided permutation p-value of the sum of products: how often items dealt out anew among the days
 * of one weekday (of one athlete, when several are given) go with performance at least as closely.
 * Only performance has its drift taken out here: taking it out of both would leave a like ripple in
 * both, which in simulated seasons named a false link nearly twice as often as wanted. The p-value is never zero: the order seen counts as one of the shuffles. When thirty shuffles are
 * as close, dealing stops and p is thirty over the shuffles made (Besag & Clifford 1991, Biometrika
 * 78:301–304; from memory).
 *
 * @param chance uniform numbers in [0, 1)
 */
export function permutationP(groups: readonly ComparedDays[], chance: () => number): number {
  const dealt = groups.map(({ itemCentred }) => Float64Array.from(itemCentred));
  const product = () => {
    let sum = 0;
    for (const [g, { percentBeyond }] of groups.entries()) {
      const items = dealt[g]!;
      for (let at = 0; at < items.length; at++) sum += items[at]! * percentBeyond[at]!;
    }
    return Math.abs(sum);
  };
  const seen = product() * (1 - 1e-9);
  let asLarge = 0;
  for (let shuffle = 1; shuffle <= mostShuffles; shuffle++) {
    for (const [g, { strata }] of groups.entries()) {
      for (const places of strata) deal(dealt[g]!, places, chance);
    }
    if (product() >= seen) asLarge++;
    if (asLarge >= enoughAsLarge) return asLarge / shuffle;
  }
  return (asLarge + 1) / (mostShuffles + 1);
}

/** Fisher–Yates among some places. */
function deal(values: Float64Array, places: readonly number[], chance: () => number): void {
  for (let last = places.length - 1; last > 0; last--) {
    const other = Math.floor(chance() * (last + 1));
    const a = places[last]!;
    const b = places[other]!;
    const kept = values[a]!;
    values[a] = values[b]!;
    values[b] = kept;
  }
}
