import type { Outcome } from "../../outcome";
import type { Athlete } from "../record/athlete";
import type { Plate } from "../record/plate";
import type { SquadRules } from "../record/squad-rules";
import type { SquadIndex } from "../series/squad-index";
import type { JumpTrend } from "./jump-trend";

/** Every athlete's trend in one jump test; ask by name. */
export function squadJumpTrend(_given: {
  readonly index: SquadIndex;
  readonly test: string;
  readonly plates: readonly Plate[];
  /** Rows of the Athletes table, for baseline dates and experience; may be empty. */
  readonly athletes: readonly Athlete[];
  readonly rules: SquadRules;
}): (athlete: string) => Outcome<JumpTrend> {
  throw new Error("being written");
}
