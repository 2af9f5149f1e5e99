import type { Day } from "../../coaching/calendar/day";
import { nameKey } from "../../coaching/record/name-key";
import { accept, type Outcome, refuse } from "../../outcome";
import {
  type AskedAthlete,
  type AthletesArgument,
  readAthletesArgument,
} from "../../rows/argument/athletes-argument";
import { nameLink } from "../../rows/name/near-name";
import { refusalSentence } from "../../words/refusals";
import type { GivenTables } from "./given-tables";
import { thrown } from "./thrown";
import { type ToldBeside, withShared, withUnused } from "./unused-rows";

/** The athletes a formula is asked about. Throws `athlete-blank` when nobody is named. */
export function askedAthletes(argument: unknown): AthletesArgument {
  const read = readAthletesArgument(argument);
  if (read.asked.every(({ athlete }) => athlete === "")) thrown(refuse("athlete-blank"));
  return read;
}

/**
 * One row of the result for each athlete asked about. A blank cell gives a row of blanks; among
 * several a refusal is that athlete's row, its sentence first; a single one throws it. Rows of the
 * athlete that are not used may be why there is no figure: they are told after it.
 *
 * @param width columns of the result, the last of words
 * @param unused rows not used, those of no one athlete told once, after the words of the first; left out where a formula tells them itself
 */
export function rowsForAthletes(
  { asked, single }: AthletesArgument,
  width: number,
  figures: (asked: AskedAthlete, at: number) => Outcome<readonly unknown[]>,
  unused: ToldBeside = { of: () => 0, shared: { nameless: 0, ofTable: new Map() } },
): unknown[][] {
  const first = asked.findIndex(({ athlete }) => athlete !== "");
  return asked.map((one, at) => {
    if (one.athlete === "") return Array<string>(width).fill("");
    const row = figures(one, at);
    const said = (words: unknown) =>
      at === first ? withShared(String(words), unused.shared) : String(words);
    if (row.ok) return [...row.value.slice(0, -1), said(row.value[row.value.length - 1])];
    const sentence = said(withUnused(refusalSentence(row.refusal), unused.of(one.athlete)));
    if (single) throw new Error(sentence);
    return [sentence, ...Array<string>(width - 1).fill("–")];
  });
}

/** The same of athletes whom the rows up to a day name; the others are refused as by `knownAthlete`. */
export function rowsForKnown(
  asked: AthletesArgument,
  given: GivenTables,
  asOf: Day,
  width: number,
  figures: (athlete: string) => Outcome<readonly unknown[]>,
): unknown[][] {
  const names = given.namesUpTo(asOf);
  return rowsForAthletes(
    asked,
    width,
    ({ athlete }) => {
      const known = knownAthlete(athlete, names, given.lookedIn);
      return known.ok ? figures(athlete) : known;
    },
    given.unused,
  );
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
