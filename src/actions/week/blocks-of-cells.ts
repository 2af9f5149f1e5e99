import type { Block } from "../workbook";
import type { CellToWrite } from "./merge-week";

/**
 * The fewest writes for a set of cells without touching any other: cells side by side make a run, runs
 * of the same columns one under another make a block.
 */
export function blocksOfCells(cells: readonly CellToWrite[]): Block[] {
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
