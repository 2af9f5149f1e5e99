import { agreement } from "../coaching/reliability/agreement";
import { refuse } from "../outcome";
import { deviceCell } from "../words/reliability";
import { rowsOf } from "./arguments/elementwise";
import { rowsOfNumbers } from "./arguments/rows-of-numbers";
import { thrown } from "./arguments/thrown";
import type { SheetFunction } from "./sheet-function";

const names = ["first", "second"] as const;

export const agreementFunction: SheetFunction = {
  name: "AGREEMENT",
  summary:
    "Two devices on the same sets or jumps, to check a new one: mean difference, first less second, and the limits between which 95 % of differences lie. Context: no proposal rests on it.",
  parameters: [
    {
      name: "first",
      help: "What the one device read, a set or jump a row. Figures only; a first row of words is taken for headings.",
    },
    { name: "second", help: "What the other read of the same, row by row, in the same unit." },
  ],
  results: ["bias", "low (95 %)", "high (95 %)"],
  examples: [
    {
      formula: "=AGREEMENT(B1:B6, C1:C6)",
      args: [
        [["Old (m/s)"], [0.61], [0.72], [0.55], [0.8], [0.67]],
        [["New (m/s)"], [0.63], [0.73], [0.58], [0.81], [0.7]],
      ],
      result: [[-0.02, -0.0396, -0.0004]],
    },
  ],
  compute: ([first, second]) => {
    const columns = [rowsOf(first ?? ""), rowsOf(second ?? "")] as const;
    for (const [at, rows] of columns.entries())
      if (rows.some((row) => row.length > 1))
        thrown(refuse("column-too-wide", { name: names[at]! }));
    const [one, other] = columns;
    const facts = { name: "second", rows: other.length, other: "first", otherRows: one.length };
    if (one.length !== other.length) thrown(refuse("columns-differ", facts));
    const pairs = one.map((row, at) => [row[0], other[at]![0]]);
    const nameOf = (column: number, row: number) => deviceCell(names[column - 1]!, row);
    const read = thrown(rowsOfNumbers(pairs, "first", nameOf));
    const found = agreement(
      read.map(([value]) => value!),
      read.map(([, value]) => value!),
    );
    const { bias, low, high } = thrown(found);
    return [[bias, low, high]];
  },
};
