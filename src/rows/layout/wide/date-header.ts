import { type Day, mondayOf } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import type { Unit } from "../../value/units";
import { DaySettler } from "../day-settler";
import type { LayoutContext } from "../layout-context";
import { titleYear } from "../title-year";
import { subHeadings } from "./sub-headings";
import { type HeaderDate, weekHeader } from "./week-header";

/** A column of one day; `field` when a second header row names what stands in it. */
export type DayColumn = {
  readonly column: number;
  readonly day: Day;
  readonly field: string | null;
  /** Unit its own heading names; null when it names none. */
  readonly unit: Unit | null;
};

/** A block of rows under one header of dates. */
export type DateHeader = {
  readonly firstRow: number;
  /** The header's last row; data begin below. */
  readonly lastRow: number;
  readonly days: readonly DayColumn[];
  /** Columns of notes, with the Monday of the week they belong to. */
  readonly noteColumns: readonly { readonly column: number; readonly monday: Day | null }[];
  /** Dates that could not be settled, to report. */
  readonly unsettled: readonly {
    readonly row: number;
    readonly column: number;
    readonly code: string;
    readonly facts: Record<string, string | number>;
  }[];
};

/** Every header of dates in the tab, top down; empty when dates do not run across. */
export function dateHeaders(context: LayoutContext): DateHeader[] {
  const { cells, end } = context;
  const found: { row: number; lastRow: number; dates: HeaderDate[] }[] = [];
  for (let row = 0; row < end; row++) {
    const line = cells[row]!;
    const weeks = weekHeader(context, row);
    if (weeks !== null) {
      found.push({ row, lastRow: row + 1, dates: weeks });
      row++;
      continue;
    }
    const dates: HeaderDate[] = [];
    let filled = 0;
    for (let column = 0; column < line.length; column++) {
      if (isBlank(line[column])) continue;
      filled++;
      const text = typeof line[column] === "number" ? null : dayOfCell(line[column]);
      if (text !== null) dates.push({ row, column, text, weekdays: [] });
    }
    if (dates.length >= 2 && 2 * dates.length >= filled) found.push({ row, lastRow: row, dates });
  }
  if (found.length === 0) return [];
  const settler = new DaySettler(
    found.flatMap(({ dates }) =>
      dates.map(({ text, weekdays }) =>
        weekdays.length === 0 ? text : { ...text, weekday: startOf(weekdays) },
      ),
    ),
    titleYear(context),
    context.today,
    context.dateOrder,
  );
  return found.map((header) => settled(context, header, settler));
}

function settled(
  context: LayoutContext,
  header: { row: number; lastRow: number; dates: readonly HeaderDate[] },
  settler: DaySettler,
): DateHeader {
  const days: DayColumn[] = [];
  const noteColumns: { column: number; monday: Day | null }[] = [];
  const unsettled: DateHeader["unsettled"][number][] = [];
  const { lastRow, fields } = subHeadings(context, header);
  const width = Math.max(...[header.row, lastRow].map((row) => context.cells[row]!.length));
  header.dates.forEach((found, at) => {
    const result = settler.settle(
      found.weekdays.length > 0 ? { ...found.text, weekday: null } : found.text,
    );
    const until = header.dates[at + 1]?.column ?? width;
    if (!("day" in result)) {
      unsettled.push({ row: found.row, column: found.column, ...result });
      return;
    }
    const monday = found.weekdays.length > 0 ? mondayOf(result.day) : result.day;
    for (const { column, weekday } of found.weekdays)
      days.push({ column, day: monday + weekday, field: null, unit: null });
    if (found.weekdays.length === 0 && lastRow === header.row)
      days.push({ column: found.column, day: result.day, field: null, unit: null });
    for (let column = found.column; column < until; column++) {
      const { field, unit = null } = fields.get(column) ?? {};
      if (field === "note") noteColumns.push({ column, monday: mondayOf(result.day) });
      else if (field !== undefined && found.weekdays.length === 0)
        days.push({ column, day: result.day, field, unit });
    }
  });
  return { firstRow: header.row, lastRow, days, noteColumns, unsettled };
}

/** A date over one weekday is that day; over several it is the week's Monday. */
function startOf(weekdays: HeaderDate["weekdays"]): number {
  return weekdays.length === 1 ? weekdays[0]!.weekday : 0;
}
