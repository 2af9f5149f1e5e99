import { weekdayOfDay } from "../../coaching/calendar/day";
import type { Column } from "../header/column";
import type { TableView } from "../table-view";
import { type DaySpan, spanFromText } from "../value/day-span";
import { type DateOrder, type DayText, dayFromText, settleDay } from "../value/day-text";
import { isDate } from "../value/is-date";

/** What a whole column says about dates written as text. */
export type DayEvidence = {
  /** Null when day and month could be either way round throughout. */
  readonly order: DateOrder | null;
  /** First year written in the column; null when none is. */
  readonly year: number | null;
  /** Every distinct text, taken apart once. */
  readonly texts: Map<string, DayText | null>;
  /** First and last day of each text that is a span of days. */
  readonly spans: Map<string, DaySpan>;
};

const dayFields = ["day", "from", "until", "baselineFrom", "baselineTo"];

/**
 * What a day column says; when it does not settle the order itself, the table's other day columns
 * are heard, as one hand wrote them all.
 */
export function dayEvidence(view: TableView, column: Column): DayEvidence {
  const own = columnEvidence(view, column);
  if (own.order !== null) return own;
  const orders = dayFields.flatMap((field) => {
    const other = view.fields[field];
    const order = other === undefined ? null : columnEvidence(view, other).order;
    return order === null ? [] : [order];
  });
  return { ...own, order: orders[0] ?? null };
}

/** One pass over a day column: numbers past twelve, weekdays and dots settle the order. */
function columnEvidence(view: TableView, column: Column): DayEvidence {
  const texts = new Map<string, DayText | null>();
  const spans = new Map<string, DaySpan>();
  let year: number | null = null;
  const proof = new OrderProof();
  for (let row = view.first; row < view.end; row++) {
    const cell = view.cells[row]![column.index];
    if (typeof cell !== "string") {
      if (year === null && isDate(cell)) year = cell.getFullYear();
      continue;
    }
    if (texts.has(cell)) continue;
    const text = dayFromText(cell);
    texts.set(cell, text);
    const span = text === null ? spanFromText(cell) : null;
    if (span !== null) spans.set(cell, span);
    year ??= text?.year ?? span?.[1]?.year ?? span?.[0].year ?? null;
  }
  for (const text of [...texts.values(), ...[...spans.values()].flat()])
    if (text !== null) proof.see(text, year ?? view.year);
  return { order: column.dateOrder ?? proof.order, year, texts, spans };
}

/** Weighs dates written as two numbers; contradiction proves nothing. */
export class OrderProof {
  private dayFirst = 0;
  private monthFirst = 0;
  private dotted = 0;

  see(text: DayText, year: number | null): void {
    if (text.pair === null) return;
    const [first, second] = text.pair;
    if (first > 12 && second <= 12) this.dayFirst++;
    else if (second > 12 && first <= 12) this.monthFirst++;
    else if (text.weekday !== null && year !== null) {
      const asDayFirst = settleDay(text, "day first", year);
      const asMonthFirst = settleDay(text, "month first", year);
      const firstFits = asDayFirst !== null && weekdayOfDay(asDayFirst) === text.weekday;
      const secondFits = asMonthFirst !== null && weekdayOfDay(asMonthFirst) === text.weekday;
      if (firstFits && !secondFits) this.dayFirst++;
      if (secondFits && !firstFits) this.monthFirst++;
    }
    if (text.dotted) this.dotted++;
  }

  get order(): DateOrder | null {
    if (this.dayFirst > 0 && this.monthFirst > 0) return null;
    if (this.dayFirst > 0) return "day first";
    if (this.monthFirst > 0) return "month first";
    return this.dotted > 0 ? "day first" : null;
  }
}
