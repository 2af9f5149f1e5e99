import type { Outcome } from "../../outcome";
import type { LoadSpeedLine } from "./load-speed-line";

/** Load at the lift's minimum speed, kg, with its 90 % interval. Context and guard, never a goal. */
export type StrengthEstimate = {
  readonly kg: number;
  readonly low: number;
  readonly high: number;
};

export function strengthEstimate(
  _line: LoadSpeedLine,
  _minimumSpeed: number,
): Outcome<StrengthEstimate> {
  throw new Error("being written");
}
