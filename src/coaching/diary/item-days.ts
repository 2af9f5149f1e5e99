import { meanOf } from "../../statistics/spread";
import { moreIsWorse } from "../readiness/readiness-settings";
import type { DiaryItem } from "./diary-item";
import { leastDays, leastWith, oddSize } from "./finding";
import { type ComparedDays, comparedDays } from "./link";
import type { PerformanceDay } from "./performance-day";

/** An item's days, counted: how many there are, how many have it, how many of those were odd. */
export type ItemDays = {
  readonly item: DiaryItem;
  readonly compared: ComparedDays;
  readonly verdict: "compare" | "always the same" | "not enough days";
  readonly border: number | null;
  readonly side: "under" | "over" | null;
  readonly daysWith: number;
  /** Odd days by one way of reading performance. */
  readonly count: (
    odd: "slow" | "good",
    stream: number,
  ) => {
    readonly oddDays: number;
    readonly oddDaysWith: number;
    readonly otherDays: number;
    readonly otherDaysWith: number;
  };
};

/** Lays one item's days out and says whether there are enough of them to compare. */
export function itemDays(performance: readonly PerformanceDay[], item: DiaryItem): ItemDays {
  const compared = comparedDays(performance, item);
  const { side, border } = item.kind === "amount" ? borderOf(item) : { side: null, border: null };
  const has = (value: number) =>
    border === null ? value > 0 : side === "under" ? value < border : value > border;
  const having = compared.item.map(has);
  const daysWith = having.filter(Boolean).length;
  return {
    item,
    compared,
    border,
    side,
    daysWith,
    verdict: verdictOf(compared),
    count: (odd, stream) => {
      const { sizes } = compared.streams[stream]!;
      const isOdd = sizes.map((size) => (odd === "slow" ? -(size ?? 0) : (size ?? 0)) >= oddSize);
      const known = sizes.filter((size) => size !== null).length;
      const oddDays = isOdd.filter(Boolean).length;
      const oddDaysWith = isOdd.filter((is, at) => is && having[at]).length;
      const knownWith = sizes.filter((size, at) => size !== null && having[at]).length;
      return {
        oddDays,
        oddDaysWith,
        otherDays: known - oddDays,
        otherDaysWith: knownWith - oddDaysWith,
      };
    },
  };
}

function verdictOf({ item }: ComparedDays): ItemDays["verdict"] {
  const different = new Set(item).size;
  if (item.length >= leastDays && different === 1) return "always the same";
  if (item.length < leastDays) return "not enough days";
  // One odd value alone decides nothing, whatever the other days say; nor do a few yeses or noes.
  const commonest = Math.max(...[...new Set(item)].map((v) => item.filter((i) => i === v).length));
  return item.length - commonest < leastWith ? "not enough days" : "compare";
}

/** One spread of the athlete's own days beyond their mean, on the side where more care is due. */
function borderOf({ key, values }: DiaryItem): { side: "under" | "over"; border: number } {
  const all = [...values.values()];
  const mean = meanOf(all);
  const squares = all.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const sd = all.length > 1 ? Math.sqrt(squares / (all.length - 1)) : 0;
  const over = moreIsWorse.has(key) || key === "run the day before";
  return { side: over ? "over" : "under", border: over ? mean + sd : mean - sd };
}
