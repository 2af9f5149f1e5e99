import { type Block, isSame, rotation } from "./block";
import { leastReserve } from "./next-block";
import { mostReps } from "./repetition-load";
import { type StepSize, stepUpKg } from "./step-up";

/** One step of the rotation with its load and what it leaves in reserve (null without a guard). */
export type LadderStep = {
  readonly block: Block;
  readonly loadKg: number;
  readonly reserve: number | null;
};

export type Ladder = {
  readonly steps: readonly LadderStep[];
  /** The first load had to be lower, or a step smaller, so that the last step keeps its reserve. */
  readonly lowered: "start" | "steps" | null;
};

/**
 * The rest of the rotation from a block on, planned backwards from its last step: each step adds the
 * rise asked for in whole plate steps (none when one would be more than the largest step), and every
 * step must leave two repetitions in reserve at the guard. When the last step would not, steps stay level first; when
 * even a level ladder would not, the start comes down (three steps of 10 % multiply to 1.33: a 5×5 at
 * 70 % of best would end at a 3×3 at 93 %, the chart's 3-repetition limit).
 *
 * @param guardKg cautious strength, kg; null plans without a guard, steps kept small
 */
export function ladder(
  given: StepSize & {
    readonly block: Block;
    readonly loadKg: number;
    readonly guardKg: number | null;
  },
): Ladder {
  const { block, loadKg, guardKg, stepKg } = given;
  const from = Math.max(
    0,
    rotation.findIndex((one) => isSame(one, block)),
  );
  const blocks = rotation.slice(from);
  const reserve = (one: Block, kg: number) =>
    guardKg === null ? null : mostReps(kg / guardKg) - one.reps;
  const climb = (start: number, rises: number): LadderStep[] => {
    let kg = start;
    return blocks.map((one, i) => {
      if (i > 0 && i <= rises) kg += stepUpKg(kg, given);
      return { block: one, loadKg: kg, reserve: reserve(one, kg) };
    });
  };
  const keeps = (steps: readonly LadderStep[]) =>
    steps.every((step) => step.reserve === null || step.reserve >= leastReserve);
  for (let start = loadKg; start > 0; start -= stepKg) {
    for (let rises = blocks.length - 1; rises >= 0; rises--) {
      const steps = climb(start, rises);
      if (!keeps(steps)) continue;
      const lowered = start < loadKg ? "start" : rises < blocks.length - 1 ? "steps" : null;
      return { steps, lowered };
    }
  }
  return { steps: [], lowered: "start" };
}
