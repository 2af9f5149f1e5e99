import { evidenceLimit } from "./evidence-limit";

/**
 * How the limit for the usual settings goes beyond `evidenceLimit`, by measures watched: a factor at
 * one calm season in ten, and the power of 0.1/rate. Simulated on rows, asked anew after every
 * session: there the squad's wobble, its line and the sessions planned are read anew each time, and
 * the usual settings make the evidence keener. From 3,570 calm seasons of squads as they are
 * (about 9 % flagged at one in ten; 11 % where half the squad falls), 700 each with two and one measures,
 * of seeds used for nothing else.
 */
const byMeasures = [
  { factor: 1.95, power: 0.85 },
  { factor: 1.85, power: 0.9 },
  { factor: 2.15, power: 1.09 },
] as const;

/** Sessions after the baseline that the factors are for, and how the limit grows with them. */
const usualAfter = 18;
const powerOfAfter = 0.4;

/**
 * Evidence at which a season's change is named. It grows with the sessions planned, so that athletes who
 * come once and twice a week are flagged equally often.
 *
 * @param rate share of calm seasons with a false flag, 0.02 to 0.33, for one athlete
 * @param plannedAfter sessions planned after the baseline, 8 to 40
 * @param measures values watched
 */
export function seasonLimit(rate: number, plannedAfter: number, measures: number): number {
  const { factor, power } = byMeasures[Math.min(3, Math.max(1, measures)) - 1]!;
  const byLength = (plannedAfter / usualAfter) ** powerOfAfter;
  return factor * (0.1 / rate) ** power * byLength * evidenceLimit(0.1, plannedAfter);
}
