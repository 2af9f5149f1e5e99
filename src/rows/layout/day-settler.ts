import { type Day, dateOfDay, isoFromDay } from "../../coaching/calendar/day";
import { OrderProof } from "../column/day-evidence";
import { type DateOrder, type DayText, settleDay } from "../value/day-text";
import { type YearAhead, yearAhead } from "./year-ahead";

export type SettledDay =
  | { readonly day: Day }
  | { readonly code: string; readonly facts: Record<string, string | number> };

/** Sessions are written down at most this far ahead, days. */
const fortnight = 14;

/** Settles the days scattered over one tab: all of them together give order and year. */
export class DaySettler {
  private readonly order: DateOrder | null;
  private readonly year: number | null;
  private readonly ahead: YearAhead;

  constructor(
    texts: readonly DayText[],
    titleYear: number | null,
    private readonly today: Day | null,
    answered: DateOrder | null = null,
  ) {
    this.year = texts.find((text) => text.year !== null)?.year ?? titleYear;
    const proof = new OrderProof();
    const todayYear = today === null ? null : dateOfDay(today).year;
    for (const text of texts) proof.see(text, text.year ?? this.year ?? todayYear);
    this.order = answered ?? proof.order;
    this.ahead =
      todayYear === null
        ? null
        : yearAhead(
            texts.flatMap((text) => this.inYear(text, todayYear) ?? []),
            today! + fortnight,
          );
  }

  settle(text: DayText): SettledDay {
    const year = text.year ?? this.year ?? this.yearNearToday(text);
    if (year === null) return { code: "year-missing", facts: {} };
    const [dayFirst, monthFirst] = bothWays(text, year);
    if (dayFirst !== null && monthFirst !== null && dayFirst !== monthFirst && this.order === null)
      return {
        code: "date-order-unsettled",
        facts: { either: isoFromDay(dayFirst), or: isoFromDay(monthFirst) },
      };
    const day = this.inYear(text, year);
    return day === null ? { code: "not-a-day", facts: {} } : { day };
  }

  /** The year of today; for days more than a fortnight ahead what the tab's break says, or null. */
  private yearNearToday(text: DayText): number | null {
    if (this.today === null) return null;
    const { year } = dateOfDay(this.today);
    const day = this.inYear(text, year);
    if (day === null || day <= this.today + fortnight || this.ahead === "this year") return year;
    return this.ahead === "last year" ? year - 1 : null;
  }

  /** In the tab's order, or the only way it can be read. */
  private inYear(text: DayText, year: number): Day | null {
    const [dayFirst, monthFirst] = bothWays(text, year);
    return this.order === "month first" ? (monthFirst ?? dayFirst) : (dayFirst ?? monthFirst);
  }
}

function bothWays(text: DayText, year: number): readonly [Day | null, Day | null] {
  return [settleDay(text, "day first", year), settleDay(text, "month first", year)];
}
