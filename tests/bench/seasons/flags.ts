import type { SimulatedAthlete } from "./world";

/** One season watched: after which sessions a fall was called, and what was true. */
export type Watched = {
  readonly athlete: SimulatedAthlete;
  /** By session of the season. */
  readonly falls: readonly boolean[];
};

/** Share of seasons in which a fall was ever called. */
export function flagged(seasons: readonly Watched[]): number {
  return share(seasons.map(({ falls }) => falls.some(Boolean)));
}

/**
 * Share of falls called within so many sessions, the first with the fall being the first. A season
 * in which a fall had been called before there was one is left out: that call is counted as false.
 */
export function foundWithin(seasons: readonly Watched[], sessions: number): number {
  return share(
    honest(seasons)
      .filter(({ athlete }) => athlete.truth.onset + sessions <= athlete.sessions.length)
      .map((season) => delay(season) <= sessions),
  );
}

/** Sessions until half of the falls are called; infinite when they never are. */
export function medianDelay(seasons: readonly Watched[]): number {
  const delays = honest(seasons)
    .map(delay)
    .sort((a, b) => a - b);
  return delays[delays.length >> 1] ?? Number.POSITIVE_INFINITY;
}

export function honest(seasons: readonly Watched[]): readonly Watched[] {
  return seasons.filter(({ athlete, falls }) => !falls.slice(0, athlete.truth.onset).some(Boolean));
}

/** Sessions from the fall to its call, both counted. */
export function delay({ athlete, falls }: Watched): number {
  const { onset } = athlete.truth;
  const after = falls.slice(onset).indexOf(true);
  return after < 0 ? Number.POSITIVE_INFINITY : after + 1;
}

/** The limit that this share of calm seasons goes above. */
export function limitAt(rate: number, calmPaths: readonly (readonly number[])[]): number {
  const highest = calmPaths.map((path) => Math.max(...path)).sort((a, b) => b - a);
  return highest[Math.floor(rate * highest.length)] ?? Number.POSITIVE_INFINITY;
}

export function share(claims: readonly boolean[]): number {
  return claims.length === 0 ? Number.NaN : claims.filter(Boolean).length / claims.length;
}
