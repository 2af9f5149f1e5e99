import { evidenceLimit } from "./evidence-limit";

/**
 * How the limit for the usual settings goes beyond `evidenceLimit`, by measures watched: a factor at
 * one calm season in ten, and the power of 0.1/rate. Simulated on rows, asked anew after every
 * session: there the squad's wobble, its line and the sessions planned are read anew each time, and
 * the usual settings make the evidence keener.
 */
const byMeasures = [
  { factor: 1.9, power: 0.7 },
  { factor: 2, power: 0.85 },
  { factor: 2.65, power: 1.12 },
] as const;

/**
 * Evidence at which a season's change is named.
 *
 * @param rate share of calm seasons with a false flag, 0.02 to 0.33, for one athlete
 * @param plannedAfter sessions planned after the baseline, 8 to 40
 * @param measures values watched
 */
export function seasonLimit(rate: number, plannedAfter: number, measures: number): number {
  const { factor, power } = byMeasures[Math.min(3, Math.max(1, measures)) - 1]!;
  return factor * (0.1 / rate) ** power * evidenceLimit(0.1, plannedAfter);
}
