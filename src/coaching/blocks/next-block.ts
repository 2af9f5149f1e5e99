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
export const mostRise = 0.1;

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
export function nextBlock(given: StepGiven & Gates): Outcome<NextBlock> {
  const { block, loadKg, strengthKg, stepKg, resetShare = 0 } = given;
  const { riseOf = (kg: number) => stepUpKg(kg, { stepKg, largestStep: mostRise }) } = given;
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
  /** The block at a load, or under it where that leaves too little in reserve. */
  const at = (one: Block, wanted: number, reason: NextBlockReason) => {
    const kg = under(wanted, (load) => keeps(one, load));
    return answer(one, kg, kg === wanted ? reason : "reserve-short");
  };

  const held = heldBy(given);
  if (held !== null) return at(block, loadKg, held);
  const place = rotation.findIndex((one) => isSame(one, block));
  const next = rotation[(place + 1) % rotation.length]!;
  if (place < rotation.length - 1) {
    const rise = riseOf(loadKg);
    return at(next, loadKg + rise, rise > 0 ? "step-up" : "step-too-coarse");
  }
  const lower = resetShare > 0 ? Math.ceil(((1 - resetShare) * loadKg) / stepKg - 1e-9) : 0;
  const highest = loadKg + riseOf(loadKg);
  const start = under(loadKg - lower * stepKg, (kg) => {
    const loads = turnFrom(kg, riseOf);
    if (strengthKg !== null) return loads.every((one, i) => keeps(rotation[i]!, one));
    return resetShare > 0 || loads[rotation.length - 1]! <= highest + 1e-9;
  });
  if (start === null && strengthKg === null) return refuse("step-too-large", { stepKg, loadKg });
  return answer(next, start, "reset");
}

/** What the last session says of the gates; null where it was not recorded. */
type Gates = {
  readonly movedWell: boolean | null;
  readonly volumeDone: boolean | null;
  readonly heldSpeed: boolean | null;
};

type StepGiven = {
  readonly block: Block;
  readonly loadKg: number;
  readonly strengthKg: number | null;
  readonly stepKg: number;
  readonly riseOf?: (loadKg: number) => number;
  readonly resetShare?: number;
};

/** The first gate that holds the block; null when all are passed. */
export function heldBy({ movedWell, volumeDone, heldSpeed }: Gates): NextBlockReason | null {
  if (movedWell !== true) return movedWell === null ? "quality-not-recorded" : "moved-poorly";
  if (volumeDone !== true) return volumeDone === null ? "volume-not-recorded" : "volume-missed";
  if (heldSpeed !== true) return heldSpeed === null ? "speed-not-recorded" : "speed-lost";
  return null;
}

/** Loads of a whole turn of the rotation that begins at one, kg. */
function turnFrom(kg: number, riseOf: (loadKg: number) => number): readonly number[] {
  const loads = [kg];
  while (loads.length < rotation.length) {
    const last = loads[loads.length - 1]!;
    loads.push(last + riseOf(last));
  }
  return loads;
}
