import type { Cells } from "../cells";
import type { Reading } from "../reading";
import type { ColumnQuestion } from "./decide-columns";
import { sampleColumn, threeSamples } from "./value-fit";

/** Units and date orders that the reading could not settle, as questions. */
export function questionsOfReading(
  reading: Reading<unknown>,
  cells: Cells,
  first: number,
  end: number,
): ColumnQuestion[] {
  const asked = new Map<number, ColumnQuestion>();
  for (const { code, column, facts } of reading.issues) {
    const about =
      code === "unit-unsettled" ? "unit" : code === "date-order-unsettled" ? "date order" : null;
    if (about === null || column < 1 || asked.has(column)) continue;
    asked.set(column, {
      column,
      heading: String(facts.heading ?? ""),
      about,
      samples: threeSamples(sampleColumn(cells, first, end, column - 1)),
      guess: null,
      choices: about === "unit" ? String(facts.units).split(" or ") : ["day first", "month first"],
    });
  }
  return [...asked.values()];
}
