import type { Cells } from "../cells";
import { rowsSearched } from "./rows-searched";

/** True where one of the first rows holds all of these headings, as written. */
export function hasHeadings(cells: Cells, headings: readonly string[]): boolean {
  return cells
    .slice(0, rowsSearched)
    .some((line) => headings.every((heading) => line.includes(heading)));
}
