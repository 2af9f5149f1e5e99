import type { Cells } from "../cells";

const rowsLooked = 200;

/** "Sets" heads set numbers when they run 1, 2, 3 down the rows, and counts of sets otherwise. */
export function countsSets(cells: Cells, index: number, first: number, end: number): boolean {
  let runs = 0;
  let rows = 0;
  let above = Number.NaN;
  // Sets are numbered from 1; counts that grow from week to week (3, 4, 5) are not.
  let fromOne = false;
  for (let row = first; row < Math.min(end, first + rowsLooked); row++) {
    const cell = cells[row]![index];
    const here = cell === "" ? Number.NaN : Number(cell);
    if (Number.isNaN(here)) continue;
    if (!Number.isNaN(above)) rows++;
    const goesOn: boolean = fromOne && (here === above + 1 || (here === 1 && above > 1));
    if (goesOn) runs++;
    fromOne = goesOn || here === 1;
    above = here;
  }
  return rows === 0 || runs < rows / 2;
}
