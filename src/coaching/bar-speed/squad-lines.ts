import type { Outcome } from "../../outcome";
import type { SquadIndex } from "../series/squad-index";
import type { LoadSpeedLine } from "./load-speed-line";

/** Every athlete's line of one lift, the squad steadying each; ask by name. */
export function squadLines(_given: {
  readonly index: SquadIndex;
  readonly exercise: string;
}): (athlete: string) => Outcome<LoadSpeedLine> {
  throw new Error("being written");
}
