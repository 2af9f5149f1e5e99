import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { grouped, squadsFromParquet } from "../../warehouse/parquet-squads";
import { lift, setRows } from "../formulas/set-rows";

/**
 * How many rows a second the warehouse's library answers, and how that grows over 1, 10 and 100
 * squads of 3,000 rows in Parquet files: `npm run bench:warehouse`.
 */
const rowsASquad = 3_000;
const sizes = [1, 10, 100];

async function main(): Promise<void> {
  const realm = createContext({});
  runInContext(readFileSync(join(process.cwd(), "dist/warehouse/holdline.js"), "utf8"), realm);
  const { cells, asOf } = setRows(rowsASquad);
  const day = asOf.toISOString().slice(0, 10);
  console.log(
    "squads      rows   grouping ms   answering ms   rows answered a second   × per squad",
  );
  let one = Number.NaN;
  for (const squads of sizes) {
    const folder = mkdtempSync(join(tmpdir(), "holdline-warehouse-"));
    await squadsFromParquet(folder, [cells]);
    for (let at = 2; at <= squads; at++)
      copyFileSync(join(folder, "squad-1.parquet"), join(folder, `squad-${at}.parquet`));
    const started = performance.now();
    // Each file is a squad of its own, whatever it says inside.
    const texts = await grouped(folder, true);
    const read = performance.now();
    const used = process.cpuUsage();
    for (const text of texts.values()) {
      Object.assign(realm, { text });
      runInContext(
        `{ const squad = JSON.parse(text); holdline.setToSet(squad, "${lift}", "${day}"); holdline.loadSpeedLine(squad, "${lift}", "${day}"); holdline.seasonHold(squad, "${day}"); }`,
        realm,
      );
    }
    const ms = Math.min(performance.now() - read, process.cpuUsage(used).user / 1000);
    if (squads === 1) one = ms;
    const rows = squads * rowsASquad;
    console.log(
      `${String(squads).padStart(6)}${String(rows).padStart(10)}${(read - started).toFixed(0).padStart(14)}${ms.toFixed(0).padStart(15)}${((3 * rows * 1000) / ms).toFixed(0).padStart(25)}${(ms / one / squads).toFixed(2).padStart(14)}`,
    );
    rmSync(folder, { recursive: true, force: true });
  }
}

void main();
