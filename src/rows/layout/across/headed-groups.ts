import type { Cells } from "../../cells";
import { rowsSearched } from "../../header/rows-searched";
import { sampleColumn } from "../../header/value-fit";
import { dayOfCell } from "../../value/day-of-cell";
import { labelsSet } from "../labels-sets";
import { groupsUnder } from "./groups-under";
import type { HeadedGroups } from "./header-of-groups";
import { headingParts, isFigure } from "./heading-parts";
import { liftsAsLoads } from "./lifts-as-loads";
import { isHeading, under, upperHeadings } from "./upper-headings";

/** True where one of the first rows is such a header. */
export function hasHeadedGroups(cells: Cells, end: number): boolean {
  for (let row = 0; row < Math.min(end, rowsSearched); row++)
    if (headedGroups(cells, row, end) !== null) return true;
  return false;
}

/** The header in this row, with up to two rows of headings above it; null when it is none. */
export function headedGroups(cells: Cells, row: number, end: number): HeadedGroups | null {
  const line = cells[row]!;
  // Most rows are data, and seen so at their first load or speed.
  if (line.some((cell) => typeof cell === "number" && !isHeading(cell))) return null;
  const own = liftsAsLoads(Array.from(line, headingParts), (column) => {
    const sample = sampleColumn(cells, row + 1, end, column);
    return sample.length === 0 || !sample.every(labelsSet);
  });
  const left = own.findIndex(isFigure);
  if (left < 0 || !line.every((cell, at) => at < left || isHeading(cell))) return null;
  // Under several days it is a grid of them.
  if ((cells[row - 1] ?? []).slice(left).filter((cell) => dayOfCell(cell) !== null).length > 1)
    return null;
  let top = row;
  let all = own;
  for (let above = row - 1; above >= Math.max(0, row - 2); above--) {
    const upper = upperHeadings(cells[above]!, left, own.length);
    if (upper === null) break;
    all = all.map((heading, at) => under(heading, upper[at]!));
    top = above;
  }
  return groupsUnder(cells, { row, top, left, end }, all);
}
