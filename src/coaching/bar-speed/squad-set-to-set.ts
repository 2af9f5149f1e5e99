import type { Outcome } from "../../outcome";
import type { SquadIndex } from "../series/squad-index";
import type { SetToSet } from "./set-to-set";

/** Every athlete's last session of one lift, set against set; ask by name. */
export function squadSetToSet(_given: {
  readonly index: SquadIndex;
  readonly exercise: string;
}): (athlete: string) => Outcome<SetToSet> {
  throw new Error("being written");
}
