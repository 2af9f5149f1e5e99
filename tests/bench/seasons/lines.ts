/**
 * Prints how far the pooled load–speed line, the squad's slope and the athlete's own line are off, by
 * rows known: `node tests/run.mjs tests/bench/seasons/lines.ts 20` for twenty squads.
 */
import { lineErrors, type Rms } from "./line-errors";
import { markdownTable, percent } from "./table-text";
import { usualWorld } from "./world";

const squads = Number(process.argv[2] ?? 20);
const errors = ({ speed, strength }: Rms) => `${speed.toFixed(4)} m/s, ${percent(strength, 1)}`;
for (const markers of [false, true]) {
  const rows = lineErrors({ ...usualWorld, markers }, squads, 3_300_000);
  const head = [markers ? "rows, markers too" : "rows", "product", "squad's slope", "own line"];
  const lines = markdownTable(
    [...head, "product on the same", "no own line"],
    rows.map((one) => [
      String(one.rows),
      errors(one.product),
      errors(one.squadSlope),
      errors(one.ownLine),
      errors(one.productThere),
      percent(one.noOwnLine),
    ]),
  );
  process.stdout.write(`${lines.join("\n")}\n\n`);
}
