import type { Block } from "../workbook";
import type { CellToWrite } from "./row-of-week";

/** A writing takes no more writes than these for cells that lie apart, however many they are. */
const mostApart = 8;

/**
 * Few writes for a set of cells without touching any of the coach's. Cells that lie too far apart for
 * that are written together with those between them that are ours too and hold already what they
 * should: the number of writes then goes with the coach's own cells among ours, not with the squad.
 *
 * @param standing cells of ours that may be written again as they are
 */
export function blocksOfCells(
  cells: readonly CellToWrite[],
  standing: readonly CellToWrite[] = [],
): Block[] {
  const apart = rectangles(cells);
  if (apart.length <= mostApart) return apart;
  const together = rectangles([...cells, ...standing]);
  return together.length < apart.length ? together : apart;
}

/** Cells side by side make a run, runs of the same columns one under another make a block. */
function rectangles(cells: readonly CellToWrite[]): Block[] {
  const sorted = [...cells].sort((a, b) => a.row - b.row || a.column - b.column);
  const runs: { row: number; column: number; values: CellToWrite["value"][] }[] = [];
  for (const { row, column, value } of sorted) {
    const last = runs[runs.length - 1];
    if (last && last.row === row && last.column + last.values.length === column) {
      last.values.push(value);
    } else {
      runs.push({ row, column, values: [value] });
    }
  }
  const blocks: { row: number; column: number; values: CellToWrite["value"][][] }[] = [];
  for (const { row, column, values } of runs) {
    const above = blocks.find(
      (block) =>
        block.column === column &&
        block.row + block.values.length === row &&
        block.values[0]?.length === values.length,
    );
    if (above) above.values.push(values);
    else blocks.push({ row, column, values: [values] });
  }
  return blocks;
}
