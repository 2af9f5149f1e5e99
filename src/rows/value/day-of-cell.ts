import { type DayText, dayFromText } from "./day-text";
import { isDate } from "./is-date";

/** A cell as a day as written: text, or a real date; null when it is neither, as a time is. */
export function dayOfCell(cell: unknown): DayText | null {
  if (typeof cell === "string") return dayFromText(cell);
  // A time alone is handed over as of 30 December 1899, the spreadsheet's day 0.
  if (!isDate(cell) || cell.getFullYear() < 1900) return null;
  const [year, month, date] = [cell.getFullYear(), cell.getMonth() + 1, cell.getDate()];
  return { pair: null, year, month, date, weekday: null, dotted: false, minute: null };
}
