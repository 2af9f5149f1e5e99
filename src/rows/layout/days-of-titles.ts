import { type Day, dateOfDay, mondayOf, weekdayOfDay } from "../../coaching/calendar/day";
import type { Cells } from "../cells";
import { headerWords } from "../header/header-words";
import { headingLookup } from "../header/recognise-header";
import { rowsSearched } from "../header/rows-searched";
import { sampleColumn } from "../header/value-fit";
import type { TableName } from "../table-name";
import type { ReadOptions } from "../understanding/read-options";
import { isBlank } from "../value/blank";
import { dayOfCell } from "../value/day-of-cell";
import { type DayText, weekdayOfWord } from "../value/day-text";
import { DaySettler } from "./day-settler";
import { titleYear } from "./title-year";
import { weekStart } from "./wide/week-header";

/** What a title says of the days below it: the week they are in, the first of some days, or the month. */
type Span =
  | { readonly is: "week"; readonly text: DayText }
  | { readonly is: "days"; readonly text: DayText }
  | { readonly is: "month"; readonly text: DayText };

/**
 * The cells with weekdays ("Tue") and days of a month (14) of the column of days made whole days by the
 * week or the month that the tab's name or a line above them gives; the same cells where none does.
 */
export function daysOfTitles(table: TableName, cells: Cells, options: ReadOptions): Cells {
  const place = columnOfParts(table, cells);
  if (place === null) return cells;
  const spans = cells.map((line, row) => {
    if (row < place.row) return spanIn(line);
    // Among the rows a title begins the line; a note of some days is none.
    const first = line.findIndex((cell) => !isBlank(cell));
    return alone(line) && first <= place.column ? spanOf(line[first]) : null;
  });
  const { title = "" } = options;
  const ofTab = spanOf(title);
  const all = [ofTab, ...spans].flatMap((span) => span?.text ?? []);
  if (all.length === 0) return cells;
  const year = titleYear({ cells, end: cells.length, title });
  const settler = new DaySettler(all, year, options.today ?? null);
  let span = ofTab;
  return cells.map((line, row) => {
    span = spans[row] ?? span;
    // The title has said what it says, and is no row.
    if (row > place.row && spans[row] !== null) return line.map(() => "");
    const day = row > place.row && span !== null ? dayIn(span, line[place.column], settler) : null;
    if (day === null) return line;
    const one = [...line];
    const { year: inYear, month, date } = dateOfDay(day);
    one[place.column] = new Date(inYear, month - 1, date);
    return one;
  });
}

/** The column of days, where what stands in it is mostly no whole day. */
function columnOfParts(table: TableName, cells: Cells): { row: number; column: number } | null {
  const lookup = headingLookup(table);
  for (let row = 0; row < Math.min(cells.length, rowsSearched); row++) {
    const line = cells[row]!;
    const column = line.findIndex((cell) => lookup.get(headerWords(cell).words) === "day");
    if (column < 0 || line.filter((cell) => !isBlank(cell)).length < 3) continue;
    const sample = sampleColumn(cells, row + 1, cells.length, column);
    const whole = sample.filter((cell) => dayOfCell(cell) !== null).length;
    // "Day 1, Day 2" may be the first and second session of a plan; the 14th is none.
    const numbers = sample.filter(isDate).map(Number);
    const sessions = /^(?:day|tag)$/.test(headerWords(line[column]).words);
    if (sessions && numbers.length > 0 && Math.max(...numbers) <= 7) return null;
    return sample.filter(isPart).length > whole ? { row, column } : null;
  }
  return null;
}

const isDate = (cell: unknown) =>
  Number.isInteger(Number(cell)) && Number(cell) >= 1 && Number(cell) <= 31;

function isPart(cell: unknown): boolean {
  return (typeof cell === "string" && weekdayOfWord(cell.trim()) !== null) || isDate(cell);
}

const alone = (line: readonly unknown[]) => line.filter((cell) => !isBlank(cell)).length <= 2;

function spanIn(line: readonly unknown[]): Span | null {
  for (const cell of line) {
    const span = spanOf(cell);
    if (span !== null) return span;
  }
  return null;
}

const range =
  /(\d{1,2})\.?\s*(\p{L}{3,})?\s*(?:[–—-]|to|bis|au|al)\s*\d{1,2}\.?\s*(\p{L}{3,})\.?\s*(\d{4})?/u;

function spanOf(cell: unknown): Span | null {
  if (typeof cell !== "string") return null;
  const days = range.exec(cell);
  const first =
    days === null ? null : dayOfCell(`${days[1]} ${days[2] ?? days[3]} ${days[4] ?? ""}`.trim());
  if (first !== null) return { is: "days", text: first };
  const week = dayOfCell(cell) === null ? weekStart(cell) : null;
  if (week !== null) return { is: "week", text: week };
  const month = dayOfCell(`1 ${cell.trim()}`);
  return month === null || /\d[^\d]+\d/.test(cell) ? null : { is: "month", text: month };
}

function dayIn(span: Span, cell: unknown, settler: DaySettler): Day | null {
  if (isBlank(cell)) return null;
  const found = settler.settle(span.text);
  if (!("day" in found)) return null;
  if (span.is === "month") {
    const day = isDate(cell) ? found.day + Number(cell) - 1 : null;
    return day !== null && dateOfDay(day).month === dateOfDay(found.day).month ? day : null;
  }
  const weekday = typeof cell === "string" ? weekdayOfWord(cell.trim()) : null;
  if (weekday === null) return null;
  // "6 to 12 May" begins on its Wednesday, and a week on Sunday with it.
  const starts = weekdayOfDay(found.day);
  const fromFirst = span.is === "days" || starts === 6;
  return fromFirst ? found.day + ((weekday - starts + 7) % 7) : mondayOf(found.day) + weekday;
}
