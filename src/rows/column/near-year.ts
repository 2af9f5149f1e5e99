import { type Day, dateOfDay, dayFromDate } from "../../coaching/calendar/day";
import type { DayText } from "../value/day-text";

/** The year that brings a date nearest the one read before it; otherwise the column's own. */
export function nearYear(text: DayText, before: Day | null, year: number | null): number | null {
  if (before === null) return year;
  const around = dateOfDay(before).year;
  const [first, second] = text.pair ?? [text.date!, text.month!];
  const month = second <= 12 ? second : first;
  const date = second <= 12 ? first : second;
  let best = around;
  let nearest = Number.POSITIVE_INFINITY;
  for (const candidate of [around - 1, around, around + 1]) {
    const day = dayFromDate(candidate, month, Math.min(date, 28));
    if (day !== null && Math.abs(day - before) < nearest) {
      nearest = Math.abs(day - before);
      best = candidate;
    }
  }
  return best;
}
