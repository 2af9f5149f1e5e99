import { valueOrNull } from "../../../outcome";
import type { Block } from "../../blocks/block";
import { leastReserve } from "../../blocks/next-block";
import { chartReps, chartShare, mostReps, singleFromSet } from "../../blocks/repetition-load";
import type { PresentStep } from "../present-step/present-step";
import type { LiftState } from "../state/athlete-state";

/** The strength that loads are guarded by, kg, told by the line through speeds or by repetitions seen in reserve. */
export type Guard = { readonly kg: number; readonly from: "speeds" | "seen" };

/**
 * What a lift's loads are guarded by, decided and told alike: the cautious end of the estimate; what the
 * sets' own repetitions in reserve say where there is none, or where they were fewer than
 * two and say less. Whoever was seen with too few left has no more because a line through speeds says
 * so. It never raises a load.
 */
export function guardOf({ strengthLowKg, seenKg }: LiftState, step: PresentStep): Guard | null {
  const counted = strengthLowKg === null || isFew(step.plannedReserve) ? strengthSeen(step) : null;
  const seen = seenKg === undefined ? counted : seenKg;
  if (seen !== null && seen < (strengthLowKg ?? Number.POSITIVE_INFINITY))
    return { kg: seen, from: "seen" };
  return strengthLowKg === null ? null : { kg: strengthLowKg, from: "speeds" };
}

/** What is seen where a coach has set more than it: the set is taken to leave the two asked for. */
export function guardLeaving(
  guardKg: number | null,
  { block, loadKg }: { readonly block: Block; readonly loadKg: number },
): number | null {
  const share = chartShare(Math.min(chartReps, block.reps + leastReserve));
  return leavesReserve(block, loadKg, guardKg) || !share.ok ? guardKg : loadKg / share.value;
}

/** What speaks against a load lifted before: a set that left more than the chart tells of does not. */
export const guardAgainst = (
  guard: Guard | null,
  { block, plannedReserve }: PresentStep,
): number | null =>
  guard === null || (guard.from === "seen" && block.reps + (plannedReserve ?? 0) > chartReps)
    ? null
    : guard.kg;

/** Whether two repetitions stay in reserve at a load; without a guard nothing says that they do not. */
export const leavesReserve = (block: Block, loadKg: number, guardKg: number | null): boolean =>
  guardKg === null || mostReps(loadKg / guardKg) - block.reps >= leastReserve;

/** The load, or less of it where two repetitions would not stay in reserve. */
export function keepingReserve(
  block: Block,
  loadKg: number,
  guardKg: number | null,
  stepKg: number,
): number {
  let kg = loadKg;
  while (kg > stepKg && !leavesReserve(block, kg, guardKg)) kg -= stepKg;
  return kg;
}

/** Whether the last session was seen to leave fewer than two: it is not gone on from because an estimate says more. */
export const fewLeft = ({ reserveSeen }: PresentStep) => isFew(reserveSeen);

const isFew = (reserve: number | null) => reserve !== null && reserve < leastReserve;

/** Of a day that asked for less than its plan the reserve says nothing of the plan: that of the session before it does. */
function strengthSeen({
  plannedReserve,
  reserveKg,
  block,
  heavierSeenKg,
}: PresentStep): number | null {
  if (plannedReserve === null) return null;
  const reps = Math.min(chartReps, block.reps + Math.floor(plannedReserve));
  return Math.max(valueOrNull(singleFromSet(reserveKg, reps)) ?? 0, heavierSeenKg ?? 0) || null;
}
