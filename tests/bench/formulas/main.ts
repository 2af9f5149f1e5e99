import { spawnSync } from "node:child_process";
import { barePass } from "./bare-pass";
import { builtInFigures } from "./built-in";
import { contenders } from "./contenders";
import { furthestApart } from "./figures";
import { type Measured, measureOne } from "./measure-one";
import { oneAgainstForty } from "./one-against-forty";
import { setRows } from "./set-rows";
import { squadViewTime } from "./squad-view-time";

/**
 * The product's formulas beside a loop, a bare pass, a database, a data frame and the spreadsheet's
 * built-in formulas, all over the same rows: `npm run bench`, or `npm run bench -- 3000 30000`. Each
 * is measured in a process of its own. Milliseconds are this machine's; the ratios are what counts.
 */
const usual = [3_000, 30_000, 300_000, 1_000_000];
/** Past this the built-in formulas take minutes. */
const builtInUpTo = 30_000;

function measured(name: string, rows: number): Measured {
  const child = spawnSync(
    process.execPath,
    ["--expose-gc", "--max-old-space-size=12000", process.argv[1] ?? "", "--one", name, `${rows}`],
    { encoding: "utf8", maxBuffer: 1 << 26 },
  );
  const line = child.stdout.trim().split("\n").pop() ?? "";
  if (child.status !== 0 || line === "") throw new Error(`${name}, ${rows} rows: ${child.stderr}`);
  return JSON.parse(line) as Measured;
}

const cell = (value: number, digits: number) => value.toFixed(digits).padStart(10);

/** The grid gives up after two minutes, which is then the finding. */
async function builtIn(rows: number, bare: number): Promise<void> {
  const given = setRows(rows);
  try {
    const { figures, firstMs, warmMs } = await builtInFigures(given);
    const apart = furthestApart(barePass(given), figures);
    console.log(
      `${"built-in formulas".padEnd(26)}${cell(warmMs, 1)}${cell(firstMs, 1)}${cell(firstMs / bare, 0)}${"".padStart(10)}  ${apart.toExponential(0)}   (warm: one cell edited; × of the first time)`,
    );
    if (!(apart < 1e-9)) process.exitCode = 1;
  } catch (failure) {
    console.log(`${"built-in formulas".padEnd(26)} ${(failure as Error).message}`);
  }
}

async function main(): Promise<void> {
  const [flag, name = "", count = ""] = process.argv.slice(2);
  if (flag === "--one") {
    console.log(JSON.stringify(await measureOne(name, Number(count))));
    return;
  }
  const asked = process.argv
    .slice(2)
    .map(Number)
    .filter((rows) => rows > 0);
  const sizes = asked.length > 0 ? asked : usual;
  const warm = new Map<string, number[]>();
  for (const rows of sizes) {
    console.log(`\n${rows} set rows${" ".repeat(15)}warm ms  first ms    × bare    copies  apart`);
    let bare = Number.NaN;
    for (const contender of Object.keys(contenders)) {
      const one = measured(contender, rows);
      if (contender.startsWith("bare")) bare = one.warmMs;
      warm.set(contender, [...(warm.get(contender) ?? []), one.warmMs]);
      const apart = one.apart === null ? "" : one.apart.toExponential(0);
      console.log(
        `${contender.padEnd(26)}${cell(one.warmMs, 1)}${cell(one.firstMs, 1)}${cell(one.warmMs / bare, 2)}${cell(one.copies, 2)}  ${apart}`,
      );
      if (one.apart !== null && !(one.apart < 1e-9)) process.exitCode = 1;
    }
    if (rows <= builtInUpTo) await builtIn(rows, bare);
  }
  const [from, to] = [sizes.at(sizes.length > 2 ? 1 : 0) ?? 1, sizes.at(-1) ?? 1];
  if (to > from) {
    console.log(`\nGrowth from ${from} to ${to} rows, as a power of the rows`);
    for (const [contender, times] of warm) {
      const [first = 1, last = 1] = [times.at(times.length > 2 ? 1 : 0), times.at(-1)];
      console.log(
        `${contender.padEnd(26)}${cell(Math.log(last / first) / Math.log(to / from), 2)}`,
      );
    }
  }
  console.log(`\n${oneAgainstForty(Math.min(to, 30_000))}`);
  console.log(squadViewTime(to));
}

void main();
