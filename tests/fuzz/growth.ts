import fc from "fast-check";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { understandTable } from "../../src/rows/read-table";
import { tableNames } from "../../src/rows/table-name";
import { anyTable, type Table } from "./tables";

const today = dayFromIso("2026-06-16") as number;
const short = 1000;
const times = 8;
const floorMs = 2;

export type Growth = {
  /** Time of a table eight times as long, as a power of its length: 1 grows in step with the rows. */
  readonly exponent: number;
  readonly table: Table;
};

/** How reading time grows with the rows, for `count` random and spoilt tables repeated downwards; the steepest first. */
export function readingGrowth(count: number, seed: number): Growth[] {
  const tables = fc.sample(
    anyTable.filter((table) => table.length > 0),
    { numRuns: count, seed },
  );
  return tables
    .map((table) => ({ exponent: exponentOf(table), table }))
    .sort((a, b) => b.exponent - a.exponent);
}

/** From the quickest of three runs each: another program's turn in between says nothing of growth. */
function exponentOf(table: Table): number {
  const quickest = (rows: number) => Math.min(...[1, 2, 3].map(() => timeOf(table, rows)));
  // A table of blank rows is done before the clock has moved: a floor keeps its noise from reading as growth.
  return Math.log(quickest(short * times) / Math.max(quickest(short), floorMs)) / Math.log(times);
}

function timeOf(table: Table, rows: number): number {
  const long = Array.from({ length: rows }, (_, at) => table[at % table.length] ?? []);
  const start = performance.now();
  for (const name of tableNames) understandTable(name, long, { today });
  return performance.now() - start;
}
