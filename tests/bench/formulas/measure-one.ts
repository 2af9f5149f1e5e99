import { barePass } from "./bare-pass";
import { contenders } from "./contenders";
import { furthestApart } from "./figures";
import { PeakMemory } from "./peak-memory";
import { setRows } from "./set-rows";

/** What one contender needed in a process of its own. */
export type Measured = {
  readonly firstMs: number;
  /** The middle of several further runs. */
  readonly warmMs: number;
  /** Memory beyond the rows, as a multiple of what the rows themselves take. */
  readonly copies: number;
  /** Largest difference from the bare pass's figures; null where figures are not the shared ones. */
  readonly apart: number | null;
};

const collect = () => (globalThis as { gc?: () => void }).gc?.();

/**
 * Time of one run. Beside other programs the clock also counts their turns, so the processor's time
 * is taken where it is the less; with several threads the clock is.
 */
async function timeOf(run: () => unknown): Promise<number> {
  const used = process.cpuUsage();
  const started = performance.now();
  await run();
  const clock = performance.now() - started;
  const { user, system } = process.cpuUsage(used);
  return Math.min(clock, (user + system) / 1000);
}

export async function measureOne(name: string, count: number): Promise<Measured> {
  const before = process.memoryUsage().heapUsed;
  const rows = setRows(count);
  collect();
  const rowBytes = process.memoryUsage().heapUsed - before;
  const contender = await contenders[name]?.(rows);
  if (contender === undefined) throw new Error(`${name} is no contender`);
  collect();
  const runs = Math.max(3, Math.min(15, Math.round(300_000 / count)));
  const times: number[] = [];
  for (let run = 0; run <= runs; run++) times.push(await timeOf(contender.run));
  const memory = new PeakMemory();
  collect();
  const held = await memory.start();
  await contender.run();
  const copies = (memory.peak() - held) / rowBytes;
  await memory.stop();
  const [firstMs = Number.NaN, ...warm] = times;
  const figures = await contender.figures?.();
  return {
    firstMs,
    warmMs: warm.sort((a, b) => a - b)[warm.length >> 1] ?? Number.NaN,
    copies,
    apart: figures ? furthestApart(barePass(rows), figures) : null,
  };
}
