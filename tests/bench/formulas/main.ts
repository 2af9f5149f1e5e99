import { cpus, loadavg } from "node:os";
import type { FigureName } from "./figures";
import type { Found } from "./found";
import { growth } from "./growth";
import { inChild } from "./in-child";
import { measureOne } from "./measure-one";
import { oneAgainstForty } from "./one-against-forty";
import { sizeTable } from "./size-table";
import { verdict } from "./verdict";
import { viewTimes } from "./view-times";

/**
 * The product's formulas beside a loop, bare passes, a database, a data frame and the spreadsheet's
 * built-in formulas, all over the same rows: `npm run bench`, or `npm run bench -- 3000 30000`. Each
 * is measured in a process of its own. Milliseconds are this machine's; the ratios are what counts.
 */
const usual = [3_000, 30_000, 300_000, 1_000_000];
const longestS = 600;

const parts: Readonly<Record<string, (...args: string[]) => unknown>> = {
  one: (name = "", figure = "", count = "") =>
    measureOne(name, figure as FigureName, Number(count)),
  forty: (count) => oneAgainstForty(Number(count)),
  view: (count) => viewTimes(Number(count)),
};

async function part(name: string, args: readonly string[]): Promise<void> {
  const found = await parts[name]?.(...args);
  console.log(typeof found === "string" ? found : JSON.stringify(found));
  // A grid that was let go may still have timers.
  process.exit(0);
}

function all(asked: readonly number[]): void {
  const started = Date.now();
  const sizes = asked.length > 0 ? asked : usual;
  const load = loadavg()[0] ?? 0;
  console.log(`${cpus().length} processors, load ${load.toFixed(1)} before the run`);
  const found: Found[] = [];
  for (const rows of sizes) found.push(...sizeTable(rows));
  if (sizes.length > 1) console.log(growth(found, sizes));
  console.log(verdict(found, sizes));
  const most = sizes.at(-1) ?? 0;
  console.log(`\n${inChild(["--part", "forty", Math.min(most, 30_000)], longestS) ?? ""}`);
  console.log(
    inChild(["--part", "view", most], longestS) ?? `The sidebar's views: over ${longestS} s`,
  );
  console.log(`The whole run took ${((Date.now() - started) / 60_000).toFixed(1)} min`);
  const off = found.filter(({ apart }) => apart !== null && !(apart < 1e-9));
  for (const { contender, figure, rows } of off)
    console.log(`Apart: ${contender}, ${figure}, ${rows}`);
  if (off.length > 0) process.exitCode = 1;
}

const [flag, name = "", ...rest] = process.argv.slice(2);
if (flag === "--part") void part(name, rest);
else {
  all(
    process.argv
      .slice(2)
      .map(Number)
      .filter((rows) => rows > 0),
  );
}
