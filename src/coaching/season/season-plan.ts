import { type Day, mondayOf } from "../calendar/day";
import { racesOf } from "../diary/races-of";
import type { Athlete } from "../record/athlete";
import type { Race } from "../record/race";
import { type WeekKind, weekKind } from "./race-hours";

/** One week of one athlete's season. */
export type PlannedWeek = {
  readonly monday: Day;
  readonly kind: WeekKind;
  /** The athlete's races of the week, in order of start. */
  readonly races: readonly Race[];
};

export type AthleteSeason = {
  readonly athlete: string;
  readonly weeks: readonly PlannedWeek[];
};

/** The season at a glance: the same weeks for every athlete. */
export type SeasonPlan = {
  readonly firstMonday: Day;
  readonly lastMonday: Day;
  readonly athletes: readonly AthleteSeason[];
  /** The season is outside 16–20 weeks: said, not refused. */
  readonly unusualLength: boolean;
};

/** Usual length of a racing season, weeks (common practice, no source). */
const usualWeeks = { least: 16, most: 20 } as const;

/**
 * Every week from the first day to the last race or the last day, whichever is later, for every
 * athlete: ordinary, race week, or week after, from the races for that athlete, the group, or all.
 *
 * @param from first day of the season; null begins with the week of the first race
 * @param weeks weeks the squad has set; null ends with the week of the last race
 * @returns null without a race and without a first day
 */
export function seasonPlan(
  athletes: readonly Athlete[],
  races: readonly Race[],
  from: Day | null,
  weeks: number | null,
): SeasonPlan | null {
  const days = races.map(({ day }) => day);
  const first = from ?? (days.length > 0 ? Math.min(...days) : null);
  if (first === null) return null;
  const firstMonday = mondayOf(first);
  const byWeeks = weeks === null ? firstMonday : firstMonday + 7 * (Math.ceil(weeks) - 1);
  const lastMonday = Math.max(byWeeks, ...days.map(mondayOf));
  const count = (lastMonday - firstMonday) / 7 + 1;
  const mondays = Array.from({ length: count }, (_, i) => firstMonday + 7 * i);
  return {
    firstMonday,
    lastMonday,
    athletes: athletes.map((athlete) => athleteSeason(athlete.athlete, athlete, races, mondays)),
    unusualLength: count < usualWeeks.least || count > usualWeeks.most,
  };
}

/** One athlete's weeks; without details only races under the name or for all are theirs. */
export function athleteSeason(
  athlete: string,
  details: Athlete | null,
  races: readonly Race[],
  mondays: readonly Day[],
): AthleteSeason {
  const own = racesOf(races, athlete, details);
  return {
    athlete,
    weeks: mondays.map((monday) => ({
      monday,
      kind: weekKind(monday, own),
      races: own
        .filter(({ day }) => day >= monday && day < monday + 7)
        .sort((a, b) => a.day - b.day || (a.startMinute ?? 0) - (b.startMinute ?? 0)),
    })),
  };
}
