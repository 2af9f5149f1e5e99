import { meanOf } from "../../statistics/spread";
import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";

/** Points over the athlete's own usual that are worth asking about (common practice, no source). */
const wellOver = 2;
const recentDays = 2;
const leastDays = 8;

/**
 * Soreness well over the athlete's own usual in the last two days, the latest; null when not.
 *
 * @param diary of one athlete, in order of day
 */
export function highSoreness(
  diary: readonly DiaryDay[],
  asOf: Day,
): { readonly day: Day; readonly value: number } | null {
  const days = diary.flatMap(({ day, soreness }) =>
    soreness === null ? [] : [{ day, value: soreness }],
  );
  if (days.length < leastDays) return null;
  const high = meanOf(days.map(({ value }) => value)) + wellOver;
  const recent = days.filter(({ day, value }) => day > asOf - recentDays && value >= high);
  return recent[recent.length - 1] ?? null;
}
