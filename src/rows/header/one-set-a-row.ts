import type { Cells } from "../cells";
import { countsSets } from "../layout/counts-sets";
import type { SpeedsSaid } from "../layout/shorthand/spread-speeds";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import type { Column } from "./column";
import { sampleColumn, valueFit } from "./value-fit";

type Fields = Readonly<Record<string, Column | undefined>>;

const rowsLooked = 200;

/**
 * What speeds under numbers alone are of. A row is one set, and they are of its repetitions, where a column
 * numbers the sets, most rows go on with the day, athlete and lift above, or in every row there are as many
 * as repetitions, not always the same. They are one a set where they never are as many.
 *
 * @returns null where it may be either
 */
export function speedsUnderNumbers(
  cells: Cells,
  { first }: { readonly first: number },
  end: number,
  { day, athlete, exercise, set, setCount, reps }: Fields,
  speeds: readonly number[],
): SpeedsSaid {
  const sample = speeds.flatMap((at) => sampleColumn(cells, first, end, at));
  if (valueFit("speed", sample) < 0.9) return "each set";
  const rows = cells
    .slice(first, Math.min(end, first + rowsLooked))
    .filter((line) => speeds.some((at) => !isBlank(line[at])));
  const counts = rows.map((line) => speeds.filter((at) => !isBlank(line[at])).length);
  const repsIn = (row: number) => Number(rows[row]![reps?.index ?? -1] || Number.NaN);
  if (counts.some((count, row) => count > repsIn(row))) return "each set";
  const sets = set ?? setCount;
  if (sets !== undefined)
    return countsSets(cells, sets.index, first, end) ? "each set" : "each rep";
  const asMany = counts.filter((count, row) => count === repsIn(row));
  if (asMany.length === rows.length && new Set(counts).size > 1) return "each rep";
  const same = [day, athlete, exercise].flatMap((column) => (column ? [column.index] : []));
  const goesOn = (line: readonly unknown[], at: number) =>
    at > 0 &&
    same.every(
      (column) =>
        isBlank(line[column]) ||
        isDitto(line[column]) ||
        String(line[column]) === String(rows[at - 1]![column]),
    );
  if (day && athlete && 2 * rows.filter(goesOn).length >= rows.length) return "each rep";
  return reps !== undefined && asMany.length === 0 ? "each set" : null;
}

/** Columns of a header that hold 1, 2, 3 and nothing else, from two on; none where the numbers do not run. */
export function numbersAlone(line: readonly unknown[]): readonly number[] {
  const columns = [...line.keys()].filter((at) => /^\s*\d{1,2}\s*$/.test(String(line[at])));
  const run = columns.every((at, place) => Number(line[at]) === place + 1);
  return run && columns.length > 1 ? columns : [];
}
