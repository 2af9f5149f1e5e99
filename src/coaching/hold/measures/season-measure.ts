import type { Day } from "../../calendar/day";
import type { HoldNote, MeasureKind } from "../season-hold";

/** One value of one athlete over a season, in percent that add up, and the way back to its own unit. */
export type SeasonMeasure = {
  readonly kind: MeasureKind;
  /** The lift or test as the coach writes it. */
  readonly of: string;
  /** Percent by day; only differences between them mean something. More is better. */
  readonly percents: ReadonlyMap<Day, number>;
  /** Readings of earlier seasons on the same scale, in runs without a long gap, for the wobble. */
  readonly earlier: readonly (readonly number[])[];
  /** Percent that an uncertain slope adds at each day's load; null when loads play no part. */
  readonly loadErrors: ReadonlyMap<Day, number> | null;
  /** Step that the value is read in (plate stacks), percent; 0 for none. */
  readonly stepPercent: number;
  /** A level on the percent scale, in m/s, cm or s. */
  readonly valueAt: (percent: number) => number;
  /** A difference on the scale as plain percent of the baseline. */
  readonly plainPercent: (difference: number) => number;
  readonly notes: readonly HoldNote[];
};

/** Days of the season a measure is made for. */
export type SeasonDays = {
  readonly from: Day;
  readonly baselineTo: Day;
};

/** Readings a value's baseline needs. */
const leastReadings = 3;

/**
 * The baseline of a value that is taken less often than the athlete trains: when the season's
 * baseline holds fewer than three of its readings, its own runs on to the third.
 *
 * @param days days with a reading from the season's start on, in order
 */
export function stretchedBaseline(days: readonly Day[], given: SeasonDays): SeasonDays {
  const third = days[leastReadings - 1] ?? given.baselineTo;
  return { ...given, baselineTo: Math.max(third, given.baselineTo) };
}

/** Values worth a percent scale of their own: 100·ln, so that equal ratios are equal steps. */
export function logScale(lessIsBetter = false) {
  const sign = lessIsBetter ? -1 : 1;
  return {
    percentOf: (value: number) => sign * 100 * Math.log(value),
    valueAt: (percent: number) => Math.exp((sign * percent) / 100),
    plainPercent: (difference: number) => 100 * Math.expm1(difference / 100),
  };
}

/** The value most often seen, the earlier one of two seen equally often; undefined of an empty list. */
export function commonest<Value>(values: Iterable<Value>): Value | undefined {
  const counts = new Map<Value, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let most: Value | undefined;
  for (const [value, count] of counts) {
    if (most === undefined || count > counts.get(most)!) most = value;
  }
  return most;
}
