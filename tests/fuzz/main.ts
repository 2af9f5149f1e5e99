// Reads many random and spoilt tables, and calls every formula with a share of them: node tests/run.mjs tests/fuzz/main.ts [tables] [seed].
import fc from "fast-check";
import { formulasAnswer } from "./formulas-property";
import { rowsAreAccountedFor } from "./rows-property";

const numRuns = Number(process.argv[2] ?? 100_000);
const given = process.argv[3];
const seed = given === undefined ? process.pid : Number(given);
// Formulas take longer than reading: a tenth as many calls as tables.
told(fc.check(rowsAreAccountedFor, { numRuns, seed }), "tables read, every row accounted for");
told(
  fc.check(formulasAnswer, { numRuns: Math.ceil(numRuns / 10), seed }),
  "calls of formulas answered in figures or sentences",
);

function told<Input>(result: fc.RunDetails<Input>, said: string): void {
  if (result.failed) {
    process.stderr.write(`${fc.defaultReportMessage(result) ?? "failed"}\n`);
    process.exitCode = 1;
  } else process.stdout.write(`${result.numRuns} ${said} (seed ${seed})\n`);
}
