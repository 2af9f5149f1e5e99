import fc from "fast-check";
import { lostOf, nothingPassedOver, understoodBy } from "./cells-property";
import type { KeptTable } from "./kept-tables";

test("in a hundred and fifty kept tables, spoilt, no filled cell is passed over without a word", () => {
  fc.assert(nothingPassedOver, { numRuns: 150, seed: 4000 });
}, 120_000);

test("the check itself sees a note, a word beside a figure and a figure that a reader loses", () => {
  const kept: KeptTable = {
    table: "Sets",
    cells: [
      ["Date", "Athlete", "Exercise", "Load", "Speed", "Note"],
      ["2026-05-12", "Ilka", "squat", "85 (slow)", "0.62 0.60", "calm"],
    ],
    first: 1,
    also: [],
    title: "",
  };
  const lost = (change: (cell: string) => string, column: number) =>
    lostOf(kept, 1, column, (of, cells) =>
      understoodBy(
        of,
        cells.map((line, row) =>
          row === 0 ? line : line.map((cell, at) => (at === column ? change(String(cell)) : cell)),
        ),
      ),
    );
  for (const column of [3, 4, 5]) expect(lost((cell) => cell, column)).toBeNull();
  expect(lost(() => "", 5)).toBe(" or qz or 77777");
  expect(lost((cell) => cell.replace(/\(.*/, ""), 3)).toBe("85 (qzq) or 85 (vv)");
  expect(lost((cell) => cell.replace(/ .*/, ""), 4)).toBe("0.62 1.60 or 0.62 9.60");
});
