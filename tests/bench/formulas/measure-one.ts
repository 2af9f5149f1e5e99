import { builtIn } from "./built-in";
import { builtInName, contenders } from "./contenders";
import { type FigureName, furthestApart } from "./figures";
import type { Measured } from "./measured";
import { PeakMemory } from "./peak-memory";
import { setRows } from "./set-rows";
import { timeOf } from "./time-of";

const { gc } = globalThis as { gc?: (how?: { readonly type: "minor" }) => void };
const collect = () => gc?.();

/** Rows just handed over would be moved twice in memory, which a run that takes none never pays. */
function settleRows(): void {
  gc?.({ type: "minor" });
  gc?.({ type: "minor" });
}

/** Further runs after the first: enough for the engine to compile what runs often, and no more. */
const runs = { least: 2, most: 50, untilMs: 1_500 } as const;

const settleMs = 200;

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

  const timed = await contender(rows, figure);
  const memory = new PeakMemory();
  // What was let go is given back some time after the sweep; until then it would hide what is taken.
  collect();
  await new Promise((done) => setTimeout(done, settleMs));
  collect();
  const { heapTotal, heapUsed } = process.memoryUsage();
  const held = await memory.start();
  const firstMs = await timeOf(timed.run);
  const peakBytes = Math.max(0, memory.peak() - held);
  await memory.stop();
  // All memory is not swept between the runs by force: that throws away what the engine has compiled.
  let warmMs = Number.POSITIVE_INFINITY;
  let spent = 0;
  for (let run = 0; run < runs.least || (run < runs.most && spent < runs.untilMs); run++) {
    if (timed.before) {
      timed.before();
      settleRows();
    }
    const ms = await timeOf(timed.run);
    spent += ms;
    warmMs = Math.min(warmMs, ms);
  }
  const check = timed.check?.();
  return {
    firstMs,
    warmMs,
    peakBytes,
    freeBytes: heapTotal - heapUsed,
    copies: peakBytes / rowBytes,
    apart: check ? furthestApart(check.byHand, check.found) : null,
  };
}
