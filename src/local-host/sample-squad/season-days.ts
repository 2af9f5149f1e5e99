const dayMs = 86_400_000;

/** Whole days since 1 January 1970 of an ISO date. */
export function dayOf(iso: string): number {
  return Date.parse(`${iso}T00:00:00Z`) / dayMs;
}

export function isoOf(day: number): string {
  return new Date(day * dayMs).toISOString().slice(0, 10);
}

export const seasonStart = dayOf("2026-04-06");
/** The sample's today: things done stand in rows up to this Sunday. */
export const today = dayOf("2026-06-28");

/** Week of the season, 1 from Monday 6 April. */
export function weekOf(day: number): number {
  return Math.floor((day - seasonStart) / 7) + 1;
}
