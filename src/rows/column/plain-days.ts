import type { Day } from "../../coaching/calendar/day";
import { isDate } from "../value/is-date";
import { type DayAside, dayOfDate } from "./day-column";

/** A column of days, for real dates without a time and for the text read last, if it needs no other cell. */
export class PlainDays {
  private time = Number.NaN;
  private day: Day | null = null;

  constructor(
    private readonly index: number,
    private readonly aside: DayAside,
  ) {}

  /** The row's day, null when its cell has to be read with care. */
  of(line: readonly unknown[]): Day | null {
    const cell = line[this.index];
    if (typeof cell === "string")
      return cell === this.aside.text ? this.said(this.aside.textDay) : null;
    if (!isDate(cell)) return null;
    const time = cell.getTime();
    if (time !== this.time) {
      const read = dayOfDate(cell);
      this.day = read === null || read.minute !== null ? null : read.day;
      this.time = time;
    }
    return this.said(this.day);
  }

  private said(day: Day | null): Day | null {
    if (day !== null) this.aside.before = day;
    return day;
  }
}
