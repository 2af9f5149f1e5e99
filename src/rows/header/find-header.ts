import type { Cells } from "../cells";
import type { TableName } from "../table-name";
import { neededFields } from "./columns";
import { type RecognisedHeader, recogniseHeader } from "./recognise-header";

/** The row that reads most like the table's header, and how well. */
export type FoundHeader = RecognisedHeader & {
  readonly row: number;
  /** Needed meanings that no heading names. */
  readonly missing: readonly string[];
};

const rowsSearched = 40;

/** Looks for the header among the first rows; null when no row names even one meaning. */
export function findHeader(table: TableName, cells: Cells, end: number): FoundHeader | null {
  let best: FoundHeader | null = null;
  let bestWeight = 0;
  for (let row = 0; row < Math.min(end, rowsSearched); row++) {
    const header = recogniseHeader(table, cells[row] ?? []);
    const missing = neededFields[table].filter((field) => header.fields[field] === undefined);
    const needed = neededFields[table].length - missing.length;
    const named = Object.keys(header.fields).length + header.repColumns.length;
    const weight = 10 * needed + named - 0.5 * header.unknown.length;
    if (named > 0 && weight > bestWeight) {
      best = { ...header, row, missing };
      bestWeight = weight;
    }
  }
  return best;
}
