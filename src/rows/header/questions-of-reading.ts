import type { Cells } from "../cells";
import type { Reading } from "../reading";
import type { ColumnQuestion } from "./decide-columns";
import { sampleColumn, threeSamples } from "./value-fit";

/** What is asked about the column of an issue, by its code. */
const byCode: Readonly<Record<string, "unit" | "date order">> = {
  "unit-unsettled": "unit",
  "date-order-unsettled": "date order",
};

/** True for an issue that an answer about its column settles. */
export const asksOfColumn = (code: string): boolean => code in byCode;

/** Units and date orders that the reading could not settle, as questions. */
export function questionsOfReading(
  reading: Reading<unknown>,
  cells: Cells,
  first: number,
  end: number,
): ColumnQuestion[] {
  const asked = new Map<number, ColumnQuestion>();
  for (const { code, column, facts } of reading.issues) {
    const about = byCode[code];
    if (about === undefined || column < 1 || asked.has(column)) continue;
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
