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
  const days = diary.filter(({ soreness }) => soreness !== null);
  if (days.length < leastDays) return null;
  const mean = days.reduce((sum, { soreness }) => sum + (soreness ?? 0), 0) / days.length;
  const recent = days.filter(
    ({ day, soreness }) => day > asOf - recentDays && (soreness ?? 0) >= mean + wellOver,
  );
  const last = recent[recent.length - 1];
  return last ? { day: last.day, value: last.soreness ?? 0 } : null;
}
