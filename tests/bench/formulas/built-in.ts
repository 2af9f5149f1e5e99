import { join } from "node:path";
import type * as Node from "../../../src/local-host/node";
import type { CellData } from "../../../src/local-host/workbook-data";
import { plain } from "./bare/plain";
import { builtInFormulas } from "./built-in-formulas";
import { type FigureName, furthestApart } from "./figures";
import type { Measured } from "./measured";
import { PeakMemory } from "./peak-memory";
import { place, type SetRows } from "./set-rows";
import { timeOf } from "./time-of";

/**
 * A plain figure by the spreadsheet's built-in formulas, in the engine of the local workbook. The first
 * run is opening a workbook with them less opening the rows alone; the warm one is one cell edited.
 */
export async function builtIn(
  rows: SetRows,
  figure: FigureName,
  rowBytes: number,
): Promise<Measured> {
  const local = require(join(process.cwd(), "dist/local/node.cjs")) as typeof Node;
  const sets = local.plainTab(
    "Sets",
    rows.cells.map((row) => row.map(cellOf)),
  );
  const open = (tabs: readonly (typeof sets)[]) =>
    local.openHost({
      workbook: { name: "Built in", tabs, names: [], properties: {} },
      bundleSource: "",
      files: {},
    });
  let empty: Awaited<ReturnType<typeof open>> | undefined;
  const alone = await timeOf(async () => {
    empty = await open([sets]);
  });
  empty?.dispose();
  const asked = builtInFormulas(rows, figure);
  const memory = new PeakMemory();
  const { heapTotal, heapUsed } = process.memoryUsage();
  const held = await memory.start();
  let host: Awaited<ReturnType<typeof open>> | undefined;
  try {
    const first = await timeOf(async () => {
      host = await open([
        sets,
        ...asked.tabs.map(({ name, cells }) => local.plainTab(name, cells)),
      ]);
    });
    const peakBytes = Math.max(0, memory.peak() - held);
    const warm = await timeOf(async () => {
      host?.write("Sets", "G2", [[rows.cells[1]?.[place.rep]]]);
      await host?.settled();
    });
    const figures = (host?.values(asked.answer.tab) ?? [])
      .slice(asked.answer.from)
      .map((row) => row[asked.answer.column] as number);
    return {
      firstMs: first - alone,
      warmMs: warm,
      peakBytes,
      freeBytes: heapTotal - heapUsed,
      copies: peakBytes / rowBytes,
      apart: furthestApart(plain[figure](rows), figures),
    };
  } finally {
    host?.dispose();
    await memory.stop();
  }
}

function cellOf(cell: unknown): CellData | null {
  if (cell === "") return null;
  if (!(cell instanceof Date)) return { value: cell as string | number };
  // A spreadsheet counts days from 30 December 1899.
  return { value: Math.floor(cell.getTime() / 86_400_000) + 25_569, format: "yyyy-mm-dd" };
}
