import fc from "fast-check";
import { blocksOfCells } from "../../../src/actions/week/blocks-of-cells";
import type { CellToWrite } from "../../../src/actions/week/row-of-week";
import type { Block } from "../../../src/actions/workbook";

const at = (row: number, column: number): CellToWrite => ({
  row,
  column,
  value: `${row},${column}`,
});
/** The cells that blocks write, each with its value. */
const written = (blocks: readonly Block[]) =>
  blocks.flatMap(({ row, column, values }) =>
    values.flatMap((line, i) =>
      line.map((value, j) => ({ row: row + i, column: column + j, value })),
    ),
  );
const inOrder = (cells: readonly CellToWrite[]) => cells.map((one) => JSON.stringify(one)).sort();

/** Lines of a plan, of which every other one changes in two places; the third column is the coach's. */
const everyOtherOf = (lines: number) => {
  const ours = Array.from({ length: lines }, (_, i) => [1, 2, 4, 5, 6].map((j) => at(5 + i, j)));
  const isChanged = ({ row, column }: CellToWrite) => row % 2 === 1 && (column + row) % 3 === 0;
  const all = ours.flat();
  return [all.filter(isChanged), all.filter((one) => !isChanged(one))] as const;
};

test("cells side by side and one under another are one write, those apart one each while they are few", () => {
  expect(blocksOfCells([at(6, 2), at(5, 2), at(5, 1), at(6, 1)])).toEqual([
    {
      row: 5,
      column: 1,
      values: [
        ["5,1", "5,2"],
        ["6,1", "6,2"],
      ],
    },
  ]);
  const [changed, standing] = everyOtherOf(6);
  expect(inOrder(written(blocksOfCells(changed, standing)))).toEqual(inOrder(changed));
  expect(blocksOfCells([], standing)).toEqual([]);
});

test("for changes that lie apart the number of writes does not grow with the lines", () => {
  for (const lines of [60, 600]) {
    const [changed, standing] = everyOtherOf(lines);
    expect(blocksOfCells(changed)).toHaveLength(changed.length);
    expect(blocksOfCells(changed, standing)).toHaveLength(2);
  }
});

test("every cell to write is written once, and no cell that is not ours", () => {
  const cell = fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 8 }));
  const cells = fc.uniqueArray(cell, { selector: String, maxLength: 120 });
  fc.assert(
    fc.property(cells, fc.nat(120), (places, many) => {
      const all = places.map(([row, column]) => at(row, column));
      const [changed, standing] = [all.slice(0, many), all.slice(many)];
      const wrote = inOrder(written(blocksOfCells(changed, standing)));
      expect(new Set(wrote).size).toBe(wrote.length);
      expect(wrote).toEqual(expect.arrayContaining(inOrder(changed)));
      expect(inOrder(all)).toEqual(expect.arrayContaining(wrote));
      expect(blocksOfCells(changed, standing).length).toBeLessThanOrEqual(
        Math.max(8, blocksOfCells(changed).length),
      );
    }),
    { numRuns: 1000, seed: 20260605 },
  );
});
