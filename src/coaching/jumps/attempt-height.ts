import { accept, type Outcome, refuse } from "../../outcome";
import type { JumpAttempt } from "../record/jump-attempt";
import type { Plate } from "../record/plate";
import { flightHeight } from "./flight-height";
import { stackHeight } from "./stack-height";

/** What one attempt says about height. */
export type AttemptHeight = {
  readonly cm: number;
  /** A plate stack or box: the jump was at least this high, not this high. */
  readonly isBound: boolean;
};

/**
 * Height of an attempt: as recorded, or of the stack it cleared, or from its flight time.
 *
 * @returns cm. Refuses `attempt-missed`, `attempt-without-height`, and what `stackHeight` and
 * `flightHeight` refuse.
 */
export function attemptHeight(
  attempt: JumpAttempt,
  plates: readonly Plate[],
): Outcome<AttemptHeight> {
  const { heightCm, stackKg, cleared, flightS, landingCm } = attempt;
  if (cleared === false) return refuse("attempt-missed");
  if (heightCm !== null) return accept({ cm: heightCm, isBound: cleared === true });
  if (stackKg.length > 0) return withBound(stackHeight(stackKg, plates), true);
  if (flightS === null) return refuse("attempt-without-height");
  return withBound(flightHeight(flightS, landingCm ?? 0), false);
}

function withBound(height: Outcome<number>, isBound: boolean): Outcome<AttemptHeight> {
  return height.ok ? accept({ cm: height.value, isBound }) : height;
}
