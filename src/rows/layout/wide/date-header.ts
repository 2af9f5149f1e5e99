import { type Day, mondayOf } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import type { Unit } from "../../value/units";
import { DaySettler } from "../day-settler";
import type { LayoutContext } from "../layout-context";
import { titleYear } from "../title-year";
import { type FoundHeader, foundHeaders } from "./found-header";
import { type SubHeading, subHeadings } from "./sub-headings";
import type { HeaderDate } from "./week-header";

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
  const found = foundHeaders(context);
  if (found.length === 0) return [];
  const texts = found.flatMap(({ dates }) =>
    dates.map(({ text, weekdays }) =>
      weekdays.length === 0 ? text : { ...text, weekday: startOf(weekdays) },
    ),
  );
  const settler = new DaySettler(texts, titleYear(context), context.today, context.dateOrder);
  return found.map((header) => settled(context, header, settler));
}

function settled(context: LayoutContext, header: FoundHeader, settler: DaySettler): DateHeader {
  const { lastRow, fields, others } = subHeadings(context, header);
  const dates = settledDates(context, header, lastRow, settler);
  const atDay = dates.filter(isAtDay);
  // With nothing but notes and more of the same named beside them, figures stand under the dates themselves.
  const bare =
    header.lastRow === header.row &&
    [...fields.values()].every(({ field }) => field === "note" || field === null);
  const isNote = (column: number) => fields.get(column)?.field === "note";
  return {
    firstRow: header.row,
    lastRow,
    under: new Map(
      dates.flatMap(({ headed, day }) => headed.map((column) => [column, day !== null] as const)),
    ),
    days: atDay.flatMap((date) =>
      date.weekdays.length > 0
        ? weekdayColumns(date)
        : dayColumns(date, fields, bare && !others.has(date.column)),
    ),
    noteColumns: [
      ...[...fields.keys()]
        .filter((column) => column < header.dates[0]!.column)
        .map((column) => ({ column, monday: null })),
      ...atDay.flatMap(({ columns, day }) =>
        columns.filter(isNote).map((column) => ({ column, monday: mondayOf(day) })),
      ),
    ],
    unsettled: dates.flatMap(({ row, column, problem }) =>
      problem === null ? [] : [{ row, column, ...problem }],
    ),
  };
}

/** A date of a header with its day, or why it has none, and the columns up to the next date. */
type SettledDate = HeaderDate & {
  readonly day: Day | null;
  readonly problem: {
    readonly code: string;
    readonly facts: Record<string, string | number>;
  } | null;
  readonly columns: readonly number[];
  /** Of these the ones up to the next heading beside it. */
  readonly headed: readonly number[];
};

const isAtDay = (date: SettledDate): date is SettledDate & { readonly day: Day } =>
  date.day !== null;

function settledDates(
  { cells }: LayoutContext,
  { row, dates }: FoundHeader,
  lastRow: number,
  settler: DaySettler,
): readonly SettledDate[] {
  const line = cells[row]!;
  const width = Math.max(line.length, cells[lastRow]!.length);
  return dates.map((date, at) => {
    const { column, text } = date;
    const result = settler.settle(text);
    const end = dates[at + 1]?.column ?? width;
    const columns = Array.from({ length: end - column }, (_, beside) => column + beside);
    const next = columns.findIndex((other) => other > column && !isBlank(line[other]));
    return {
      ...date,
      ...("day" in result ? { day: result.day, problem: null } : { day: null, problem: result }),
      columns,
      headed: next < 0 ? columns : columns.slice(0, next),
    };
  });
}

/** A week's columns, one a weekday, counted from its Monday, or from the Sunday that its label names. */
function weekdayColumns({ day, weekdays }: { day: Day } & HeaderDate): readonly DayColumn[] {
  const monday = mondayOf(day);
  const isSunday = weekdays[0]?.weekday === -1 && monday + 6 === day;
  const from = isSunday ? day + 1 : monday;
  return weekdays.map(({ column, weekday }) => ({
    column,
    day: from + weekday,
    field: null,
    unit: null,
  }));
}

/** A day's columns: its own, or those whose heading under the date names a figure. */
function dayColumns(
  { day, column: own, headed }: SettledDate & { readonly day: Day },
  fields: ReadonlyMap<number, SubHeading>,
  bare: boolean,
): readonly DayColumn[] {
  const figures = headed.flatMap((column): DayColumn[] => {
    const named = fields.get(column);
    return named === undefined || named.field === "note" ? [] : [{ column, day, ...named }];
  });
  const itself = { column: own, day, field: null, unit: null };
  return bare && !fields.has(own) ? [itself, ...figures] : figures;
}

/** A date over one weekday is that day; over several it is the week's Monday, or the Sunday it begins with. */
function startOf(weekdays: HeaderDate["weekdays"]): number {
  const [first, second] = weekdays;
  if (second === undefined) return first!.weekday;
  return first!.weekday === -1 ? 6 : 0;
}
