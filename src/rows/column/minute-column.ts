import type { Column } from "../header/column";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { isDate } from "../value/is-date";
import { minuteOfDay } from "../value/minute-of-day";
import { cellAbove } from "./above";
import { saysNoFigure } from "./no-figure";

/** Reader of a column of times of day, minutes after midnight; reports `not-a-time`. */
export function minuteColumn(
  view: TableView,
  column: Column | undefined,
): CellReader<number | null> {
  if (column === undefined) return () => null;
  const { index, heading } = column;
  const above = cellAbove(view, index);
  const read = (cell: unknown, row: number): number | null => {
    if (isBlank(cell)) return null;
    const minute = minuteOfDay(cell) ?? fourFigures(cell);
    if (minute !== null) return minute;
    if (isDitto(cell)) return read(above(row), row);
    // "am" and "pm" say a half of the day, no minute; neither is a slip.
    if (typeof cell === "string" && /^(am|pm)$/i.test(cell.trim())) return null;
    if (typeof cell === "string" && saysNoFigure(view, row, index, cell)) return null;
    view.log.add("not-a-time", row, index, cell, { heading });
    return null;
  };
  return (line, row) => read(line[index], row);
}

/** "0930", and 930 once the spreadsheet has made a number of it: in a column of times nothing else. */
function fourFigures(cell: unknown): number | null {
  const parts = /^\s*([01]?\d|2[0-3])([0-5]\d)\s*(?:h|hrs|uhr)?\s*$/i.exec(String(cell));
  return parts === null ? null : Number(parts[1]) * 60 + Number(parts[2]);
}

/**
 * Reader of a column of hours or minutes that may be written as a length: 7.5, "7:30", "7h30",
 * "1:05:00", or a time cell. In hours or in minutes, as `unit` says. Reports `not-a-number`,
 * `implausible` and, when "5:30" could be either, `length-unsettled`.
 */
export function lengthColumn(
  view: TableView,
  column: Column | undefined,
  unit: "h" | "min",
  bounds: { readonly low: number; readonly high: number },
): CellReader<number | null> {
  if (column === undefined) return () => null;
  const { index, heading } = column;
  const named = column.unit?.quantity === "time" ? column.unit : null;
  // Numbers are in the heading's unit, else in the unit the column is about.
  const toUnit = named === null ? 1 : named.times / named.per / (unit === "h" ? 3600 : 60);
  const fits = (value: number) => value >= bounds.low && value <= bounds.high;
  const fromMinutes = (minutes: number) => (unit === "h" ? minutes / 60 : minutes);
  const judged = (value: number, cell: unknown, row: number): number | null => {
    if (fits(value)) return value;
    // 75 hours of sleep is 7.5 with its point forgotten; minutes have no such usual range.
    const slept = typeof cell === "number" && value >= 30 && value <= 120;
    view.log.add("implausible", row, index, cell, {
      ...bounds,
      unit,
      heading,
      ...(slept ? { mend: cell / 10 } : {}),
    });
    return null;
  };
  const above = cellAbove(view, index);
  const read = (cell: unknown, row: number): number | null => {
    if (cell === "" || isBlank(cell) || cell === false) return null;
    if (isDitto(cell)) return read(above(row), row);
    if (typeof cell === "number" && Number.isFinite(cell)) return judged(cell * toUnit, cell, row);
    if (isDate(cell)) {
      const minutes = cell.getHours() * 60 + cell.getMinutes() + cell.getSeconds() / 60;
      return cell.getFullYear() < 1910
        ? judged(fromMinutes(minutes), cell, row)
        : judged(Number.NaN, cell, row);
    }
    const text = typeof cell === "string" ? cell.trim() : "";
    if (saysNoFigure(view, row, index, text)) return null;
    return ofText(text, cell, row);
  };

  const ofText = (text: string, cell: unknown, row: number): number | null => {
    const clock = clockMinutes(text);
    if (clock !== null) return judged(fromMinutes(clock), cell, row);
    const pair = /^(\d{1,3}):(\d{2})$/.exec(text);
    if (pair) return ofPair(Number(pair[1]), Number(pair[2]), cell, row);
    const number = /^(\d+(?:[.,]\d+)?)\s*(h|hrs?|hours|std|min|mins|minutes|minuten|m|')?$/i.exec(
      text,
    );
    if (number) {
      const value = asNumber(number[1]!);
      const said = number[2]?.toLowerCase();
      if (said === undefined) return judged(value * toUnit, cell, row);
      return judged(fromMinutes(/h|std/.test(said) ? value * 60 : value), cell, row);
    }
    const unsure = /^(\d+(?:[.,]\d+)?)\s*\?+$/.exec(text);
    if (unsure) view.log.add("unsure", row, index, cell, { mend: asNumber(unsure[1]!), heading });
    else view.log.add("not-a-number", row, index, cell, { heading });
    return null;
  };

  /** "1:10" and "45:00": hours and minutes, or minutes and seconds. */
  const ofPair = (first: number, second: number, cell: unknown, row: number): number | null => {
    const asHours = fromMinutes(first * 60 + second);
    if (unit === "h") return judged(asHours, cell, row);
    // No run lasts ten hours or under five minutes; in between it has to be asked.
    if (first >= 10) return judged(fromMinutes(first + second / 60), cell, row);
    if (first < 5) return judged(asHours, cell, row);
    view.log.add("length-unsettled", row, index, cell, { heading });
    return null;
  };

  return (line, row) => read(line[index], row);
}

const asNumber = (text: string) => Number(text.replace(",", "."));

/** Minutes of "1:10:00" and "1 h 10"; null for any other words. */
function clockMinutes(text: string): number | null {
  const long = /^(\d{1,2}):(\d{2}):(\d{2})$/.exec(text);
  if (long) return Number(long[1]) * 60 + Number(long[2]) + Number(long[3]) / 60;
  const hours = /^(\d{1,2})\s*h\s*(\d{2})\s*(?:m|min)?$/i.exec(text);
  return hours ? Number(hours[1]) * 60 + Number(hours[2]) : null;
}
