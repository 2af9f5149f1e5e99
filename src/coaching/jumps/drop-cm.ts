import { valueOrNull } from "../../outcome";
import type { JumpAttempt } from "../record/jump-attempt";
import type { Plate } from "../record/plate";
import { stackHeight } from "./stack-height";

/**
 * Height an attempt was dropped from, cm: as recorded, or of the plates that were written for it.
 *
 * @returns null when none was recorded, or the gym's table lacks one of its plates
 */
export function dropCmOf(
  { dropCm, dropStackKg }: Pick<JumpAttempt, "dropCm" | "dropStackKg">,
  plates: readonly Plate[],
): number | null {
  return dropStackKg === undefined ? dropCm : valueOrNull(stackHeight(dropStackKg, plates));
}
