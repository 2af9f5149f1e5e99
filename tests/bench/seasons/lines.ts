/**
 * Prints how far the pooled load–speed line, the squad's slope and the athlete's own line are off, by
 * rows known, without and with marker sets: `node tests/run.mjs tests/bench/seasons/lines.ts 40` for
 * forty squads.
 */
import { linesTable } from "./lines-table";
import { usualWorld } from "./world";

const squads = Number(process.argv[2] ?? 40);
for (const markers of [false, true]) {
  const title = markers ? "rows known, marker sets too" : "rows known";
  const lines = linesTable(title, { ...usualWorld, markers }, squads, 3_300_000);
  process.stdout.write(`${lines.join("\n")}\n\n`);
}
