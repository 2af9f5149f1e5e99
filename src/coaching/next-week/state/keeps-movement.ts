import type { LiftingSet } from "../../record/lifting-set";

/** Whether the coach writes down of any set how it moved; without it no load goes up. */
export function keepsMovement(sets: readonly LiftingSet[]): boolean {
  return sets.some(({ movedWell }) => movedWell !== null);
}
