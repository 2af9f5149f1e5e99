import { builtIn } from "./built-in";
import { builtInName, contenders, type Timed } from "./contenders";
import { type FigureName, furthestApart } from "./figures";
import type { Measured } from "./measured";
import { PeakMemory } from "./peak-memory";
import { type SetRows, setRows } from "./set-rows";
import { timeOf } from "./time-of";

const collect = () => (globalThis as { gc?: () => void }).gc?.();

/** Further runs after the first: enough for the engine to compile what runs often, and no more. */
const runs = { least: 2, most: 50, untilMs: 2_000 } as const;

/** A formula is handed its rows anew with every call: lists, rows and dates; one seen could be remembered. */
const anew = (rows: SetRows): SetRows => ({
  ...rows,
  cells: rows.cells.map((row) =>
    row.map((cell) => (cell instanceof Date ? new Date(cell.getTime()) : cell)),
  ),
});

/** Times one contender at one figure over so many rows; meant for a process of its own. */
export async function measureOne(
  name: string,
  figure: FigureName,
  count: number,
): Promise<Measured> {
  collect();
  const before = process.memoryUsage().heapUsed;
  const rows = setRows(count);
  collect();
  const rowBytes = process.memoryUsage().heapUsed - before;
  if (name === builtInName) return builtIn(rows, figure, rowBytes);
  const contender = contenders[name];
  if (contender === undefined) throw new Error(`${name} is no contender`);

  const ready = async () => contender(anew(rows), figure);
  const memory = new PeakMemory();
  let given = await ready();
  collect();
  const held = await memory.start();
  const firstMs = await timeOf(given.run);
  const peakBytes = Math.max(0, memory.peak() - held);
  await memory.stop();
  // Memory is not swept between the runs by force: that throws away what the engine has compiled.
  let warmMs = Number.POSITIVE_INFINITY;
  let spent = 0;
  for (let run = 0; run < runs.least || (run < runs.most && spent < runs.untilMs); run++) {
    given = await ready();
    const ms = await timeOf(given.run);
    spent += ms;
    warmMs = Math.min(warmMs, ms);
  }
  const check = given.check?.();
  return {
    firstMs,
    warmMs,
    peakBytes,
    copies: peakBytes / rowBytes,
    apart: check ? furthestApart(check.byHand, check.found) : null,
  };
}
