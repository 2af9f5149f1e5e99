import { meanOf } from "../../statistics/spread";
import type { Day } from "../calendar/day";
import { contactKind } from "../jumps/contact-kind";
import { dropCmOf } from "../jumps/drop-cm";
import { stackHeight, stampedOn } from "../jumps/stack-height";
import type { JumpAttempt } from "../record/jump-attempt";
import { nameKey } from "../record/name-key";
import type { Plate } from "../record/plate";

/** Drop-jump height for the next session, and why it is not the last one. */
export type DropHeight = {
  /** Height wanted; null where only a stack of plates of unknown thickness is known. */
  readonly cm: number | null;
  /** Plates in kg that make it, from the bottom: as the coach stacked them, else equal ones; empty when none do. */
  readonly stackKg: readonly number[];
  readonly reason: "as last" | "first drop" | "contact long" | "novice";
};

/** A novice's highest drop, a first one, and how far a drop comes down, cm (common practice, no source). */
const noviceCm = 20;
const firstDropCm = 30;
const lowerCm = 10;
const lowestCm = 10;

/**
 * The height of the last drop jumps, lower by 10 cm once their contact has become slow, past 0.25 s, no
 * higher than 20 cm for novices; never higher than wanted. It is made of the plates the coach last
 * stacked for it, mixed or not, the topmost taken off for a lower drop; without such a row of equal
 * plates only: a mixed stack that no coach has seen stand may slide.
 *
 * Where plates were stacked whose thickness nobody wrote down, the stack is the last one, one plate
 * lower after a long contact.
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
    ({ day, dropCm, dropStackKg, athlete: who }) =>
      day <= asOf && (dropCm !== null || dropStackKg !== undefined) && nameKey(who) === key,
  );
  const lastDay = Math.max(...drops.map(({ day }) => day));
  const last = drops.filter(({ day }) => day === lastDay);
  const contacts = last.flatMap(({ contactS }) => contactS ?? []);
  const long = contacts.length > 0 && contactKind(meanOf(contacts)) === "slow";
  const heights = last.flatMap((one) => dropCmOf(one, plates) ?? []);
  const lastCm = heights.length === 0 ? null : Math.max(...heights);
  const stacked =
    last.find((one) => one.dropStackKg && dropCmOf(one, plates) === lastCm)?.dropStackKg ?? [];
  if (lastCm === null && stacked.length > 0) {
    const stackKg = long && stacked.length > 1 ? stacked.slice(0, -1) : stacked;
    return { cm: null, stackKg, reason: long ? "contact long" : "as last" };
  }
  const wantedCm =
    lastCm === null ? firstDropCm : long ? Math.max(lowestCm, lastCm - lowerCm) : lastCm;
  const cm = experience === "novice" ? Math.min(wantedCm, noviceCm) : wantedCm;
  const reason =
    lastCm === null ? "first drop" : cm < wantedCm ? "novice" : long ? "contact long" : "as last";
  const own = noHigher(stacked, cm, plates);
  return { cm, reason, stackKg: own.length > 0 ? own : equalPlates(cm, plates) };
}

/** A stack without its topmost plates until it is no higher than so many cm. */
function noHigher(
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
