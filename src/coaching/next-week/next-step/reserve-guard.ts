import { valueOrNull } from "../../../outcome";
import type { Block } from "../../blocks/block";
import { leastReserve } from "../../blocks/next-block";
import { chartReps, chartShare, mostReps, singleFromSet } from "../../blocks/repetition-load";
import type { PresentStep } from "../present-step/present-step";
import type { LiftState } from "../state/athlete-state";

/**
 * The strength a step is guarded by, kg: the cautious end of the estimate, or without one what the
 * sets' own repetitions in reserve say by the repetition table. It never raises a load.
 */
export function guardOf(state: LiftState, step: PresentStep): number | null {
  return state.strengthLowKg ?? seenGuardOf(state, step);
}

/** What the sets' own repetitions in reserve say, kg. */
export function seenGuardOf({ seenKg }: LiftState, step: PresentStep): number | null {
  return seenKg === undefined ? strengthSeen(step) : seenKg;
}

/** What is seen where a coach has set more than it: the set is taken to leave the two asked for. */
export function guardLeaving(
  guardKg: number | null,
  { block, loadKg }: { readonly block: Block; readonly loadKg: number },
): number | null {
  const share = chartShare(Math.min(chartReps, block.reps + leastReserve));
  return leavesReserve(block, loadKg, guardKg) || !share.ok ? guardKg : loadKg / share.value;
}

/**
 * The same for the repetitions told to be in reserve: whoever was seen with fewer than two left has no
 * more because a line through speeds says so, and the lesser of the two is told.
 */
export function toldGuardOf(state: LiftState, step: PresentStep): number | null {
  const guardKg = guardOf(state, step);
  const seenKg = fewLeft(step) ? seenGuardOf(state, step) : null;
  return seenKg === null ? guardKg : Math.min(guardKg ?? seenKg, seenKg);
}

/** What speaks against a load lifted before: a set that left more than the chart tells of does not. */
export function guardAgainst(state: LiftState, step: PresentStep): number | null {
  const isPastChart = step.block.reps + (step.plannedReserve ?? 0) > chartReps;
  return state.strengthLowKg ?? (isPastChart ? null : seenGuardOf(state, step));
}

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
export const fewLeft = ({ reserveSeen }: PresentStep) =>
  reserveSeen !== null && reserveSeen < leastReserve;

/** Of a day that asked for less than its plan the reserve says nothing of the plan: that of the session before it does. */
function strengthSeen(step: PresentStep): number | null {
  const { plannedReserve, reserveKg, block, heavierSeenKg } = step;
  if (plannedReserve === null) return null;
  const reps = Math.min(chartReps, block.reps + Math.floor(plannedReserve));
  const seenKg = valueOrNull(singleFromSet(reserveKg, reps));
  return fewLeft(step) ? seenKg : Math.max(seenKg ?? 0, heavierSeenKg ?? 0) || null;
}
