/**
 * A calendar day, as whole days since 1 January 1970. Plain integers sort, subtract and travel as
 * JSON; no time zone is involved. ISO 8601 is the written form.
 */
export type Day = number;

const dayMs = 86_400_000;

/** The day of a proleptic Gregorian date; `month` counts from 1. Null when there is no such date. */
export function dayFromDate(year: number, month: number, date: number): Day | null {
  const ms = Date.UTC(year, month - 1, date);
  const back = new Date(ms);
  const same =
    back.getUTCFullYear() === year &&
    back.getUTCMonth() === month - 1 &&
    back.getUTCDate() === date;
  return same ? ms / dayMs : null;
}

/** The day written `2026-05-12`; null for anything else. */
export function dayFromIso(text: string): Day | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  return parts ? dayFromDate(Number(parts[1]), Number(parts[2]), Number(parts[3])) : null;
}

/** `2026-05-12`. */
export function isoFromDay(day: Day): string {
  return new Date(day * dayMs).toISOString().slice(0, 10);
}

/** Year, month (1–12), date of the month. */
export function dateOfDay(day: Day): { year: number; month: number; date: number } {
  const at = new Date(day * dayMs);
  return { year: at.getUTCFullYear(), month: at.getUTCMonth() + 1, date: at.getUTCDate() };
}

/** 0 Monday … 6 Sunday (1 January 1970 was a Thursday). */
export function weekdayOfDay(day: Day): number {
  return (((day + 3) % 7) + 7) % 7;
}

/** The Monday of the week this day is in. */
export function mondayOf(day: Day): Day {
  return day - weekdayOfDay(day);
}
