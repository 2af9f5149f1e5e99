import { type SquadHold, squadHold } from "../../coaching/hold/squad-hold";
import type { SquadIndex } from "../../coaching/series/squad-index";
import type { AthletesArgument } from "../../rows/argument/athletes-argument";
import type { GivenTables } from "./given-tables";

/** The seasons of a squad by the tables a formula was given. */
export const holdGiven = (
  index: SquadIndex,
  asked: AthletesArgument,
  given: GivenTables,
): SquadHold =>
  squadHold({
    index,
    plates: given.rows("Plates"),
    athletes: asked.table?.records ?? [],
    rules: given.rules,
  });
