import type { SquadRules } from "../record/squad-rules";
import { type Block, isSame, rotation } from "./block";

/**
 * Weeks a step is held before the next: the season's first 5×5 by a rule of its own, every other by
 * the rule for all; with steps by session each other step is done once.
 *
 * @param firstTurn no other block was done this season
 */
export function weeksToHold(
  block: Block,
  firstTurn: boolean,
  rules: Pick<SquadRules, "firstHold" | "holdWeeks" | "stepBySession">,
): number {
  if (firstTurn && isSame(block, rotation[0]!)) return rules.firstHold;
  return rules.stepBySession >= 0.5 ? 1 : rules.holdWeeks;
}
