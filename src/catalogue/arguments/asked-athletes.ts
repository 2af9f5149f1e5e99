import { nameKey } from "../../coaching/record/name-key";
import { accept, type Outcome, refuse } from "../../outcome";
import {
  type AskedAthlete,
  type AthletesArgument,
  readAthletesArgument,
} from "../../rows/argument/athletes-argument";
import { nameLink } from "../../rows/name/near-name";
import { refusalSentence } from "../../words/refusals";
import { thrown } from "./thrown";

/** The athletes a formula is asked about. Throws `athlete-blank` when nobody is named. */
export function askedAthletes(argument: unknown): AthletesArgument {
  const read = readAthletesArgument(argument);
  if (read.asked.every(({ athlete }) => athlete === "")) thrown(refuse("athlete-blank"));
  return read;
}

/**
 * One row of the result for each athlete asked about. A blank cell gives a row of blanks; among
 * several a refusal is that athlete's row, its sentence first; a single one throws it.
 *
 * @param width columns of the result
 */
export function rowsForAthletes(
  { asked, single }: AthletesArgument,
  width: number,
  figures: (asked: AskedAthlete, at: number) => Outcome<readonly unknown[]>,
): unknown[][] {
  return asked.map((one, at) => {
    if (one.athlete === "") return Array<string>(width).fill("");
    const row = figures(one, at);
    if (row.ok) return [...row.value];
    if (single) thrown(row);
    return [refusalSentence(row.refusal), ...Array<string>(width - 1).fill("–")];
  });
}

/**
 * Holds that some row names this athlete.
 * Refuses `athlete-not-in-rows` with `athlete`, `tables`, and a `near` name the rows do have.
 *
 * @param names every name in the rows
 */
export function knownAthlete(
  athlete: string,
  names: ReadonlyMap<string, string>,
  tables: string,
): Outcome<string> {
  const known = names.get(nameKey(athlete));
  if (known !== undefined) return accept(known);
  const near = [...names.values()].filter((name) => nameLink(athlete, name) !== null);
  return refuse("athlete-not-in-rows", { athlete, tables, near: near.join(" or ") });
}
