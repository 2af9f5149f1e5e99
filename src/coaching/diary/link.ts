import type { Day } from "../calendar/day";
import { weekdayOfDay } from "../calendar/day";
import { aroundLevel } from "./around-level";
import type { DiaryItem } from "./diary-item";
import type { PerformanceDay } from "./performance-day";

/** Days of one athlete with both a performance and an item, their slow drift taken out of both. */
export type ComparedDays = {
  readonly days: readonly Day[];
  /** Item as written. */
  readonly item: readonly number[];
  /** Item against its weekday's mean: what is dealt out anew when chance is asked. */
  readonly itemCentred: readonly number[];
  /** Item and performance (percent) beyond their own level around the day and their weekday's mean. */
  readonly itemBeyond: readonly number[];
  readonly percentBeyond: readonly number[];
  /** Days within which values may change places: those of one weekday. */
  readonly strata: readonly (readonly number[])[];
};

/** A weekday needs this many days to have a mean of its own. */
const leastOfWeekday = 4;

/**
 * Lays an item beside the performance of the same days. Both lose their slow drift (a trend in both
 * is not a link), and the mean of their weekday where it has four days or more (hard Tuesdays with
 * short Monday nights are a timetable, not a link).
 */
export function comparedDays(
  performance: readonly PerformanceDay[],
  { values }: DiaryItem,
): ComparedDays {
  const both = performance.filter(({ day }) => values.has(day));
  const item = both.map(({ day }) => values.get(day)!);
  const around = aroundLevel(item);
  const kept = both.flatMap((_, at) => (around[at] ? [at] : []));
  const days = kept.map((at) => both[at]!.day);
  const itemBeyond = kept.map((at) => around[at]!.away);
  const percentBeyond = kept.map((at) => both[at]!.percent);
  const strata = weekdayStrata(days);
  const itemCentred = kept.map((at) => item[at]!);
  for (const places of strata) {
    centre(itemCentred, places);
    centre(itemBeyond, places);
    centre(percentBeyond, places);
  }
  const written = kept.map((at) => item[at]!);
  return { days, item: written, itemCentred, itemBeyond, percentBeyond, strata };
}

/** Places of days by weekday; weekdays with few days are one stratum together. */
function weekdayStrata(days: readonly Day[]): readonly (readonly number[])[] {
  const byWeekday = new Map<number, number[]>();
  for (const [at, day] of days.entries()) {
    const weekday = weekdayOfDay(day);
    byWeekday.set(weekday, [...(byWeekday.get(weekday) ?? []), at]);
  }
  const all = [...byWeekday.values()];
  const large = all.filter((places) => places.length >= leastOfWeekday);
  const small = all.filter((places) => places.length < leastOfWeekday).flat();
  return small.length > 0 ? [...large, small] : large;
}

function centre(values: number[], places: readonly number[]): void {
  const mean = places.reduce((sum, at) => sum + values[at]!, 0) / places.length;
  for (const at of places) values[at]! -= mean;
}

/** How performance goes with an item over compared days. */
export type Slope = {
  /** Percent of performance per unit of the item. */
  readonly perUnit: number;
  readonly error: number;
  readonly freedom: number;
};

/** Least squares through the origin of the centred values; null when the item never differs. */
export function slopeOf({ itemBeyond, percentBeyond, strata }: ComparedDays): Slope | null {
  let squares = 0;
  let product = 0;
  for (const [at, item] of itemBeyond.entries()) {
    squares += item * item;
    product += item * percentBeyond[at]!;
  }
  const freedom = itemBeyond.length - strata.length - 1;
  if (!(squares > 1e-9) || freedom < 1) return null;
  const perUnit = product / squares;
  let rest = 0;
  for (const [at, item] of itemBeyond.entries()) {
    rest += (percentBeyond[at]! - perUnit * item) ** 2;
  }
  return { perUnit, error: Math.sqrt(rest / freedom / squares), freedom };
}
