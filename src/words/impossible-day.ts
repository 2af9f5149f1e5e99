import { dayFromDate, isoFromDay } from "../coaching/calendar/day";
import { dayFromText } from "../rows/value/day-text";
import { monthName } from "./days";

/**
 * "June has 30 days. Type the day it was, such as 2026-06-30.": of a date past the end of its month.
 *
 * @returns null for a text that is no such date
 */
export function impossibleDayWords(found: string): string | null {
  const text = dayFromText(found);
  if (text === null || text.year === null) return null;
  const { pair, year } = text;
  const dates = pair === null ? [[text.month!, text.date!]] : [[pair[1], pair[0]], [...pair]];
  const past = dates.find(
    ([month, date]) => month! >= 1 && month! <= 12 && date! > 28 && date! <= 31,
  );
  if (past === undefined) return null;
  const month = past[0]!;
  const last = lastDate(year, month);
  const end = isoFromDay(dayFromDate(year, month, last)!);
  const of = month === 2 ? ` ${year}` : "";
  return `${monthName(month)}${of} has ${last} days. Type the day it was, such as ${end}.`;
}

const lastDate = (year: number, month: number) =>
  [31, 30, 29, 28].find((date) => dayFromDate(year, month, date) !== null)!;
