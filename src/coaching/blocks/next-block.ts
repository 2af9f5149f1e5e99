import { accept, type Outcome, refuse } from "../../outcome";
import { type Block, isSame, rotation } from "./block";
import { mostReps } from "./repetition-load";
import { stepUpKg } from "./step-up";

/** What decided the next block. */
export type NextBlockReason =
  | "quality-not-recorded"
  | "moved-poorly"
  | "volume-not-recorded"
  | "volume-missed"
  | "speed-not-recorded"
  | "speed-lost"
  | "step-up"
  | "step-too-coarse"
  | "reserve-short"
  | "reset";

export type NextBlock = {
  readonly block: Block;
  readonly loadKg: number;
  readonly reason: NextBlockReason;
  /** Repetitions in reserve at that block and load; null without a strength estimate. */
  readonly reserve: number | null;
};

/** Repetitions every step leaves in reserve, and the most a step may add (common practice). */
export const leastReserve = 2;
const mostRise = 0.1;

/**
 * Next block of the rotation and its load. The gates come strictly in order: movement quality, volume,
 * speed, then load; a blank gate holds. A step adds one step of load, no more than 10 % and only where
 * two repetitions stay in reserve. After the last block the rotation begins again at the heaviest load
 * not above the present one from which every later block, one step heavier each, keeps that reserve;
 * without a strength estimate at the heaviest load whose turn ends no more than one step above the
 * present one, so that each turn gains one step.
 *
 * @param strengthKg cautious end of the strength estimate, kg; null when there is none
 * @param stepKg smallest change of load, kg
 * @param riseOf what a step adds to a load, kg; one step of at most 10 % when left out
 * @param resetShare share of the present load the new rotation begins at, at most; 0 leaves it to the plan
 * @returns Refuses `load-impossible`, `strength-impossible`, `step-impossible`, `step-too-large`
 * and `reserve-never` when no load leaves two repetitions in reserve.
 */
export function nextBlock({
  block,
  loadKg,
  movedWell,
  volumeDone,
  heldSpeed,
  strengthKg,
  stepKg,
  riseOf = (kg) => stepUpKg(kg, { stepKg, largestStep: mostRise }),
  resetShare = 0,
}: {
  readonly block: Block;
  readonly loadKg: number;
  readonly movedWell: boolean | null;
  readonly volumeDone: boolean | null;
  readonly heldSpeed: boolean | null;
  readonly strengthKg: number | null;
  readonly stepKg: number;
  readonly riseOf?: (loadKg: number) => number;
  readonly resetShare?: number;
}): Outcome<NextBlock> {
  if (!(loadKg > 0 && loadKg <= 500)) return refuse("load-impossible", { loadKg });
  if (strengthKg !== null && !(strengthKg > 0 && strengthKg <= 500))
    return refuse("strength-impossible", { strengthKg });
  if (!(stepKg > 0 && stepKg <= 20)) return refuse("step-impossible", { stepKg });

  const reserveAt = (one: Block, kg: number) =>
    strengthKg === null ? null : mostReps(kg / strengthKg) - one.reps;
  const keeps = (one: Block, kg: number) => (reserveAt(one, kg) ?? leastReserve) >= leastReserve;
  /** The heaviest load, whole steps at or under one, that a check allows; null without one. */
  const under = (from: number, check: (kg: number) => boolean): number | null => {
    for (let kg = from; kg > 0; kg -= stepKg) if (check(kg)) return kg;
    return null;
  };
  const answer = (next: Block, kg: number | null, reason: NextBlockReason) =>
    kg === null
      ? refuse("reserve-never", { loadKg, strengthKg: strengthKg ?? 0 })
      : accept({ block: next, loadKg: kg, reason, reserve: reserveAt(next, kg) });
  const hold = (reason: NextBlockReason) => {
    const kg = under(loadKg, (one) => keeps(block, one));
    return answer(block, kg, kg === loadKg ? reason : "reserve-short");
  };

  if (movedWell !== true) return hold(movedWell === null ? "quality-not-recorded" : "moved-poorly");
  if (volumeDone !== true)
    return hold(volumeDone === null ? "volume-not-recorded" : "volume-missed");
  if (heldSpeed !== true) return hold(heldSpeed === null ? "speed-not-recorded" : "speed-lost");

  const place = rotation.findIndex((one) => isSame(one, block));
  const next = rotation[(place + 1) % rotation.length]!;
  if (place === rotation.length - 1) {
    const lower = resetShare > 0 ? Math.ceil(((1 - resetShare) * loadKg) / stepKg - 1e-9) : 0;
    const from = loadKg - lower * stepKg;
    const turn = (kg: number) => {
      const loads = [kg];
      while (loads.length < rotation.length) {
        const last = loads[loads.length - 1]!;
        loads.push(last + riseOf(last));
      }
      return loads;
    };
    const highest = loadKg + riseOf(loadKg);
    const whole = (kg: number) =>
      strengthKg === null
        ? resetShare > 0 || turn(kg)[rotation.length - 1]! <= highest + 1e-9
        : turn(kg).every((one, i) => keeps(rotation[i]!, one));
    const start = under(from, whole);
    if (start === null && strengthKg === null) return refuse("step-too-large", { stepKg, loadKg });
    return answer(next, start, "reset");
  }
  const rise = riseOf(loadKg);
  const wanted = loadKg + rise;
  const kg = under(wanted, (one) => keeps(next, one));
  if (kg !== wanted) return answer(next, kg, "reserve-short");
  return answer(next, kg, rise > 0 ? "step-up" : "step-too-coarse");
}
