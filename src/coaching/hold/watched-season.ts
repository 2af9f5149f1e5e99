import { type HoldSettings, usualHoldSettings } from "./hold-settings";
import type { LevelPrior } from "./yardsticks/last-season-level";
import { ownTypicalErrors } from "./yardsticks/own-typical-error";

/** One measure over an athlete's sessions, as the evidence reads it. */
export type MeasureSeries = {
  /** Percent, one place a session from the first of the season; NaN where missing. */
  readonly values: readonly number[];
  /** Runs of readings before the season, percent, for the typical error; left out when there are none. */
  readonly earlier?: readonly (readonly number[])[];
  /** What last season says of the level; left out when there is none. */
  readonly level?: LevelPrior | null;
  /** The squad's typical error, percent. */
  readonly squadError: number;
  /** Error, percent, that an uncertain slope adds at each session's load; left out when there is none. */
  readonly loadError?: readonly number[];
};

/** A measure with enough baseline rows, ready to be watched. */
export type WatchedMeasure = {
  /** Its place in the list given. */
  readonly place: number;
  readonly values: readonly number[];
  readonly loadError: readonly number[] | null;
  readonly level: LevelPrior | null;
  /** Sessions from the season's first to the end of this measure's baseline. */
  readonly baselineSessions: number;
  readonly baselineRows: number;
  readonly baselineMean: number;
  /** Own typical error after each session, percent. */
  readonly errors: Float64Array;
};

/** One athlete's season, with everything the evidence needs that does not change by session. */
export type WatchedSeason = {
  readonly measures: readonly WatchedMeasure[];
  readonly sessions: number;
  readonly baselineSessions: number;
  /** Sessions planned after the baseline, never fewer than those seen. */
  readonly plannedAfter: number;
  readonly settings: HoldSettings;
};

/**
 * Prepares a season for watching: keeps the measures with at least three baseline rows, if need be the
 * first three of a somewhat longer baseline, and works out their baseline means and typical errors.
 */
export function watchedSeason(
  series: readonly MeasureSeries[],
  baselineSessions: number,
  plannedAfter: number,
  settings: HoldSettings = usualHoldSettings,
): WatchedSeason {
  const sessions = series[0]?.values.length ?? 0;
  const measures: WatchedMeasure[] = [];
  for (const [place, { values, earlier, level, squadError, loadError }] of series.entries()) {
    let rows = 0;
    let sum = 0;
    let end = 0;
    // A test taken less often than the athlete trains goes on to its third reading.
    const longest = Math.min(sessions, settings.longestBaseline * baselineSessions);
    for (; end < longest; end++) {
      if (end >= baselineSessions && rows >= settings.leastBaselineRows) break;
      const value = values[end]!;
      if (Number.isNaN(value)) continue;
      rows++;
      sum += value;
    }
    if (rows < settings.leastBaselineRows) continue;
    measures.push({
      place,
      values,
      loadError: loadError ?? null,
      level: level ?? null,
      baselineSessions: Math.max(end, Math.min(baselineSessions, sessions)),
      baselineRows: rows,
      baselineMean: sum / rows,
      errors: ownTypicalErrors(values, squadError, settings, earlier),
    });
  }
  return {
    measures,
    sessions,
    baselineSessions,
    plannedAfter: Math.max(plannedAfter, sessions - baselineSessions, 1),
    settings,
  };
}
