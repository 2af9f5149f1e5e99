import { type Day, weekdayOfDay } from "../calendar/day";
import { grouped } from "../series/grouped";
import { aroundLevel } from "./around-level";
import type { DiaryItem } from "./diary-item";
import type { PerformanceDay, ValueOfDay } from "./performance-day";

/** Days of one athlete with both a performance and an item, their slow drift taken out of both. */
export type ComparedDays = {
  readonly days: readonly Day[];
  /** Item as written. */
  readonly item: readonly number[];
  /** Item against its weekday's mean: what is dealt out anew when chance is asked. */
  readonly itemCentred: readonly number[];
  /** Item beyond its own level around the day and its weekday's mean. */
  readonly itemBeyond: readonly number[];
  /** Performance likewise: all values together first, then each alone when there are several. */
  readonly streams: readonly Stream[];
  /** Days within which values may change places: those of one weekday. */
  readonly strata: readonly (readonly number[])[];
};

/** One way to read performance over the compared days. */
export type Stream = {
  /** Null for the mean of all values of the day. */
  readonly value: Pick<ValueOfDay, "kind" | "of"> | null;
  /** Percent beyond the level around the day and the weekday's mean; 0 where the value is missing. */
  readonly beyond: readonly number[];
  /** In wobbles, as `PerformanceDay`; null where the value is missing. */
  readonly sizes: readonly (number | null)[];
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
  const strata = weekdayStrata(days);
  const itemCentred = kept.map((at) => item[at]!);
  for (const places of strata) {
    centre(itemCentred, places);
    centre(itemBeyond, places);
  }
  const streams = streamsOf(kept.map((at) => both[at]!)).map((stream) => {
    const beyond = [...stream.beyond];
    for (const places of strata) {
      centre(
        beyond,
        places.filter((at) => stream.sizes[at] !== null),
      );
    }
    return { ...stream, beyond };
  });
  const written = kept.map((at) => item[at]!);
  return { days, item: written, itemCentred, itemBeyond, streams, strata };
}

/** Places of days by weekday; weekdays with few days are one stratum together. */
function weekdayStrata(days: readonly Day[]): readonly (readonly number[])[] {
  const all = [...grouped([...days.keys()], (at) => weekdayOfDay(days[at]!)).values()];
  const large = all.filter((places) => places.length >= leastOfWeekday);
  const small = all.filter((places) => places.length < leastOfWeekday).flat();
  return small.length > 0 ? [...large, small] : large;
}

/** The day's mean, and each value alone when the days have several. */
function streamsOf(days: readonly PerformanceDay[]): readonly Stream[] {
  const together: Stream = {
    value: null,
    beyond: days.map(({ percent }) => percent),
    sizes: days.map(({ size }) => size),
  };
  const values = new Map(
    days.flatMap((day) => day.values).map(({ kind, of }) => [`${kind} ${of}`, { kind, of }]),
  );
  if (values.size < 2) return [together];
  const alone = [...values.values()].map((value): Stream => {
    const own = days.map((day) =>
      day.values.find(({ kind, of }) => kind === value.kind && of === value.of),
    );
    return {
      value,
      beyond: own.map((one) => one?.percent ?? 0),
      sizes: own.map((one) => one?.size ?? null),
    };
  });
  return [together, ...alone];
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

/**
 * Least squares through the origin of the centred values over the days that have the stream's value;
 * null when the item never differs on them.
 */
export function slopeOf({ itemBeyond, strata }: ComparedDays, stream: Stream): Slope | null {
  let squares = 0;
  let product = 0;
  let days = 0;
  for (const [at, item] of itemBeyond.entries()) {
    if (stream.sizes[at] === null) continue;
    days++;
    squares += item * item;
    product += item * stream.beyond[at]!;
  }
  const freedom = days - strata.length - 1;
  if (!(squares > 1e-9) || freedom < 1) return null;
  const perUnit = product / squares;
  let rest = 0;
  for (const [at, item] of itemBeyond.entries()) {
    if (stream.sizes[at] !== null) rest += (stream.beyond[at]! - perUnit * item) ** 2;
  }
  return { perUnit, error: Math.sqrt(rest / freedom / squares), freedom };
}
