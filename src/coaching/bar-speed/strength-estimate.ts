import { accept, type Outcome, refuse } from "../../outcome";
import { studentLimit } from "../../statistics/limits";
import type { LoadSpeedLine } from "./load-speed-line";

/**
 * Load at the lift's minimum speed, kg, with its 90 % interval. Context, and a guard by its cautious
 * end: published errors of such estimates run from −5.5 to +27.8 % (Banyard, Nosaka & Haff 2017).
 */
export type StrengthEstimate = {
  readonly kg: number;
  readonly low: number;
  readonly high: number;
};

const leastDays = 2;
/** Loads must spread over this share of the heaviest; the interval may be no wider either way. */
const leastSpread = 0.1;
const widest = 0.1;

/**
 * (minimum speed − intercept − lead)/slope, the lead being how much faster than the line a first set is:
 * strength is what a fresh athlete has, and a line through all sets lies below it. Limits that hold
 * whichever way the line is wrong (Fieller 1954): the loads L at which (intercept + lead + slope·L −
 * minimum)² is no more than t² of its variance.
 *
 * @param minimumSpeed speed of a best single in this lift, m/s
 * @returns refuses `strength-few-days`, `strength-loads-alike`, `strength-below-minimum` and
 * `strength-too-wide`
 */
export function strengthEstimate(
  line: LoadSpeedLine,
  minimumSpeed: number,
): Outcome<StrengthEstimate> {
  const { slope: b, recent } = line;
  const a = line.intercept + line.firstSet.offset;
  if (recent.days < leastDays) return refuse("strength-few-days", { days: recent.days });
  const spread = (recent.heaviestKg - recent.lightestKg) / recent.heaviestKg;
  if (!(spread >= leastSpread)) {
    return refuse("strength-loads-alike", {
      lightestKg: recent.lightestKg,
      heaviestKg: recent.heaviestKg,
    });
  }
  const kg = (minimumSpeed - a) / b;
  if (!(kg > 0)) return refuse("strength-below-minimum", { minimumSpeed });
  const t2 = studentLimit(90, line.spreadFreedom) ** 2;
  const second = b ** 2 - t2 * line.slopeVariance;
  const first = 2 * ((a - minimumSpeed) * b - t2 * line.covariance);
  const zeroth = (a - minimumSpeed) ** 2 - t2 * line.interceptVariance;
  const root = Math.sqrt(first ** 2 - 4 * second * zeroth);
  const low = (-first - root) / (2 * second);
  const high = (-first + root) / (2 * second);
  const half = (high - low) / 2 / kg;
  // Where the slope is not sure, they are none or the wrong way round.
  if (!(high > low)) return refuse("strength-too-wide", { sets: line.setsUsed });
  if (half > widest) {
    return refuse("strength-too-wide", { sets: line.setsUsed, percent: Math.round(100 * half) });
  }
  return accept({ kg, low, high });
}
