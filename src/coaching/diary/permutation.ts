import type { ComparedDays } from "./link";

/** Held here, as looking a global up is slow in the sandboxed realms a spreadsheet's script runs in. */
const { abs, floor } = Math;

/** Shuffles at most, and as-large ones after which more would change nothing. */
const mostShuffles = 1999;
const enoughAsLarge = 30;

/** Which way of reading performance goes most closely with the item, and how surprising that is. */
export type Closest = {
  /** Place in the groups' streams. */
  readonly stream: number;
  readonly p: number;
};

/**
 * Two-sided permutation p-value of how closely an item goes with performance: the largest, over the
 * ways of reading performance, of |Σ item × performance|/√Σ performance². The same largest is taken
 * of items dealt out anew among the days of one weekday (of one athlete, when several are given), so
 * that looking at each value alone is paid for. Only performance has its drift taken out here: taking
 * it out of both would leave a like ripple in both, which in simulated seasons named a false link
 * nearly twice as often as wanted. The p-value is never zero: the order seen counts as one of the
 * shuffles. When thirty shuffles are as close, dealing stops and p is thirty over the shuffles made
 * (Besag & Clifford 1991, Biometrika 78:301–304; from memory).
 *
 * @param groups with the same streams in the same places
 * @param chance uniform numbers in [0, 1)
 */
export function closestStream(groups: readonly ComparedDays[], chance: () => number): Closest {
  const dealt = groups.map(({ itemCentred }) => Float64Array.from(itemCentred));
  const streams = groups[0]!.streams.map((_, m) => {
    const parts = groups.map(({ streams: own }) => Float64Array.from(own[m]!.beyond));
    const squares = parts.reduce((sum, part) => sum + part.reduce((s, v) => s + v * v, 0), 0);
    return { parts, scale: squares > 0 ? 1 / Math.sqrt(squares) : 0 };
  });
  let best = 0;
  const largest = () => {
    let most = -1;
    for (let m = 0; m < streams.length; m++) {
      const { parts, scale } = streams[m]!;
      let sum = 0;
      for (let g = 0; g < parts.length; g++) {
        const items = dealt[g]!;
        const percents = parts[g]!;
        for (let at = 0; at < items.length; at++) sum += items[at]! * percents[at]!;
      }
      const close = abs(sum) * scale;
      if (close > most) {
        most = close;
        best = m;
      }
    }
    return most;
  };
  const seen = largest() * (1 - 1e-9);
  const stream = best;
  let asLarge = 0;
  for (let shuffle = 1; shuffle <= mostShuffles; shuffle++) {
    for (const [g, { strata }] of groups.entries()) {
      for (const places of strata) deal(dealt[g]!, places, chance);
    }
    if (largest() >= seen) asLarge++;
    if (asLarge >= enoughAsLarge) return { stream, p: asLarge / shuffle };
  }
  return { stream, p: (asLarge + 1) / (mostShuffles + 1) };
}

/** Fisher–Yates among some places. */
function deal(values: Float64Array, places: readonly number[], chance: () => number): void {
  for (let last = places.length - 1; last > 0; last--) {
    const other = floor(chance() * (last + 1));
    const a = places[last]!;
    const b = places[other]!;
    const kept = values[a]!;
    values[a] = values[b]!;
    values[b] = kept;
  }
}
