import { type Day, dayFromDate } from "../../coaching/calendar/day";
import { accept, type Outcome, refuse } from "../../outcome";
import { isBlank } from "../value/blank";
import { dayFromText, settleDay } from "../value/day-text";
import { foundText } from "../value/found-text";
import { isDate } from "../value/is-date";

/**
 * The day a formula is asked about, from its one cell; `name` is the argument's.
 *
 * Refuses `as-of-not-one-cell`, `as-of-missing` (facts `name`), `as-of-not-a-day`, `as-of-no-year` (facts `name`, `found`)
 * and `as-of-ambiguous`, when day and month could be either way round (the same).
 */
export function readDayArgument(cell: unknown, name = "as_of"): Outcome<Day> {
  const cells = Array.isArray(cell) ? cell.flat() : [cell];
  if (cells.length > 1) return refuse("as-of-not-one-cell", { name });
  const [one] = cells;
  if (isBlank(one)) return refuse("as-of-missing", { name });
  const facts = { name, found: foundText(one) };
  if (isDate(one)) {
    const day = dayFromDate(one.getFullYear(), one.getMonth() + 1, one.getDate());
    return day === null ? refuse("as-of-not-a-day", facts) : accept(day);
  }
  const text = typeof one === "string" ? dayFromText(one) : null;
  if (text === null) return refuse("as-of-not-a-day", facts);
  if (text.year === null) return refuse("as-of-no-year", facts);
  const dayFirst = settleDay(text, "day first", text.year);
  const monthFirst = settleDay(text, "month first", text.year);
  if (dayFirst !== null && monthFirst !== null && dayFirst !== monthFirst)
    return refuse("as-of-ambiguous", facts);
  const day = dayFirst ?? monthFirst;
  return day === null ? refuse("as-of-not-a-day", facts) : accept(day);
}
