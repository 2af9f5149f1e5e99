import type { WatchedSeason } from "../watched-season";

/** How far one measure stands from its baseline since a session. */
export type ChangeSince = {
  /** Rows since, after the baseline. */
  readonly rows: number;
  /** Mean since minus baseline mean, percent; null without rows. */
  readonly change: number | null;
  /** Its standard error, percent. */
  readonly error: number | null;
};

/**
 * Plain mean of a measure since an onset minus its baseline mean, with typical error·√(1/rows since
 * + 1/baseline rows) as its standard error. Named just when it was found, a change reads too large:
 * falls of 3 % by 2.6 points in simulation.
 */
export function changeSince(
  season: WatchedSeason,
  measure: number,
  onset: number,
  session: number = season.sessions - 1,
): ChangeSince {
  const { values, baselineMean, baselineRows, baselineSessions, errors } =
    season.measures[measure]!;
  let rows = 0;
  let sum = 0;
  for (let s = Math.max(onset, baselineSessions); s <= session; s++) {
    const value = values[s]!;
    if (Number.isNaN(value)) continue;
    rows++;
    sum += value;
  }
  if (rows === 0) return { rows, change: null, error: null };
  const error = errors[session]! * Math.sqrt(1 / rows + 1 / baselineRows);
  return { rows, change: sum / rows - baselineMean, error };
}
