// How long the local workbook takes with 30,000 set rows: `node tests/run.mjs tests/bench/local-host/main.ts`.
// Prints milliseconds of this machine; nothing here is asserted.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type * as Node from "../../../src/local-host/node";
import type { CellData, WorkbookData } from "../../../src/local-host/workbook-data";
import { largeSquad } from "./large-squad";

const rows = 30_000;
const columns = 12;
const formulas = 40;
const edits = 5;
const script = `
/** @customfunction */
function ROWS_WITH(range, text) {
  return range.reduce(function (n, row) { return row[1] === text ? n + 1 : n; }, 0);
}`;

const lap = (what: string, from: number) =>
  process.stdout.write(`${what}: ${Math.round(performance.now() - from)} ms\n`);

async function measure(
  { openHost }: typeof Node,
  workbook: WorkbookData,
  bundleSource: string,
  edit: { readonly cell: string; readonly values: readonly unknown[] },
): Promise<void> {
  const opened = performance.now();
  const host = await openHost({ workbook, bundleSource, files: {} });
  lap("  open, all formulas calculated", opened);
  const times: number[] = [];
  for (let i = 0; i < edits; i++) {
    const edited = performance.now();
    host.write("Sets", edit.cell, [[edit.values[i % edit.values.length]]]);
    await host.settled();
    times.push(performance.now() - edited);
  }
  const shown = times.sort((a, b) => a - b).map((time) => Math.round(time));
  process.stdout.write(`  edit a cell and calculate again: ${shown.join(", ")} ms\n`);
  const read = performance.now();
  host.values("Sets");
  lap("  read all values", read);
  const kept = performance.now();
  host.workbook();
  lap("  take the workbook for saving", kept);
  host.dispose();
}

async function main(): Promise<void> {
  const started = performance.now();
  const local = require(join(process.cwd(), "dist/local/node.cjs")) as typeof Node;
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
  process.stdout.write(`${rows} rows, ${formulas} plain formulas over whole columns\n`);
  await measure(
    local,
    {
      name: "Large",
      tabs: [local.plainTab("Squad", asked), local.plainTab("Sets", cells)],
      names: [],
      properties: {},
    },
    script,
    { cell: "B2", values: ["Athlete 1", "Athlete 2"] },
  );
  process.stdout.write(`${rows} set rows of sixty athletes, the Squad tab of the sample\n`);
  const code = readFileSync(join(process.cwd(), "dist/code.js"), "utf8");
  const squad = largeSquad(join(process.cwd(), "sample-sheets"), rows);
  await measure(local, squad, code, { cell: `H${rows}`, values: [50, 52.5] });
}

void main();
