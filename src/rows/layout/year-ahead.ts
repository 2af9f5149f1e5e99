import type { Day } from "../../coaching/calendar/day";

/** Where days without a year lie that would come more than a fortnight after the day asked about. */
export type YearAhead = "last year" | "this year" | null;

/** A break between seasons, days; breaks within one are shorter. Common practice, no source. */
const seasonBreak = 100;
const yearDays = 365;

/**
 * Whether days after `cut` belong to last year (the break lies between them and the days before) or
 * go on in the same season (the break lies the other way round the year); null when neither shows.
 * `days` are all the tab's days, each put into the year of `cut`.
 */
export function yearAhead(days: readonly Day[], cut: Day): YearAhead {
  const past = days.filter((day) => day <= cut);
  const future = days.filter((day) => day > cut);
  if (past.length === 0 || future.length === 0) return "last year";
  const atCut = future.reduce((a, b) => Math.min(a, b)) - past.reduce((a, b) => Math.max(a, b));
  const round =
    past.reduce((a, b) => Math.min(a, b)) + yearDays - future.reduce((a, b) => Math.max(a, b));
  if (atCut >= seasonBreak && atCut > round) return "last year";
  return round >= seasonBreak && round > atCut ? "this year" : null;
}
