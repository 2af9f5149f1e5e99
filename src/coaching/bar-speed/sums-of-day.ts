import type { Day } from "../calendar/day";

/** The sets of one day: mean load (kg) and speed (m/s), and sums about those means. */
export type SumsOfDay = {
  load: number;
  speed: number;
  /** Σ(load − mean)². */
  squares: number;
  /** Σ(load − mean)·(speed − mean). */
  products: number;
};

export const noSums = (): SumsOfDay => ({ load: 0, speed: 0, squares: 0, products: 0 });

/**
 * Sums up the day that begins at a row. They go into a record that is used again for the next day: a
 * new one for each day of a squad's seasons takes longer than the sums.
 *
 * @param rows in order of day
 * @returns where the next day begins
 */
export function sumUpDay(
  rows: readonly { readonly day: Day; readonly loadKg: number; readonly speed: number }[],
  start: number,
  into: SumsOfDay,
): number {
  const day = rows[start]!.day;
  let end = start;
  let loads = 0;
  let speeds = 0;
  while (end < rows.length && rows[end]!.day === day) {
    loads += rows[end]!.loadKg;
    speeds += rows[end]!.speed;
    end++;
  }
  const load = loads / (end - start);
  const speed = speeds / (end - start);
  let squares = 0;
  let products = 0;
  for (let i = start; i < end; i++) {
    const off = rows[i]!.loadKg - load;
    squares += off * off;
    products += off * (rows[i]!.speed - speed);
  }
  into.load = load;
  into.speed = speed;
  into.squares = squares;
  into.products = products;
  return end;
}
