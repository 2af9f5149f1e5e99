import { meanOf } from "../../statistics/spread";
import type { ReadinessSettings } from "./readiness-settings";

/** What one reading is held against. */
export type Usual = {
  readonly past: readonly number[];
  /** The squad's SD between days, and the least SD allowed, in the readings' unit. */
  readonly squadSd: number;
  readonly leastSd: number;
};

/**
 * A reading against the athlete's own earlier ones, as a standard normal score: the prediction t of a
 * new value, (today − mean)/(s·√(1 + 1/n)), its SD s steadied by the squad's.
 *
 * @returns null with fewer than four earlier readings
 */
export function againstUsual(
  today: number,
  { past, squadSd, leastSd }: Usual,
  settings: ReadinessSettings,
): number | null {
  const rows = past.length;
  if (rows < settings.leastPast) return null;
  const mean = meanOf(past);
  const squares = past.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const { sd, freedom } = steadied(squares, rows, squadSd, leastSd, settings);
  return score((today - mean) / (sd * Math.sqrt(1 + 1 / rows)), freedom, settings);
}

/**
 * A speed's distance from its line against the same of earlier days, percent: today/√(s² + error²),
 * for the line is already the athlete's usual and only its own error is added.
 *
 * @param lineError standard error of the line at today's load, percent
 * @returns null with fewer than four earlier readings
 */
export function againstLine(
  today: number,
  lineError: number,
  { past, squadSd, leastSd }: Usual,
  settings: ReadinessSettings,
): number | null {
  const rows = past.length;
  if (rows < settings.leastPast) return null;
  const squares = past.reduce((sum, value) => sum + value ** 2, 0);
  const { sd, freedom } = steadied(squares, rows, squadSd, leastSd, settings);
  return score(today / Math.sqrt(sd ** 2 + lineError ** 2), freedom, settings);
}

function steadied(
  squares: number,
  rows: number,
  squadSd: number,
  leastSd: number,
  { squadWorth, squadShare }: ReadinessSettings,
) {
  const freedom = squadWorth + rows - 1;
  const variance = (squadWorth * squadShare * squadSd ** 2 + squares) / freedom;
  return { sd: Math.max(leastSd, Math.sqrt(variance)), freedom };
}

/** Normal score of a t value (Wallace 1959), cut so that one part cannot decide alone. */
function score(t: number, freedom: number, { clip }: ReadinessSettings): number {
  const normal =
    Math.sign(t) *
    ((8 * freedom + 1) / (8 * freedom + 3)) *
    Math.sqrt(freedom * Math.log1p((t * t) / freedom));
  return Math.min(clip, Math.max(-clip, normal));
}
