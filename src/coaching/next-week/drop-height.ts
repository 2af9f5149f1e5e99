import type { Day } from "../calendar/day";
import type { JumpAttempt } from "../record/jump-attempt";
import { nameKey } from "../record/name-key";
import type { Plate } from "../record/plate";

/** Drop-jump height for the next session, and why it is not the last one. */
export type DropHeight = {
  readonly cm: number;
  /** Plates of one mass in kg that make it, empty when none do. */
  readonly stackKg: readonly number[];
  readonly reason: "as last" | "first drop" | "contact long" | "novice";
};

/** Longest contact before the drop comes down, s, and a novice's highest drop, cm (common practice). */
export const longestContactS = 0.25;
const noviceCm = 20;
const firstDropCm = 30;
const lowerCm = 10;
const lowestCm = 10;

/**
 * The height of the last drop jumps, lower by 10 cm once their contact has lengthened past 0.25 s, no
 * higher than 20 cm for novices; made of equal plates, never higher than wanted.
 */
export function dropHeight(
  jumps: readonly JumpAttempt[],
  athlete: string,
  asOf: Day,
  experience: "novice" | "trained" | null,
  plates: readonly Plate[],
): DropHeight {
  const key = nameKey(athlete);
  const drops = jumps.filter(
    ({ day, dropCm, athlete: who }) => day <= asOf && dropCm !== null && nameKey(who) === key,
  );
  const lastDay = Math.max(...drops.map(({ day }) => day));
  const last = drops.filter(({ day }) => day === lastDay);
  const lastCm = last.length === 0 ? null : Math.max(...last.map(({ dropCm }) => dropCm ?? 0));
  const contacts = last.flatMap(({ contactS }) => contactS ?? []);
  const contact = contacts.reduce((sum, one) => sum + one, 0) / contacts.length;
  const wanted =
    lastCm === null
      ? { cm: firstDropCm, reason: "first drop" as const }
      : contact > longestContactS
        ? { cm: Math.max(lowestCm, lastCm - lowerCm), reason: "contact long" as const }
        : { cm: lastCm, reason: "as last" as const };
  const eased =
    experience === "novice" && wanted.cm > noviceCm
      ? { cm: noviceCm, reason: "novice" as const }
      : wanted;
  return { ...eased, stackKg: equalPlates(eased.cm, plates) };
}

/** Equal plates stacked to no more than a height, nearest to it; of equal ones the fewest. */
export function equalPlates(cm: number, plates: readonly Plate[]): readonly number[] {
  let best: { readonly cm: number; readonly stackKg: readonly number[] } = { cm: 0, stackKg: [] };
  for (const { massKg, thicknessCm, owned } of plates) {
    if (!(thicknessCm > 0)) continue;
    const count = Math.min(owned ?? 10, Math.floor(cm / thicknessCm + 1e-9));
    const height = count * thicknessCm;
    const nearer = height > best.cm + 1e-9;
    const fewer = Math.abs(height - best.cm) <= 1e-9 && count < best.stackKg.length;
    if (nearer || fewer) best = { cm: height, stackKg: Array<number>(count).fill(massKg) };
  }
  return best.stackKg;
}
