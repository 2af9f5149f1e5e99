import { type Day, dateOfDay, dayFromDate, dayFromIso } from "../../coaching/calendar/day";
import type { Cells } from "../../rows/cells";
import type { RowIssue } from "../../rows/reading";
import { isDate } from "../../rows/value/is-date";

/**
 * Whether a day is asked about, as the only one on its weekday, though the Next week tab had it so: a
 * race that moves the gym to a Monday is no slip of the finger.
 *
 * @param weekTab cells of that tab
 */
export function askedOfPlan(weekTab: Cells): (issue: RowIssue) => boolean {
  const planned = new Set(weekTab.flat().flatMap((cell) => (isDate(cell) ? dayOf(cell) : [])));
  return ({ code, facts }) => code === "weekday-questioned" && planned.has(swapped(facts.mend));
}

const dayOf = (date: Date) => dayFromDate(date.getFullYear(), date.getMonth() + 1, date.getDate());

/** The day as it stands, from what it would be with day and month swapped. */
function swapped(mend: string | number | undefined): Day | null {
  const day = dayFromIso(String(mend));
  if (day === null) return null;
  const { year, month, date } = dateOfDay(day);
  return dayFromDate(year, date, month);
}
