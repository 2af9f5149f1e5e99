// Reads many random and spoilt tables: node tests/run.mjs tests/fuzz/main.ts [tables] [seed].
import fc from "fast-check";
import { rowsAreAccountedFor } from "./rows-property";

const numRuns = Number(process.argv[2] ?? 100_000);
const given = process.argv[3];
const seed = given === undefined ? process.pid : Number(given);
const result = fc.check(rowsAreAccountedFor, { numRuns, seed });
if (result.failed) {
  process.stderr.write(`${fc.defaultReportMessage(result) ?? "failed"}\n`);
  process.exitCode = 1;
} else
  process.stdout.write(`${result.numRuns} tables read, every row accounted for (seed ${seed})\n`);
