import type { WatchedSeason } from "../watched-season";

/**
 * Smallest fall in all measures that would usually show within six more sessions, percent:
 * 3.4 · mean typical error · √(1/P + c/(6·P)), P the weight and c the count of the sessions so far.
 * In simulation seven of eight falls of just that size, begun at any session, are found in time at the
 * limit for one calm season in ten (`npm run bench:seasons`).
 */
export function visibleFall(
  season: WatchedSeason,
  session: number = season.sessions - 1,
): number | null {
  const { measures } = season;
  const { betweenMeasures, fallShown } = season.settings;
  if (measures.length === 0) return null;
  let error = 0;
  for (const { errors } of measures) error += errors[session]! / measures.length;
  let weight = 0;
  let rows = 0;
  for (let s = 0; s <= session; s++) {
    let present = 0;
    for (const { values } of measures) if (!Number.isNaN(values[s]!)) present++;
    if (present === 0) continue;
    weight += present / (1 + (present - 1) * betweenMeasures);
    rows++;
  }
  return fallShown * error * Math.sqrt(1 / weight + rows / (6 * weight));
}
