import { accept, type Outcome, refuse } from "../../outcome";
import type { Plate } from "../record/plate";

/** The figure that stands on a plate. */
export const stampedOn = ({ stamped, massKg }: Plate): number => stamped ?? massKg;

/**
 * Height of plates laid flat on one another: their thicknesses add.
 *
 * @param stackKg mass stamped on each plate, bottom first
 * @param plates this gym's own plates with their measured thickness
 * @returns cm; no plates is 0. Refuses `plate-not-measured` by place and mass, and
 * `plates-not-owned` when the stack needs more of one mass than the gym owns.
 */
export function stackHeight(stackKg: readonly number[], plates: readonly Plate[]): Outcome<number> {
  const used = new Map<number, number>();
  // Where plates are stamped in pounds, stacks are written in them.
  const unit = plates.some(({ stamped }) => stamped !== undefined) ? "lb" : "kg";
  let heightCm = 0;
  for (const [index, massKg] of stackKg.entries()) {
    const plate = plates.find((one) => stampedOn(one) === massKg);
    if (!plate) return refuse("plate-not-measured", { place: index + 1, mass: massKg, unit });
    const count = (used.get(massKg) ?? 0) + 1;
    used.set(massKg, count);
    if (plate.owned !== null && count > plate.owned) {
      return refuse("plates-not-owned", { mass: massKg, unit, owned: plate.owned });
    }
    heightCm += plate.thicknessCm;
  }
  // The same plates in another order are as high, to the last digit: heights are compared.
  return accept(Math.round(1e6 * heightCm) / 1e6);
}
