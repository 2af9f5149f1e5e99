import { stackHeight, stampedOn } from "../../jumps/stack-height";
import type { Plate } from "../../record/plate";

/** A stack without its topmost plates until it is no higher than so many cm. */
export function noHigher(
  stackKg: readonly number[],
  cm: number,
  plates: readonly Plate[],
): readonly number[] {
  for (let count = stackKg.length; count > 0; count--) {
    const rest = stackKg.slice(0, count);
    const height = stackHeight(rest, plates);
    if (height.ok && height.value <= cm + 1e-9) return rest;
  }
  return [];
}

/** Equal plates stacked to no more than a height, nearest to it; of equal ones the fewest. */
export function equalPlates(cm: number, plates: readonly Plate[]): readonly number[] {
  let best: { readonly cm: number; readonly stackKg: readonly number[] } = { cm: 0, stackKg: [] };
  for (const plate of plates) {
    const { thicknessCm, owned } = plate;
    if (!(thicknessCm > 0)) continue;
    const count = Math.min(owned ?? 10, Math.floor(cm / thicknessCm + 1e-9));
    const height = count * thicknessCm;
    const nearer = height > best.cm + 1e-9;
    const fewer = Math.abs(height - best.cm) <= 1e-9 && count < best.stackKg.length;
    if (nearer || fewer)
      best = { cm: height, stackKg: Array<number>(count).fill(stampedOn(plate)) };
  }
  return best.stackKg;
}
