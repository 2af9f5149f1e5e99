import type { Cells } from "../cells";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { unitOf } from "../value/units";
import type { Column } from "./column";
import type { FoundHeader } from "./find-header";

/** Meanings that have no unit: something under them is data. */
const wordsOf = ["athlete", "exercise", "test", "race", "rule"];

/** A row of units under the header ("", "", "kg", "m/s") gives its units to the columns. */
export function withUnitsRow(found: FoundHeader, cells: Cells, end: number): FoundHeader {
  if (found.first >= end) return found;
  const line = cells[found.first]!;
  const filled = line.filter((cell) => !isBlank(cell));
  const bare = (cell: unknown) => String(cell).replace(/[()[\]]/g, "");
  const units = filled.filter((cell) => !isDitto(cell) && unitOf(bare(cell)) !== null).length;
  const wordsOnly = filled.every(
    (cell) =>
      typeof cell === "string" && !/\d/.test(cell.replace(/0\s*[-–]\s*10|1\s*[-–]\s*[57]/, "")),
  );
  // "Ilka, mile" is an athlete and her event.
  if (wordsOf.some((field) => !isBlank(line[found.fields[field]?.index ?? -1]))) return found;
  if (units === 0 || !wordsOnly || units < filled.length / 2) return found;
  const united = (column: Column): Column => ({
    ...column,
    unit: column.unit ?? unitOf(bare(line[column.index])),
  });
  return {
    ...found,
    first: found.first + 1,
    fields: Object.fromEntries(
      Object.entries(found.fields).map(([field, column]) => [field, united(column)]),
    ),
    repColumns: found.repColumns.map(united),
  };
}
