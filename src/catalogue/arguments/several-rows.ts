import type { Outcome } from "../../outcome";
import type { AskedAthlete, AthletesArgument } from "../../rows/argument/athletes-argument";
import { refusalSentence } from "../../words/refusals";
import { thrown } from "./thrown";

/**
 * Several rows of the result for each athlete asked about, the name first in each. A blank cell gives
 * a blank row; among several a refusal is one row, its sentence after the name; a single one throws.
 *
 * @param width columns of the result, the name counted
 */
export function severalRowsForAthletes(
  { asked, single }: AthletesArgument,
  width: number,
  figures: (asked: AskedAthlete) => Outcome<readonly (readonly unknown[])[]>,
): unknown[][] {
  return asked.flatMap((one) => {
    if (one.athlete === "") return [Array<unknown>(width).fill("")];
    const rows = figures(one);
    if (single) thrown(rows);
    const said = rows.ok
      ? rows.value
      : [[refusalSentence(rows.refusal), ...Array<string>(width - 2).fill("–")]];
    return said.map((row) => [one.athlete, ...row]);
  });
}
