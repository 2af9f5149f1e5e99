import type { JumpAttempt } from "../record/jump-attempt";
import type { Plate } from "../record/plate";

/** Standard acceleration of free fall, m/s² (ISO 80000-3). */
const g = 9.80665;

/** Thickness in cm of one plate, by the mass in kg stamped on it. */
export type PlateThickness = ReadonlyMap<number, number>;

export function plateThickness(plates: readonly Plate[]): PlateThickness {
  return new Map(plates.map(({ massKg, thicknessCm }) => [massKg, thicknessCm]));
}

/** What one attempt says about height. */
export type AttemptHeight = {
  readonly cm: number;
  /** A plate stack or box: the jump was at least this high, not this high. */
  readonly isBound: boolean;
};

/**
 * Height of an attempt, cm: as recorded; or of the stack it cleared; or of its flight, level
 * (g·t²/8) or onto a raised landing (v = h/t + g·t/2, rise v²/2g).
 *
 * @returns null when the row gives no height, the stack holds a plate nobody measured, or the attempt
 * was missed
 */
export function attemptHeight(
  attempt: JumpAttempt,
  thickness: PlateThickness,
): AttemptHeight | null {
  const { heightCm, stackKg, cleared, flightS, landingCm } = attempt;
  if (cleared === false) return null;
  if (heightCm !== null) return { cm: heightCm, isBound: cleared === true };
  if (stackKg.length > 0) {
    let cm = 0;
    for (const massKg of stackKg) cm += thickness.get(massKg) ?? Number.NaN;
    return Number.isNaN(cm) ? null : { cm, isBound: true };
  }
  if (flightS === null || !(flightS > 0)) return null;
  const takeOff = (landingCm ?? 0) / 100 / flightS + (g * flightS) / 2;
  return { cm: (100 * takeOff ** 2) / (2 * g), isBound: false };
}
