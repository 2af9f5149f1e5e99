import { type Block, isSame } from "../../blocks/block";
import { stepAfter } from "../../blocks/step-after";
import type { StepSize } from "../../blocks/step-up";

/** Block and load of one session of the week. */
export type SessionStep = {
  readonly block: Block;
  readonly loadKg: number;
  /** What is lifted instead unless the session before went well; null when nothing depends on it. */
  readonly otherwise: { readonly block: Block; readonly loadKg: number } | null;
};

/**
 * The steps of a week's sessions: all the same, or with steps by session each one step after the
 * one before it. Such a step is written ahead of the session it depends on, so it carries what to do
 * when that session did not go well: the same again.
 */
export function sessionSteps(
  given: StepSize & {
    readonly block: Block;
    readonly loadKg: number;
    readonly guardKg: number | null;
    readonly resetShare: number;
    readonly count: number;
    readonly stepEach: boolean;
  },
): readonly SessionStep[] {
  const { block, loadKg, count, stepEach } = given;
  const steps: SessionStep[] = [{ block, loadKg, otherwise: null }];
  while (steps.length < count) {
    const before = steps[steps.length - 1]!;
    if (!stepEach) {
      steps.push({ ...before, otherwise: null });
      continue;
    }
    const { block: lastBlock, loadKg: lastKg } = before;
    const next = stepAfter({ ...given, block: lastBlock, loadKg: lastKg });
    const moved = !isSame(next.block, lastBlock) || next.loadKg !== lastKg;
    steps.push({ ...next, otherwise: moved ? { block: lastBlock, loadKg: lastKg } : null });
  }
  return steps;
}
