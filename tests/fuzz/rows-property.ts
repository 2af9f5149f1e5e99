import fc from "fast-check";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { readAthletesArgument } from "../../src/rows/argument/athletes-argument";
import { understandTable } from "../../src/rows/read-table";
import { tableNames } from "../../src/rows/table-name";
import { checkReading } from "./sound-reading";
import { anyTable, type Table } from "./tables";

const today = dayFromIso("2026-06-16") as number;

/** No crash, every row counted once, every figure a number, every issue said, no cell changed. */
export const rowsAreAccountedFor = fc.property(
  anyTable,
  fc.constantFrom(...tableNames),
  fc.boolean(),
  (table, name, dated) => {
    const before = fingerprint(table);
    for (const read of new Set([name, "Sets", "Jumps"] as const))
      checkReading(table, understandTable(read, table, dated ? { today } : {}).reading);
    const { asked } = readAthletesArgument(table);
    if (asked.some(({ athlete }) => typeof athlete !== "string"))
      throw new Error("a name is no text");
    if (fingerprint(table) !== before) throw new Error("a cell was changed");
  },
);

function fingerprint(table: Table): string {
  return table
    .map((line) =>
      line.map((cell) => (cell instanceof Date ? cell.getTime() : String(cell))).join("\t"),
    )
    .join("\n");
}
