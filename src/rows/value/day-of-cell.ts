import { dateOfDay, dayFromDate } from "../../coaching/calendar/day";
import { type DayText, dayFromText } from "./day-text";
import { isDate } from "./is-date";

/** A cell as a day as written: text, or a real date; null when it is neither. */
export function dayOfCell(cell: unknown): DayText | null {
  if (typeof cell === "string") return dayFromText(cell);
  if (!isDate(cell)) return null;
  const day = dayFromDate(cell.getFullYear(), cell.getMonth() + 1, cell.getDate());
  if (day === null) return null;
  return { pair: null, ...dateOfDay(day), weekday: null, dotted: false, minute: null };
}
