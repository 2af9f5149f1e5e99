import { changeSince } from "./evidence/change-since";
import type { HoldMeasure } from "./season-hold";
import type { AthleteSeason } from "./squad-seasons";
import type { WatchedSeason } from "./watched-season";

/** One measure of a judged season, since the onset or, without one, over its last four rows. */
export function holdMeasure(
  season: AthleteSeason,
  watched: WatchedSeason,
  m: number,
  since: number | null,
): HoldMeasure {
  const { place, values, baselineRows, baselineMean, errors } = watched.measures[m]!;
  const measure = season.measures[place]!;
  const last = watched.sessions - 1;
  const from = since ?? recentFrom(values, watched.measures[m]!.baselineSessions, watched);
  const { rows, change, error } = changeSince(watched, m, from);
  return {
    kind: measure.kind,
    of: measure.of,
    baselineRows,
    rowsAfter: changeSince(watched, m, 0).rows,
    rowsSince: rows,
    change: change === null ? null : measure.plainPercent(change),
    changeError: error,
    wobble: errors[last]!,
    baselineValue: measure.valueAt(baselineMean),
    nowValue: change === null ? null : measure.valueAt(baselineMean + change),
  };
}

/** Place of the fourth last row after the baseline: without an onset, "now" is the last four rows. */
function recentFrom(
  values: readonly number[],
  baselineSessions: number,
  { settings }: WatchedSeason,
): number {
  let rows = 0;
  let s = values.length;
  while (s > baselineSessions && rows < settings.recentRows) {
    s--;
    if (!Number.isNaN(values[s]!)) rows++;
  }
  return s;
}

/** The measure that moved most against its uncertainty, on the word's side; otherwise the first with a session since the baseline. */
export function valueThatMoved(measures: readonly HoldMeasure[], word: string): HoldMeasure | null {
  const side = word === "slipping" ? -1 : word === "rising" ? 1 : 0;
  let moved = measures[0] ?? null;
  let most = Number.NEGATIVE_INFINITY;
  // On neither side all sizes are nothing: the first there is stays.
  for (const measure of measures) {
    if (measure.change === null || measure.changeError === null) continue;
    const size = (side * measure.change) / measure.changeError;
    if (size > most) {
      most = size;
      moved = measure;
    }
  }
  return moved;
}

/** How far under its baseline a value is worth naming beside `holding`, standard errors. */
const clearlyLower = 2;

/**
 * Of an athlete who holds the value that has clearly fallen by as much as would show of all, the one
 * furthest down against its uncertainty; null when none has. Said of another value, `holding` would hide it.
 */
export function fallenValue(
  measures: readonly HoldMeasure[],
  visibleFall: number | null,
): HoldMeasure | null {
  const lower = measures.filter(
    ({ change, changeError }) =>
      visibleFall !== null &&
      change !== null &&
      changeError !== null &&
      change <= -visibleFall &&
      change <= -clearlyLower * changeError,
  );
  return valueThatMoved(lower, "slipping");
}
