// How long the local workbook takes with 30,000 set rows: `node tests/run.mjs tests/bench/local-host/main.ts`.
// Prints milliseconds of this machine; nothing here is asserted.
import { join } from "node:path";
import type * as Node from "../../../src/local-host/node";
import type { CellData } from "../../../src/local-host/workbook-data";

const rows = 30_000;
const columns = 12;
const formulas = 40;
const script = `
/** @customfunction */
function ROWS_WITH(range, text) {
  return range.reduce(function (n, row) { return row[1] === text ? n + 1 : n; }, 0);
}`;

async function main(): Promise<void> {
  const started = performance.now();
  const lap = (what: string, from: number) =>
    process.stdout.write(`${what}: ${Math.round(performance.now() - from)} ms\n`);
  const { openHost, plainTab } = require(join(process.cwd(), "dist/local/node.cjs")) as typeof Node;
  lap("load the program", started);
  const cells: (CellData | null)[][] = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) =>
      column === 0
        ? { value: 46_000 + (row % 120), format: "yyyy-mm-dd" }
        : column === 1
          ? { value: `Athlete ${row % 60}` }
          : { value: (row * column) % 97 },
    ),
  );
  const asked: CellData[][] = Array.from({ length: formulas }, (_, i) => [
    { value: null, formula: `=ROWS_WITH(Sets!A:L, "Athlete ${i}")` },
  ]);
  const opened = performance.now();
  const host = await openHost({
    workbook: {
      name: "Large",
      tabs: [plainTab("Squad", asked), plainTab("Sets", cells)],
      names: [],
      properties: {},
    },
    bundleSource: script,
    files: {},
  });
  lap(`open with ${rows} rows and ${formulas} formulas over whole columns`, opened);
  const edited = performance.now();
  host.write("Sets", "B2", [["Athlete 1"]]);
  await host.settled();
  lap("edit a cell and calculate again", edited);
  const read = performance.now();
  host.values("Sets");
  lap("read all values", read);
  const kept = performance.now();
  host.workbook();
  lap("take the workbook for saving", kept);
  host.dispose();
}

void main();
