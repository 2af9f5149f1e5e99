import { type Day, mondayOf } from "../../../coaching/calendar/day";
import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import { type DayText, weekdayOfWord } from "../../value/day-text";
import type { Unit } from "../../value/units";
import { DaySettler } from "../day-settler";
import type { LayoutContext } from "../layout-context";
import { titleYear } from "../title-year";

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

type Found = {
  row: number;
  column: number;
  text: DayText;
  weekdays: readonly { row: number; column: number; weekday: number }[];
};

/** Every header of dates in the tab, top down; empty when dates do not run across. */
export function dateHeaders(context: LayoutContext): DateHeader[] {
  const { cells, end } = context;
  const found: { row: number; lastRow: number; dates: Found[] }[] = [];
  for (let row = 0; row < end; row++) {
    const line = cells[row] ?? [];
    const weeks = weekHeader(context, row);
    if (weeks !== null) {
      found.push({ row, lastRow: row + 1, dates: weeks });
      row++;
      continue;
    }
    const dates: Found[] = [];
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
      dates.map(({ text, weekdays }) => (weekdays.length > 0 ? { ...text, weekday: 0 } : text)),
    ),
    titleYear(context),
    context.today,
    context.dateOrder,
  );
  return found.map((header) => settled(context, header, settler));
}

/** Week labels in one row ("Wk 5 (4/5)"), weekdays below; null when the two rows are not that. */
function weekHeader({ cells }: LayoutContext, row: number): Found[] | null {
  const line = cells[row] ?? [];
  const below = cells[row + 1] ?? [];
  const weeks: (Found & { weekdays: { row: number; column: number; weekday: number }[] })[] = [];
  for (let column = 0; column < Math.max(line.length, below.length); column++) {
    const text = isBlank(line[column]) ? null : weekStart(line[column]);
    if (text !== null) weeks.push({ row, column, text, weekdays: [] });
    const cell = below[column];
    const weekday = typeof cell === "string" ? weekdayOfWord(cell.trim()) : null;
    if (weekday !== null) weeks[weeks.length - 1]?.weekdays.push({ row: row + 1, column, weekday });
  }
  const named = weeks.reduce((sum, week) => sum + week.weekdays.length, 0);
  return weeks.length > 0 && named >= 2 ? weeks : null;
}

/** The Monday a week label gives: "w/c 4/5", "Wk 6  (11/5)", "week of 4 May", or a plain date. */
function weekStart(cell: unknown): DayText | null {
  const plain = dayOfCell(cell);
  if (plain !== null || typeof cell !== "string") return plain;
  const inside = /\(([^()]*\d[^()]*)\)/.exec(cell);
  if (inside !== null) {
    const text = dayOfCell(inside[1] ?? "");
    if (text !== null) return text;
  }
  const after =
    /^(?:w\/?c|week(?: of| commencing)?|wk|woche(?: vom| ab)?|ab)\.?\s+(?:\d{1,2}\s*[:–-]\s*)?(.+)$/i.exec(
      cell.trim(),
    );
  return after === null ? null : dayOfCell((after[1] ?? "").replace(/\*.*$/, ""));
}

function settled(
  context: LayoutContext,
  header: { row: number; lastRow: number; dates: readonly Found[] },
  settler: DaySettler,
): DateHeader {
  const days: DayColumn[] = [];
  const noteColumns: { column: number; monday: Day | null }[] = [];
  const unsettled: DateHeader["unsettled"][number][] = [];
  const { lastRow, fields } = subHeadings(context, header);
  const width = Math.max(...[header.row, lastRow].map((row) => context.cells[row]?.length ?? 0));
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

type SubHeading = { readonly field: string; readonly unit: Unit | null };

/** Meanings named in the row under the dates ("kg", "m/s", "notes"), by column. */
function subHeadings(
  { table, cells }: LayoutContext,
  header: { row: number; lastRow: number; dates: readonly Found[] },
): { lastRow: number; fields: ReadonlyMap<number, SubHeading> } {
  const row = header.lastRow === header.row ? header.row + 1 : header.lastRow;
  const lookup = headingLookup(table);
  const fields = new Map<number, SubHeading>();
  const firstDate = header.dates[0]?.column ?? 0;
  let named = 0;
  (cells[row] ?? []).forEach((cell, column) => {
    if (typeof cell !== "string" || column < firstDate) return;
    const { words, unit } = headerWords(cell);
    const field =
      lookup.get(words) ?? (unit !== null && words === "" ? lookup.get(unit.name) : undefined);
    if (field === undefined) return;
    fields.set(column, { field, unit });
    named++;
  });
  const isHeader = header.lastRow > header.row || named >= 2;
  return isHeader ? { lastRow: row, fields } : { lastRow: header.row, fields: new Map() };
}
