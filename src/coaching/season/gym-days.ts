import type { Day } from "../calendar/day";
import type { Race } from "../record/race";
import type { Run } from "../record/run";
import type { SquadRules } from "../record/squad-rules";
import { type RaceClash, raceClash } from "./race-hours";

/** One day of the week as a gym day: the rule it breaks, or what it costs. */
export type DayChoice = {
  readonly day: Day;
  readonly minute: number;
  /** Rule that refuses the day; null when it is allowed. */
  readonly refused:
    | RaceClash
    | {
        readonly code: "key-run";
        readonly run: Run;
        readonly hours: number;
        readonly limit: number;
      }
    | { readonly code: "may-not-lift" }
    | null;
  /** Lower is better; among allowed days. */
  readonly cost: number;
};

export type GymDays = {
  readonly best: readonly DayChoice[];
  /** The next best set of days; empty when there is no other. */
  readonly second: readonly DayChoice[];
  readonly all: readonly DayChoice[];
};

/** Days between two sessions of one week, at least. */
export const leastApart = 2;
const usualRunMinute = 8 * 60;

/**
 * The best gym days of a week by trying every choice of days: no race rule and no key run nearer than
 * the rule allows; hard days hard (the day of a key run is better than the day before one), the
 * athlete's usual gym days before others, two sessions as far apart as can be.
 *
 * @param monday first day of the week
 * @param wanted sessions wanted, 1 or 2
 * @param usualWeekdays 0 Monday … 6 Sunday, most usual first
 * @param minute usual start, minutes after midnight
 */
export function gymDays(given: {
  readonly monday: Day;
  readonly wanted: number;
  readonly runs: readonly Run[];
  readonly races: readonly Race[];
  readonly usualWeekdays: readonly number[];
  readonly minute: number;
  readonly rules: SquadRules;
  /** False on days on which nothing may be proposed; without it availability is not asked. */
  readonly mayLift?: (day: Day) => boolean;
}): GymDays {
  const all = Array.from({ length: 7 }, (_, i) => choiceOf(given.monday + i, given));
  const open = all.filter(({ refused }) => refused === null);
  for (let count = Math.min(given.wanted, open.length); count > 0; count--) {
    const sets = choices(open, count)
      .filter((days) => days.every((one, i) => i === 0 || one.day - days[i - 1]!.day >= leastApart))
      .sort((a, b) => costOf(a) - costOf(b));
    const [best, second] = sets;
    if (best) return { best, second: second ?? [], all };
  }
  return { best: [], second: [], all };
}

function choiceOf(
  day: Day,
  {
    monday,
    wanted,
    runs,
    races,
    usualWeekdays,
    minute,
    rules,
    mayLift,
  }: Parameters<typeof gymDays>[0],
): DayChoice {
  const clash = raceClash(day, minute, races, rules);
  const key = runs.filter(isKeyRun);
  const near = key
    .map((run) => ({
      run,
      hours: Math.abs((run.day - day) * 24 + ((run.minute ?? usualRunMinute) - minute) / 60),
    }))
    .find(({ hours }) => hours < rules.hoursToKeyRun);
  const place = usualWeekdays.indexOf(day - monday);
  // Usual days are usual alike: a session missed on one of them makes it no lesser one.
  const unusual = place < 0 ? 6 : place < wanted ? 0 : place;
  const tomorrow = key.some((run) => run.day === day + 1);
  const today = key.some((run) => run.day === day);
  return {
    day,
    minute,
    refused:
      mayLift?.(day) === false
        ? { code: "may-not-lift" }
        : (clash ?? (near ? { code: "key-run", ...near, limit: rules.hoursToKeyRun } : null)),
    cost: unusual + (tomorrow ? 4 : 0) - (today ? 2 : 0),
  };
}

function isKeyRun({ kind }: Run): boolean {
  return kind === "interval" || kind === "race pace";
}

/** Sum of the days' costs; two sessions close together cost more. */
function costOf(days: readonly DayChoice[]): number {
  // Of one day alone it is the same whichever day that is.
  const close = Math.max(0, 3 - (days[days.length - 1]!.day - days[0]!.day));
  return days.reduce((sum, { cost }) => sum + cost, close);
}

function choices<T>(items: readonly T[], count: number): T[][] {
  if (count === 0) return [[]];
  return items.flatMap((item, i) =>
    choices(items.slice(i + 1), count - 1).map((rest) => [item, ...rest]),
  );
}
