import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { grouped, writeSquads } from "../../warehouse/parquet-squads";
import { lift, setRows } from "../formulas/set-rows";

/**
 * How many rows a second the warehouse's library answers, and how that grows over 1, 10 and 100
 * squads of 3,000 rows in Parquet files: `npm run bench:warehouse`.
 */
const rowsASquad = 3_000;
const sizes = [1, 10, 100];
const { cells, asOf } = setRows(rowsASquad);
const day = asOf.toISOString().slice(0, 10);

type Took = { readonly groupingMs: number; readonly answeringMs: number };

/** Squads in files of their own, grouped and answered by three functions. */
async function took(realm: object, squads: number): Promise<Took> {
  const folder = mkdtempSync(join(tmpdir(), "holdline-warehouse-"));
  await writeSquads(folder, "sets", [cells]);
  for (let at = 2; at <= squads; at++)
    copyFileSync(join(folder, "sets-1.parquet"), join(folder, `sets-${at}.parquet`));
  const started = performance.now();
  // Each file is a squad of its own, whatever it says inside.
  const texts = await grouped(folder, "sets", "seasonHold", true);
  const read = performance.now();
  const used = process.cpuUsage();
  for (const text of texts.values()) {
    Object.assign(realm, { text });
    runInContext(
      `{ const squad = JSON.parse(text); holdline.setToSet(squad, "${lift}", "${day}"); holdline.loadSpeedLine(squad, "${lift}", "${day}"); holdline.seasonHold(squad, "${day}"); }`,
      realm,
    );
  }
  const answeringMs = Math.min(performance.now() - read, process.cpuUsage(used).user / 1000);
  rmSync(folder, { recursive: true, force: true });
  return { groupingMs: read - started, answeringMs };
}

async function main(): Promise<void> {
  const realm = createContext({});
  runInContext(readFileSync(join(process.cwd(), "dist/warehouse/holdline.js"), "utf8"), realm);
  // A warehouse keeps its engines: what the first squads take longer says nothing of growth.
  await took(realm, 10);
  console.log(
    "squads      rows   grouping ms   answering ms   rows answered a second   × per squad",
  );
  let one = Number.NaN;
  for (const squads of sizes) {
    const { groupingMs, answeringMs } = await took(realm, squads);
    if (squads === 1) one = answeringMs;
    const rows = squads * rowsASquad;
    console.log(
      `${String(squads).padStart(6)}${String(rows).padStart(10)}${groupingMs.toFixed(0).padStart(14)}${answeringMs.toFixed(0).padStart(15)}${((3 * rows * 1000) / answeringMs).toFixed(0).padStart(25)}${(answeringMs / one / squads).toFixed(2).padStart(14)}`,
    );
  }
}

void main();
