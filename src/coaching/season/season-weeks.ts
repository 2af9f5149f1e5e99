import { meanIfAny } from "../../statistics/spread";
import { type Day, mondayOf, weekdayOfDay } from "../calendar/day";
import type { SeasonHold } from "../hold/season-hold";

/**
 * Where a session stood against baseline: above by more than one wobble, in its upper half, in its
 * lower half, or below by more than one wobble.
 */
export type Height = "above" | "upper" | "lower" | "below";

/** One week of the season picture; null where the half week had no session. */
export type SeasonWeek = {
  readonly monday: Day;
  /** Monday to Wednesday, and Thursday to Sunday. */
  readonly early: Height | null;
  readonly late: Height | null;
  /** Mean of the week's sessions in wobbles; null without one. */
  readonly wobbles: number | null;
};

/**
 * The followed value week by week from the season's first Monday, in units of the athlete's wobble.
 * Of several sessions in half a week their mean counts. All athletes of a squad are given the same
 * first day, so that their pictures line up.
 */
export function seasonWeeks(hold: SeasonHold, seasonStart: Day): readonly SeasonWeek[] {
  const place = hold.value
    ? hold.measures.findIndex(({ kind, of }) => kind === hold.value!.kind && of === hold.value!.of)
    : 0;
  const measure = hold.measures[place];
  const halves = new Map<Day, { early: number[]; late: number[] }>();
  for (const { day, percents } of hold.sessions) {
    const percent = percents[place] ?? null;
    if (percent === null) continue;
    const monday = mondayOf(day);
    const week = halves.get(monday) ?? { early: [], late: [] };
    week[weekdayOfDay(day) < 3 ? "early" : "late"].push(percent / measure!.wobble);
    halves.set(monday, week);
  }
  const weeks: SeasonWeek[] = [];
  for (let monday = mondayOf(seasonStart); monday <= hold.asOf; monday += 7) {
    const { early, late } = halves.get(monday) ?? { early: [], late: [] };
    weeks.push({
      monday,
      early: heightOf(meanIfAny(early)),
      late: heightOf(meanIfAny(late)),
      wobbles: meanIfAny([...early, ...late]),
    });
  }
  return weeks;
}

function heightOf(wobbles: number | null): Height | null {
  if (wobbles === null) return null;
  if (wobbles > 1) return "above";
  if (wobbles >= 0) return "upper";
  return wobbles >= -1 ? "lower" : "below";
}
