import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import type { DayText } from "../../value/day-text";
import type { LayoutContext } from "../layout-context";
import { type HeaderDate, weekHeader } from "./week-header";

/** A header of dates as it stands in the tab, its days not settled yet. */
export type FoundHeader = {
  readonly row: number;
  /** The last row with weekdays of the weeks it heads; its own where it heads days. */
  readonly lastRow: number;
  readonly dates: readonly HeaderDate[];
};

/** Every header of dates in the tab, top down: of weeks with their weekdays, or of days. */
export function foundHeaders(context: LayoutContext): readonly FoundHeader[] {
  const found: FoundHeader[] = [];
  for (let row = 0; row < context.end; row++) {
    const header = weeksIn(context, row) ?? daysIn(context, row);
    if (header === null) continue;
    found.push(header);
    row = header.lastRow;
  }
  return found;
}

function weeksIn(context: LayoutContext, row: number): FoundHeader | null {
  const dates = weekHeader(context, row);
  if (dates === null) return null;
  const weekdayRows = dates.flatMap(({ weekdays }) => weekdays.map((weekday) => weekday.row));
  return { row, lastRow: Math.max(...weekdayRows), dates };
}

/** At least two dates, and half of what stands in the row. */
function daysIn({ table, cells }: LayoutContext, row: number): FoundHeader | null {
  const line = cells[row]!;
  const lookup = headingLookup(table);
  const dates: HeaderDate[] = [];
  // In a row that heads names, of what stands left of the first date only the name counts.
  let headsNames = false;
  let filled = 0;
  for (let column = 0; column < line.length; column++) {
    const cell = line[column];
    if (isBlank(cell)) continue;
    filled++;
    headsNames ||= lookup.get(headerWords(cell).words) === "athlete";
    const text = dateIn(cell);
    if (text === null) continue;
    if (dates.length === 0 && headsNames) filled = 2;
    dates.push({ row, column, text, weekdays: [] });
  }
  return dates.length >= 2 && 2 * dates.length >= filled ? { row, lastRow: row, dates } : null;
}

/** "80/85" is no date whichever comes first. */
function dateIn(cell: unknown): DayText | null {
  const text = dayOfCell(cell);
  return text?.pair && text.year === null && Math.min(...text.pair) > 12 ? null : text;
}
