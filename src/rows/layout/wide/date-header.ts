import { type Day, mondayOf } from "../../../coaching/calendar/day";
import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
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
  /** The lift its own heading names. */
  readonly exercise?: string;
};

/** A block of rows under one header of dates. */
export type DateHeader = {
  readonly firstRow: number;
  /** The header's last row; data begin below. */
  readonly lastRow: number;
  /** Columns that a date heads, up to the next heading beside it; false where it cannot be told. */
  readonly under: ReadonlyMap<number, boolean>;
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
  const { table, cells, end } = context;
  const lookup = headingLookup(table);
  const found: { row: number; lastRow: number; dates: HeaderDate[] }[] = [];
  for (let row = 0; row < end; row++) {
    const line = cells[row]!;
    const weeks = weekHeader(context, row);
    if (weeks !== null) {
      const lastRow = Math.max(...weeks.flatMap((week) => week.weekdays.map((one) => one.row)));
      found.push({ row, lastRow, dates: weeks });
      row = lastRow;
      continue;
    }
    const dates: HeaderDate[] = [];
    // In a row that heads names, of what stands left of the first date only the name counts.
    let headsNames = false;
    let filled = 0;
    for (let column = 0; column < line.length; column++) {
      if (isBlank(line[column])) continue;
      filled++;
      if (lookup.get(headerWords(line[column]).words) === "athlete") headsNames = true;
      const text = dayOfCell(line[column]);
      // "80/85" is no date whichever comes first.
      const none = text?.pair && text.year === null && Math.min(...text.pair) > 12;
      if (text === null || none) continue;
      if (dates.length === 0 && headsNames) filled = 2;
      dates.push({ row, column, text, weekdays: [] });
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
  const unsettled: DateHeader["unsettled"][number][] = [];
  const { lastRow, fields, others } = subHeadings(context, header);
  const width = Math.max(...[header.row, lastRow].map((row) => context.cells[row]!.length));
  const under = new Map<number, boolean>();
  const line = context.cells[header.row]!;
  const noteColumns = [...fields.keys()]
    .filter((column) => column < header.dates[0]!.column)
    .map((column): DateHeader["noteColumns"][number] => ({ column, monday: null }));
  // With nothing but notes named beside them, figures stand under the dates themselves.
  const bare =
    header.lastRow === header.row && [...fields.values()].every(({ field }) => field === "note");
  header.dates.forEach((found, at) => {
    const result = settler.settle(found.text);
    const day = "day" in result ? result.day : null;
    if (!("day" in result)) unsettled.push({ row: found.row, column: found.column, ...result });
    const inWeek = found.weekdays.length > 0;
    if (day !== null && bare && !inWeek && !fields.has(found.column) && !others.has(found.column))
      days.push({ column: found.column, day, field: null, unit: null });
    const sunday = day !== null && found.weekdays[0]?.weekday === -1 && mondayOf(day) + 6 === day;
    if (day !== null)
      for (const { column, weekday } of found.weekdays)
        days.push({
          column,
          day: (sunday ? day + 1 : mondayOf(day)) + weekday,
          field: null,
          unit: null,
        });
    const next = header.dates[at + 1]?.column ?? width;
    let headed = true;
    for (let column = found.column; column < next; column++) {
      headed &&= column === found.column || isBlank(line[column]);
      if (headed) under.set(column, day !== null);
      const { field, unit = null, exercise } = fields.get(column) ?? {};
      if (day !== null && field === "note") noteColumns.push({ column, monday: mondayOf(day) });
      else if (day !== null && headed && field !== undefined && !inWeek)
        days.push({ column, day, field, unit, ...(exercise && { exercise }) });
    }
  });
  return { firstRow: header.row, lastRow, under, days, noteColumns, unsettled };
}

/** A date over one weekday is that day; over several it is the week's Monday, or the Sunday it begins with. */
function startOf(weekdays: HeaderDate["weekdays"]): number {
  const [first, second] = weekdays;
  if (second === undefined) return first!.weekday;
  return first!.weekday === -1 ? 6 : 0;
}
