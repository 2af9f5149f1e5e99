import { type Block, isSame, rotation } from "./block";
import { ladder } from "./ladder";
import { nextBlock } from "./next-block";
import { type StepSize, stepUpKg } from "./step-up";

/**
 * The next step of the ladder planned backwards, or the rotation's new start after its last, if all
 * goes well; where no step keeps its reserve, the same again.
 */
export function stepAfter(
  given: StepSize & {
    readonly block: Block;
    readonly loadKg: number;
    readonly guardKg: number | null;
    readonly resetShare?: number;
  },
): { readonly block: Block; readonly loadKg: number } {
  const { block, loadKg, guardKg, stepKg, resetShare = 0 } = given;
  if (!isSame(block, rotation[rotation.length - 1]!)) {
    const next = ladder(given).steps[1];
    return next ? { block: next.block, loadKg: next.loadKg } : { block, loadKg };
  }
  const all = { movedWell: true, volumeDone: true, heldSpeed: true };
  const riseOf = (kg: number) => stepUpKg(kg, given);
  const reset = nextBlock({
    block,
    loadKg,
    strengthKg: guardKg,
    stepKg,
    riseOf,
    resetShare,
    ...all,
  });
  return reset.ok ? reset.value : { block, loadKg };
}
