import type { Cells } from "../cells";
import type { Column } from "./column";
import { bestFit, sampleColumn, valueFit } from "./value-fit";

/** A column whose values speak against its heading. */
export type Contradiction = {
  readonly field: string;
  readonly column: Column;
  readonly sample: readonly unknown[];
  /** The meaning its values have instead, when another heading is contradicted too: two columns swapped. */
  readonly guess: string | null;
};

const fewest = 5;

/** Headings that hardly one value of their column bears out; meanings that take anything have none. */
export function contradictedColumns(
  cells: Cells,
  first: number,
  end: number,
  fields: Readonly<Record<string, Column>>,
): Contradiction[] {
  const against = Object.entries(fields).flatMap(([field, column]) => {
    const sample = sampleColumn(cells, first, end, column.index);
    return sample.length >= fewest && valueFit(field, sample) < 0.1
      ? [{ field, column, sample }]
      : [];
  });
  // Its own meaning among them fits hardly one of its values.
  const meanings = against.map(({ field }) => field);
  return against.map((one) => ({ ...one, guess: bestFit(meanings, one.sample)?.field ?? null }));
}
