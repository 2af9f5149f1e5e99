import {
  type Day,
  dateOfDay,
  dayFromDate,
  isoFromDay,
  weekdayOfDay,
} from "../../coaching/calendar/day";

/** A day that hardly belongs to its table, and the day it would be with date and month swapped. */
export type OddDay = {
  readonly day: Day;
  readonly oddBy: "distance" | "weekday";
  readonly swapped: Day | null;
};

/** Days this far from all the others are questioned; seasons and their breaks are shorter. */
const farDays = 100;
const trainingDays = 12;

/**
 * Days of done training that spreadsheets may have swapped or that were typed in a wrong year: a
 * lone cluster far from the rest, or the only one ever on its weekday when the swapped day is a usual
 * one. `counts` holds how many rows each day has.
 */
export function oddDays(counts: ReadonlyMap<Day, number>): OddDay[] {
  const days = [...counts.keys()].sort((a, b) => a - b);
  if (days.length === 0) return [];
  const bulk = bulkOf(days);
  const odd: OddDay[] = [];
  const weekdays = new Array<number>(7).fill(0);
  for (const day of days) if (bulk.has(day)) weekdays[weekdayOfDay(day)]!++;
  const first = Math.min(...bulk);
  const last = Math.max(...bulk);
  for (const day of days) {
    const swapped = swap(day);
    const fits = swapped !== null && swapped >= first - 14 && swapped <= last + 14;
    if (!bulk.has(day)) odd.push({ day, oddBy: "distance", swapped: fits ? swapped : null });
    else if (
      days.length >= trainingDays &&
      weekdays[weekdayOfDay(day)] === 1 &&
      fits &&
      weekdays[weekdayOfDay(swapped)]! >= 0.2 * days.length
    )
      odd.push({ day, oddBy: "weekday", swapped });
  }
  return odd;
}

/** The largest run of days without a gap longer than `farDays`, when it holds nine days in ten. */
function bulkOf(days: readonly Day[]): Set<Day> {
  const runs: Day[][] = [];
  for (const day of days) {
    const run = runs[runs.length - 1];
    if (run === undefined || day - run[run.length - 1]! > farDays) runs.push([day]);
    else run.push(day);
  }
  const largest = runs.reduce((a, b) => (b.length > a.length ? b : a));
  return new Set(largest.length >= 0.9 * days.length ? largest : days);
}

function swap(day: Day): Day | null {
  const { year, month, date } = dateOfDay(day);
  return dayFromDate(year, date, month);
}

/** Facts of the issue about an odd day: its weekday, 0 Monday, and the swapped day where it fits. */
export function oddDayFacts({ day, swapped }: OddDay): Record<string, string | number> {
  return {
    weekday: weekdayOfDay(day),
    ...(swapped === null ? {} : { mend: isoFromDay(swapped) }),
  };
}
