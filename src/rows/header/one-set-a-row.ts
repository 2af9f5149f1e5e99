import type { Cells } from "../cells";
import { countsSets } from "../layout/counts-sets";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import type { Column } from "./column";
import { sampleColumn, valueFit } from "./value-fit";

type Fields = Readonly<Record<string, Column | undefined>>;

const rowsLooked = 200;

/**
 * True where numbers alone head speeds and count the repetitions of the one set a row holds: a column
 * numbers the sets, or most rows go on with the day, athlete and lift above. More speeds than
 * repetitions in a row are those of several sets.
 */
export function oneSetARow(
  cells: Cells,
  { first }: { readonly first: number },
  end: number,
  { day, athlete, exercise, set, reps }: Fields,
  speeds: readonly number[],
): boolean {
  if (
    valueFit(
      "speed",
      speeds.flatMap((at) => sampleColumn(cells, first, end, at)),
    ) < 0.9
  )
    return false;
  const rows = cells
    .slice(first, Math.min(end, first + rowsLooked))
    .filter((line) => speeds.some((at) => !isBlank(line[at])));
  const more = (line: readonly unknown[]) =>
    speeds.filter((at) => !isBlank(line[at])).length > Number(line[reps!.index] || speeds.length);
  if (reps !== undefined && rows.some(more)) return false;
  if (set !== undefined) return !countsSets(cells, set.index, first, end);
  if (day === undefined || athlete === undefined) return false;
  const same = [day, athlete, exercise].flatMap((column) => (column ? [column.index] : []));
  const goesOn = (line: readonly unknown[], at: number) =>
    at > 0 &&
    same.every(
      (column) =>
        isBlank(line[column]) ||
        isDitto(line[column]) ||
        String(line[column]) === String(rows[at - 1]![column]),
    );
  return 2 * rows.filter(goesOn).length >= rows.length;
}

/** Columns of a header that hold 1, 2, 3 and nothing else, from two on; none where the numbers do not run. */
export function numbersAlone(line: readonly unknown[]): readonly number[] {
  const columns = [...line.keys()].filter((at) => /^\s*\d{1,2}\s*$/.test(String(line[at])));
  const run = columns.every((at, place) => Number(line[at]) === place + 1);
  return run && columns.length > 1 ? columns : [];
}
