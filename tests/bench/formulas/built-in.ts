import { join } from "node:path";
import type * as Node from "../../../src/local-host/node";
import type { CellData } from "../../../src/local-host/workbook-data";
import { baselineSessions, type Figures, recentSessions } from "./figures";
import { place, reps, type SetRows } from "./set-rows";

/** Figures, and how long the engine took for the formulas beyond opening the rows alone. */
export type BuiltIn = {
  readonly figures: Figures;
  readonly firstMs: number;
  readonly warmMs: number;
};

const letter = (index: number) => String.fromCharCode(65 + index);
const formula = (text: string): CellData => ({ value: null, formula: `=${text}` });

/** The same figures by the spreadsheet's built-in formulas, in the engine of the local workbook. */
export async function builtInFigures({ cells, athletes }: SetRows): Promise<BuiltIn> {
  const local = require(join(process.cwd(), "dist/local/node.cjs")) as typeof Node;
  const end = cells.length;
  const rows = local.plainTab(
    "Sets",
    cells.map((row) => row.map((cell) => (cell === "" ? null : cellOf(cell)))),
  );
  const column = (index: number) => `Sets!${letter(index)}$2:${letter(index)}$${end}`;
  const speeds = (row: number) =>
    `Sets!${letter(place.rep)}${row}:${letter(place.rep + reps - 1)}${row}`;
  const byRow = Array.from({ length: end - 1 }, (_, at) => [
    formula(`MAX(${speeds(at + 2)})`),
    formula(`(A${at + 2}-INDEX(${speeds(at + 2)},1,COUNT(${speeds(at + 2)})))/A${at + 2}`),
  ]);
  const fastest = `Rows!A$2:A$${end}`;
  const byAthlete = athletes.map((name, at) => {
    const own = `${column(place.athlete)}=A${at + 1}`;
    const markers = `FILTER(${fastest},(${own})*(${column(place.kind)}="marker"))`;
    const sumOf = (set: string) =>
      Array.from(
        { length: reps },
        (_, rep) =>
          `SUMIFS(${column(place.rep + rep)},${column(place.athlete)},A${at + 1},${column(place.day)},B${at + 1},${column(place.set)},${set})`,
      ).join("+");
    return [
      { value: name },
      formula(`MAXIFS(${column(place.day)},${column(place.athlete)},A${at + 1})`),
      formula(
        `MAXIFS(${column(place.set)},${column(place.athlete)},A${at + 1},${column(place.day)},B${at + 1})`,
      ),
      formula(`(${sumOf(`C${at + 1}`)})/(${sumOf("1")})-1`),
      formula(`SLOPE(FILTER(${fastest},${own}),FILTER(${column(place.load)},${own}))`),
      formula(
        `AVERAGE(TAKE(${markers},-${recentSessions}))/AVERAGE(TAKE(${markers},${baselineSessions}))-1`,
      ),
    ];
  });
  const open = (tabs: ReturnType<typeof local.plainTab>[]) =>
    local.openHost({
      workbook: { name: "Built in", tabs, names: [], properties: {} },
      bundleSource: "",
      files: {},
    });
  const alone = performance.now();
  (await open([rows])).dispose();
  const started = performance.now();
  const host = await open([
    rows,
    local.plainTab("Rows", [[], ...byRow]),
    local.plainTab("Each", byAthlete),
  ]);
  const firstMs = performance.now() - started - (started - alone);
  const edited = performance.now();
  host.write("Sets", `${letter(place.rep)}2`, [[cells[1]?.[place.rep]]]);
  await host.settled();
  const warmMs = performance.now() - edited;
  const each = host.values("Each");
  const figures = {
    loss: host
      .values("Rows")
      .slice(1)
      .map((row) => row[1] as number),
    setToSet: each.map((row) => row[3] as number),
    line: each.map((row) => row[4] as number),
    hold: each.map((row) => row[5] as number),
  };
  host.dispose();
  return { figures, firstMs, warmMs };
}

function cellOf(cell: unknown): CellData {
  if (!(cell instanceof Date)) return { value: cell as string | number };
  // A spreadsheet counts days from 30 December 1899.
  return { value: Math.floor(cell.getTime() / 86_400_000) + 25_569, format: "yyyy-mm-dd" };
}
