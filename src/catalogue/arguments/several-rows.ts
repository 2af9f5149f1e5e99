import type { Outcome } from "../../outcome";
import type { AskedAthlete, AthletesArgument } from "../../rows/argument/athletes-argument";
import { refusalSentence } from "../../words/refusals";
import { type ToldBeside, withShared, withUnused } from "./unused-rows";

/**
 * Several rows of the result for each athlete asked about, the name first in each. A blank cell gives
 * a blank row; among several a refusal is one row, its sentence after the name; a single one throws.
 *
 * @param width columns of the result, the name counted, the last of words
 * @param unused rows not used: those of an athlete without an answer are told after the refusal, those of
 * no one athlete once, after the words of the first row
 */
export function severalRowsForAthletes(
  { asked, single }: AthletesArgument,
  width: number,
  figures: (asked: AskedAthlete) => Outcome<readonly (readonly unknown[])[]>,
  unused: ToldBeside,
): unknown[][] {
  const first = asked.findIndex(({ athlete }) => athlete !== "");
  return asked.flatMap((one, at) => {
    if (one.athlete === "") return [Array<unknown>(width).fill("")];
    const rows = figures(one);
    const told = (words: unknown, row: number) =>
      at === first && row === 0 ? withShared(String(words), unused.shared) : words;
    if (!rows.ok) {
      const sentence = told(withUnused(refusalSentence(rows.refusal), unused.of(one.athlete)), 0);
      if (single) throw new Error(String(sentence));
      return [[one.athlete, sentence, ...Array<string>(width - 2).fill("–")]];
    }
    return rows.value.map((row, place) => [
      one.athlete,
      ...row.slice(0, -1),
      told(row[row.length - 1], place),
    ]);
  });
}
