import { stackHeight, stampedOn } from "../../jumps/stack-height";
import type { Plate } from "../../record/plate";

/** Lighter discs are too narrow to land on (common practice, no source). */
const leastLandingKg = 5;
/** Nobody builds a stack anew for less, cm (common practice, no source). */
const leastStepCm = 0.5;

/**
 * The lowest stack over one that the gym's plates build with another plate, or two, in place of its
 * topmost: no plate on a lighter one, and none too narrow to land on.
 *
 * @param stackKg plates from the bottom
 * @returns the stack and its height, cm; null where there is none
 */
export function oneStepUp(
  stackKg: readonly number[],
  plates: readonly Plate[],
): { readonly stackKg: readonly number[]; readonly cm: number } | null {
  const from = stackHeight(stackKg, plates);
  if (stackKg.length === 0 || !from.ok) return null;
  const base = stackKg.slice(0, -1);
  const wide = plates.filter(({ massKg }) => massKg >= leastLandingKg);
  /** Plates that lie on one without standing over it. */
  const onto = (under: Plate | undefined) =>
    wide.filter(({ massKg }) => massKg <= (under?.massKg ?? Number.POSITIVE_INFINITY));
  const top = base[base.length - 1];
  const tops = onto(plates.find((one) => stampedOn(one) === top)).flatMap((lower) => [
    [lower],
    ...onto(lower).map((upper) => [lower, upper]),
  ]);
  let best: { readonly stackKg: readonly number[]; readonly cm: number } | null = null;
  for (const more of tops) {
    const higher = [...base, ...more.map(stampedOn)];
    const height = stackHeight(higher, plates);
    const isStep = height.ok && height.value >= from.value + leastStepCm;
    if (isStep && height.value < (best?.cm ?? Number.POSITIVE_INFINITY))
      best = { stackKg: higher, cm: height.value };
  }
  return best;
}
