import type { Cells } from "../cells";

const rowsLooked = 200;

/** "Sets" heads set numbers when they run 1, 2, 3 down the rows, and counts of sets otherwise. */
export function countsSets(cells: Cells, index: number, first: number, end: number): boolean {
  let runs = 0;
  let rows = 0;
  let above = Number.NaN;
  for (let row = first; row < Math.min(end, first + rowsLooked); row++) {
    const cell = cells[row]![index];
    const here = cell === "" ? Number.NaN : Number(cell);
    if (Number.isNaN(here)) continue;
    if (!Number.isNaN(above)) {
      rows++;
      if (here === above + 1 || (here === 1 && above > 1)) runs++;
    }
    above = here;
  }
  return rows === 0 || runs < rows / 2;
}
