import { isDate } from "../rows/value/is-date";
import { spreadsheetWords } from "../words/spreadsheet";

/** Clocks change on a quarter of an hour, the world over. */
const quarterMs = 900_000;
const minuteMs = 60_000;

/** A clock's reading, as the milliseconds at which the world's own clock (UTC) reads the same. */
type Reading = number;

/**
 * The spreadsheet's clock. The platform hands a cell's date over as the moment at which the
 * spreadsheet's time zone shows it, and the script's clock is set by its manifest: it may show the day
 * before. Here a date is made one that the script's clock shows as the cell does, and the way back.
 */
export class SheetClock {
  private reader: ((time: number) => Reading) | undefined;
  /** By how much a date moves so that the script's clock shows it, ms, by quarter of an hour. */
  private readonly moves = new Map<number, number>();
  /** Rows of one day follow one another: the date seen last, and what it was made. */
  private last = { time: Number.NaN, shown: new Date(Number.NaN) };

  /** @param zone the spreadsheet's time zone; asked for once, when the first date comes */
  constructor(private readonly zone: () => string) {}

  /** Rows or a cell, as they came where they hold no date that the clocks show differently. */
  shown(given: unknown): unknown {
    if (!Array.isArray(given)) return isDate(given) ? this.shownDate(given) : given;
    let all: unknown[] | undefined;
    for (let at = 0; at < given.length; at++) {
      const one: unknown = given[at];
      if (typeof one !== "object") continue;
      const shown = this.shown(one);
      if (shown === one) continue;
      all ??= given.slice();
      all[at] = shown;
    }
    return all ?? given;
  }

  /** The moment at which a day begins in the spreadsheet. */
  startOf(year: number, month: number, date: number): Date {
    const wanted = Date.UTC(year, month - 1, date);
    const first = wanted - this.aheadAt(wanted);
    const second = wanted - this.aheadAt(first);
    const hits = (time: number) => time + this.aheadAt(time) === wanted;
    if (hits(second)) return new Date(second);
    // Where clocks go forward at midnight a day begins at one.
    return new Date(hits(first) ? first : Math.max(first, second));
  }

  private shownDate(date: Date): Date {
    const time = date.getTime();
    const quarter = Math.floor(time / quarterMs);
    let move = this.moves.get(quarter);
    if (move === undefined) {
      move = this.moveAt(quarter * quarterMs);
      this.moves.set(quarter, move);
    }
    if (move === 0) return date;
    if (time !== this.last.time) this.last = { time, shown: new Date(time + move) };
    return this.last.shown;
  }

  private moveAt(time: number): number {
    const there = new Date(time + this.aheadAt(time));
    const here = new Date(
      there.getUTCFullYear(),
      there.getUTCMonth(),
      there.getUTCDate(),
      there.getUTCHours(),
      there.getUTCMinutes(),
      there.getUTCSeconds(),
    );
    return here.getTime() - time;
  }

  /** How far the spreadsheet's clock is ahead of the world's, ms. */
  private aheadAt(time: number): number {
    this.reader ??= readerOf(this.zone());
    return this.reader(time) - time;
  }
}

/** A zone is named for a place, "Europe/Paris", or says itself how far ahead it is, "GMT-07:00". */
function readerOf(zone: string): (time: number) => Reading {
  const [, sign, hours, minutes = 0] = /^GMT([+-])(\d\d?)(?::?(\d\d))?$/.exec(zone) ?? [];
  if (sign !== undefined) {
    const ahead = (Number(hours) * 60 + Number(minutes)) * minuteMs;
    return (time) => (sign === "+" ? time + ahead : time - ahead);
  }
  const clock = clockOf(zone);
  return (time) => {
    const part: Record<string, number> = {};
    for (const { type, value } of clock.formatToParts(time)) part[type] = Number(value);
    const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
    return Date.UTC(year, month - 1, day, hour, minute, second);
  };
}

function clockOf(timeZone: string): Intl.DateTimeFormat {
  const numeric = "numeric";
  try {
    return new Intl.DateTimeFormat("en-US", {
      timeZone,
      hourCycle: "h23",
      year: numeric,
      month: numeric,
      day: numeric,
      hour: numeric,
      minute: numeric,
      second: numeric,
    });
  } catch {
    throw new Error(spreadsheetWords.unknownZone(timeZone));
  }
}
