import { meanOf } from "../../../statistics/spread";
import type { Day } from "../../calendar/day";
import { contactKind } from "../../jumps/contact-kind";
import { dropCmOf } from "../../jumps/drop-cm";
import type { JumpAttempt } from "../../record/jump-attempt";
import { nameKey } from "../../record/name-key";
import type { Plate } from "../../record/plate";
import { equalPlates, noHigher } from "./drop-stack";

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
  const last = latestDrops(jumps, athlete, asOf);
  const contacts = last.flatMap(({ contactS }) => contactS ?? []);
  const isLong = contacts.length > 0 && contactKind(meanOf(contacts)) === "slow";
  const heights = last.flatMap((one) => dropCmOf(one, plates) ?? []);
  const lastCm = heights.length === 0 ? null : Math.max(...heights);
  const stacked =
    last.find((one) => one.dropStackKg && dropCmOf(one, plates) === lastCm)?.dropStackKg ?? [];
  if (lastCm === null && stacked.length > 0) {
    const stackKg = isLong && stacked.length > 1 ? stacked.slice(0, -1) : stacked;
    return { cm: null, stackKg, reason: isLong ? "contact long" : "as last" };
  }
  const wanted = wantedAfter(lastCm, isLong);
  const cm = experience === "novice" ? Math.min(wanted.cm, noviceCm) : wanted.cm;
  const reason = lastCm !== null && cm < wanted.cm ? "novice" : wanted.reason;
  const own = noHigher(stacked, cm, plates);
  return { cm, reason, stackKg: own.length > 0 ? own : equalPlates(cm, plates) };
}

/** An athlete's drop jumps of the last day with any. */
function latestDrops(jumps: readonly JumpAttempt[], athlete: string, asOf: Day) {
  const key = nameKey(athlete);
  const drops = jumps.filter(
    ({ day, dropCm, dropStackKg, athlete: who }) =>
      day <= asOf && (dropCm !== null || dropStackKg !== undefined) && nameKey(who) === key,
  );
  const lastDay = Math.max(...drops.map(({ day }) => day));
  return drops.filter(({ day }) => day === lastDay);
}

/** What trained athletes drop from next, cm. */
function wantedAfter(
  lastCm: number | null,
  isLong: boolean,
): { readonly cm: number; readonly reason: DropHeight["reason"] } {
  if (lastCm === null) return { cm: firstDropCm, reason: "first drop" };
  if (isLong) return { cm: Math.max(lowestCm, lastCm - lowerCm), reason: "contact long" };
  return { cm: lastCm, reason: "as last" };
}
