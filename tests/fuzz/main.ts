// Reads many random and spoilt tables, calls every formula with a share of them, and watches how the time grows with the rows: node tests/run.mjs tests/fuzz/main.ts [tables] [seed].
import fc from "fast-check";
import { nothingPassedOver } from "./cells-property";
import { formulasAnswer } from "./formulas-property";
import { readingGrowth } from "./growth";
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
told(
  fc.check(nothingPassedOver, { numRuns: Math.ceil(numRuns / 50), seed }),
  "kept tables, six cells of each changed in every part: none passed over",
);

const growth = readingGrowth(Math.min(40, numRuns), seed);
const [steepest] = growth;
const middle = growth[Math.floor(growth.length / 2)];
if (steepest !== undefined && middle !== undefined) {
  process.stdout.write(
    `time grows with rows to the power ${middle.exponent.toFixed(2)}, steepest ${steepest.exponent.toFixed(2)} of ${growth.length} tables repeated to 8,000 rows\n`,
  );
  // Two would be every row compared with every other; a busy machine alone stays well below this.
  if (steepest.exponent > 1.5) {
    process.stderr.write(`grows too steeply: ${JSON.stringify(steepest.table)}\n`);
    process.exitCode = 1;
  }
}

function told<Input>(result: fc.RunDetails<Input>, said: string): void {
  if (result.failed) {
    process.stderr.write(`${fc.defaultReportMessage(result)}\n${result.errorInstance}\n`);
    process.exitCode = 1;
  } else process.stdout.write(`${result.numRuns} ${said} (seed ${seed})\n`);
}
