import type { Cells } from "../cells";
import type { TableName } from "../table-name";
import type { Column } from "./column";
import { headerWords } from "./header-words";
import type { RecognisedHeader } from "./recognise-header";
import { sampleColumn, valueFit } from "./value-fit";

/** Tables of which each row is a day's: no other column of theirs holds days. */
const ofDays: ReadonlySet<TableName> = new Set(["Sets", "Jumps", "Diary", "Runs"]);

/** "62.5 x 5 x 3", "5x5 @ 80": three numbers and a times sign between two of them. */
const scheme = /^\D{0,2}\d+(?:[.,]\d+)?\D{0,5}[x×*]\D{0,3}\d+(?:[.,]\d+)?\D{1,6}\d/i;
const isScheme = (cell: unknown) => typeof cell === "string" && scheme.test(cell);

/** "Session", "Thursday", "Gym night": when it was, where days stand below. Any other heading is asked about. */
const whenever =
  /^(?:(?:gym|training|lifting) )?(?:session|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|night|evening|morning)$/;
/** "Top set", "Working sets", or "What" beside the lift: what was lifted, where loads and repetitions stand below. */
const whatever = /(?:^| )sets?$|^what$/;

/** Filled cells that say so at least: one alone may be a slip. */
const least = 2;

/**
 * Meanings that a log cannot do without and no heading names outright, told by what stands below: the
 * one column of nothing but days under "Session" or "Thursday", and in a log that names its lifts the
 * one of loads × repetitions × sets under "Top set".
 *
 * @returns the columns by meaning; empty where none or more than one fits
 */
export function namedByValues(
  table: TableName,
  { fields, unknown }: RecognisedHeader,
  line: readonly unknown[],
  { cells, first, end }: { readonly cells: Cells; readonly first: number; readonly end: number },
): Readonly<Record<string, Column>> {
  const sampleOf = (index: number) => sampleColumn(cells, first, end, index);
  const only = (
    among: readonly number[],
    named: RegExp,
    fits: (sample: readonly unknown[]) => boolean,
  ): Column | null => {
    const [at, ...others] = among.filter((index) => {
      const sample = sampleOf(index);
      return sample.length >= least && fits(sample);
    });
    if (at === undefined || others.length > 0 || !named.test(headerWords(line[at]).words))
      return null;
    const heading = String(line[at]).trim();
    return { index: at, heading, ...headerWords(heading) };
  };
  const day =
    ofDays.has(table) && fields.day === undefined
      ? only(unknown, whenever, (sample) => valueFit("day", sample) === 1)
      : null;
  const loads =
    table === "Sets" && fields.exercise && !fields.load && !fields.scheme
      ? // "Top set" may number a set as well.
        only(fields.set ? [...unknown, fields.set.index] : unknown, whatever, (sample) => {
          const figures = sample.filter((cell) => /\d/.test(String(cell)));
          return figures.length >= least && figures.every(isScheme);
        })
      : null;
  return { ...(day && { day }), ...(loads && { scheme: loads }) };
}
