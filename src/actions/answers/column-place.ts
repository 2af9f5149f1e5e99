import { nameKey } from "../../coaching/record/name-key";
import type { Cells } from "../../rows/cells";
import { rowsSearched } from "../../rows/header/rows-searched";
import { isBlank } from "../../rows/value/blank";
import type { StoredColumnAnswer } from "./stored-answers";

/**
 * Where an answered column stands now, from 1; null when it is no longer there. Its tag says it. A
 * column emptied by cutting its cells, or taken out with its tag, is known again by its heading.
 */
export function columnPlace(
  { tag, heading, column }: Pick<StoredColumnAnswer, "tag" | "heading" | "column">,
  cells: Cells,
  tagged: ReadonlyMap<string, number>,
): number | null {
  const tagAt = tag === undefined ? undefined : tagged.get(tag);
  const byHeading = heading === "" ? null : headingPlace(heading, column, cells);
  if (tagAt === undefined) return heading === "" && tag === undefined ? column : byHeading;
  const emptied = cells.every((row) => isBlank(row[tagAt - 1]));
  return emptied && byHeading !== null ? byHeading : tagAt;
}

/** Where a heading stands: in the column given, else in the first that has it; null when in none. */
export function headingPlace(heading: string, column: number, cells: Cells): number | null {
  const wanted = nameKey(heading);
  const holds = (cell: unknown) => typeof cell === "string" && nameKey(cell) === wanted;
  const top = cells.slice(0, rowsSearched);
  if (top.some((row) => holds(row[column - 1]))) return column;
  for (const row of top) {
    const at = row.findIndex(holds);
    if (at >= 0) return at + 1;
  }
  return null;
}
