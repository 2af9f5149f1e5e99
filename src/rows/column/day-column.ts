import { type Day, isoFromDay } from "../../coaching/calendar/day";
import type { Column } from "../header/column";
import type { TableName } from "../table-name";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { type DayText, settleDay } from "../value/day-text";
import { isDitto } from "../value/ditto";
import { isDate } from "../value/is-date";
import { saysNoValue } from "../value/no-value";
import { cellAbove } from "./above";
import { type DayEvidence, dayEvidence } from "./day-evidence";
import { nearYear } from "./near-year";

/** What a day cell says besides the day. */
export type DayAside = {
  minute: number | null;
  /** The day read last, which tells the year of a date written without one. */
  before: Day | null;
  /** A text that means the same day in every row, and that day. */
  text: string;
  textDay: Day | null;
  /** Last day of the span just read, "12–14 June"; null for a day alone. Not set, a span is no day. */
  last?: Day | null;
};

export const newDayAside = (): DayAside => ({
  minute: null,
  before: null,
  text: "",
  textDay: null,
});

const dayMs = 86_400_000;
/** Plans and spells: what is read of them lies about the day they are read on. */
const liesNear: ReadonlySet<TableName> = new Set(["Availability", "Races"]);
/** Plans and spells without a year lie so near the day they are read on, or they are asked about. */
const nearDays = 150;

/** The year that brings a date nearest today, where it is near and the table's dates may be so told. */
function nearToday(text: DayText, { table, today }: TableView): number | null {
  const now = liesNear.has(table) ? (today?.() ?? null) : null;
  const year = nearYear(text, now, null);
  if (now === null || year === null) return null;
  const ways = [settleDay(text, "day first", year), settleDay(text, "month first", year)];
  return ways.every((day) => day === null || Math.abs(day - now) <= nearDays) ? year : null;
}

const firstYear = 1990;
const lastYear = 2100;

/** Day and, unless it is midnight, minute of a real date; null outside the years that rows can be of. */
export function dayOfDate(
  date: Date,
): { readonly day: Day; readonly minute: number | null } | null {
  const year = date.getFullYear();
  if (year < firstYear || year > lastYear) return null;
  const minute = date.getHours() * 60 + date.getMinutes();
  return {
    day: Date.UTC(year, date.getMonth(), date.getDate()) / dayMs,
    minute: minute === 0 ? null : minute,
  };
}

/**
 * Reader of a column of days: real dates, ISO text, day/month text in the order the column settles.
 * Null where there is none; a needed day that is missing or unreadable is reported with its row:
 * `needed-blank`, `not-a-day`, `day-is-number`, `day-implausible`, `date-order-unsettled`,
 * `year-missing`.
 */
export function dayColumn(
  view: TableView,
  column: Column | undefined,
  needed: boolean,
  aside: DayAside = newDayAside(),
): CellReader<Day | null> {
  if (column === undefined) return () => null;
  const { index, heading } = column;
  const above = cellAbove(view, index);
  let evidence: DayEvidence | null = null;
  let lastTime = Number.NaN;
  let lastDay: Day = 0;
  let lastMinute: number | null = null;
  let carriedDay: Day | null = null;

  const fail = (
    code: string,
    row: number,
    cell: unknown,
    facts: Record<string, string | number> = {},
  ) => {
    view.log.add(code, row, index, cell, { heading, ...facts }, needed);
    return null;
  };

  const fromText = (
    text: DayText,
    { order, year: written }: DayEvidence,
    row: number,
    cell: string,
  ): Day | null => {
    const year =
      text.year ?? nearYear(text, aside.before, written ?? view.year) ?? nearToday(text, view);
    if (year === null) return fail("year-missing", row, cell);
    const dayFirst = settleDay(text, "day first", year);
    const monthFirst = settleDay(text, "month first", year);
    const either = dayFirst ?? monthFirst;
    if (either === null) return fail("not-a-day", row, cell);
    if (dayFirst === null || monthFirst === null || dayFirst === monthFirst) return either;
    if (order === "day first") return dayFirst;
    if (order === "month first") return monthFirst;
    const ways = { either: isoFromDay(dayFirst), or: isoFromDay(monthFirst) };
    return fail("date-order-unsettled", row, cell, ways);
  };

  const ofDate = (date: Date, row: number): Day | null => {
    const time = date.getTime();
    if (time !== lastTime) {
      const read = dayOfDate(date);
      if (read === null) return fail("day-implausible", row, date);
      lastDay = read.day;
      lastMinute = read.minute;
      lastTime = time;
    }
    aside.minute = lastMinute;
    aside.before = lastDay;
    return lastDay;
  };

  const ofNumber = (cell: number, row: number): null => {
    const serial = Number.isFinite(cell) && cell >= 30_000 && cell < 80_000;
    // Day 0 of the spreadsheet's own count is 30 December 1899, 25 569 days before 1970.
    const facts = serial ? { mend: isoFromDay(Math.floor(cell) - 25_569) } : {};
    return fail(serial ? "day-is-number" : "not-a-day", row, cell, facts);
  };

  const ofText = (cell: string, row: number): Day | null => {
    evidence ??= dayEvidence(view, column);
    const span = aside.last === undefined ? undefined : evidence.spans.get(cell);
    const text = span?.[0] ?? evidence.texts.get(cell) ?? null;
    if (text === null) return !needed && saysNoValue(cell) ? null : fail("not-a-day", row, cell);
    const day = fromText(text, evidence, row, cell);
    if (day === null) return null;
    const year = new Date(day * dayMs).getUTCFullYear();
    if (year < firstYear || year > lastYear) return fail("day-implausible", row, cell);
    aside.minute = text.minute;
    aside.before = day;
    if (span?.[1]) {
      const last = fromText(span[1], evidence, row, cell);
      if (last === null) return null;
      if (last < day) return fail("not-a-day", row, cell);
      aside.last = last;
    } else if (text.minute === null && text.year !== null) {
      aside.text = cell;
      aside.textDay = day;
    }
    return day;
  };

  const ofCell = (cell: unknown, row: number): Day | null => {
    aside.minute = null;
    if (isDate(cell)) return ofDate(cell, row);
    if (isBlank(cell) && column.carried === true && carriedDay !== null) return carriedDay;
    if (isBlank(cell)) return needed ? fail("needed-blank", row, cell) : null;
    if (typeof cell === "number") return ofNumber(cell, row);
    if (typeof cell !== "string") return fail("not-a-day", row, cell);
    return isDitto(cell) ? ofCell(above(row), row) : ofText(cell, row);
  };

  const readCell: CellReader<Day | null> = (line, row) => {
    const cell = line[index];
    if (cell === aside.text && aside.textDay !== null) {
      aside.minute = null;
      aside.before = aside.textDay;
      return aside.textDay;
    }
    return ofCell(cell, row);
  };
  return (line, row) => {
    if (aside.last) aside.last = null;
    // An unreadable date must not let the rows below it take an older one.
    carriedDay = readCell(line, row);
    return carriedDay;
  };
}
