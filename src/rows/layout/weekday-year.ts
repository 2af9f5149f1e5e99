import { type Day, dateOfDay, weekdayOfDay } from "../../coaching/calendar/day";
import type { Cells } from "../cells";
import { type DayText, dayFromText, settleDay } from "../value/day-text";
import { isDate } from "../value/is-date";

/** The same dates fall on the same weekdays again after five years at the earliest. */
const yearsBack = 4;

/**
 * The year in which every date of a column falls on the weekday written beside it ("Mon 6 Apr"), this
 * year or one of the four before; null when the column says a year itself, names no weekday, or fits
 * no year throughout. `today` is asked only where weekdays could tell.
 */
export function weekdayYear(
  cells: Cells,
  first: number,
  end: number,
  column: number,
  today: () => Day | null,
): number | null {
  const texts = new Map<string, DayText>();
  for (let row = first; row < end; row++) {
    const cell = cells[row]![column];
    if (isDate(cell)) return null;
    if (typeof cell !== "string" || texts.has(cell)) continue;
    const text = dayFromText(cell);
    if (text === null) continue;
    if (text.year !== null) return null;
    texts.set(cell, text);
  }
  const named = [...texts.values()].filter(({ weekday }) => weekday !== null);
  if (named.length === 0) return null;
  const now = today();
  if (now === null) return null;
  const { year: latest } = dateOfDay(now);
  const fits = (year: number) => named.every((text) => fallsOnItsWeekday(text, year));
  return Array.from({ length: yearsBack + 1 }, (_, back) => latest - back).find(fits) ?? null;
}

function fallsOnItsWeekday(text: DayText, year: number): boolean {
  return (["day first", "month first"] as const).some((order) => {
    const day = settleDay(text, order, year);
    return day !== null && weekdayOfDay(day) === text.weekday;
  });
}
