import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type MemoryWorkbook, memoryWorkbook } from "../actions/memory-workbook";

const cellOf = (text: string) => (/^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text);
const rows = (name: string) =>
  readFileSync(join(process.cwd(), `sample-sheets/${name}.csv`), "utf8")
    .trim()
    .split("\n")
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)]
        .slice(0, -1)
        .map(([, cell]) => cellOf(cell!.replace(/^"|"$/g, "").replace(/""/g, '"'))),
    );
const tabs = [
  "Athletes",
  "Availability",
  "Sets",
  "Jumps",
  "Diary",
  "Runs",
  "Races",
  "Plates",
  "Rules",
];

/** The invented club's sample tables in memory; tabs given replace the sample's. */
export function sampleClub(
  instead: Readonly<Record<string, (sample: unknown[][]) => unknown[][]>> = {},
): MemoryWorkbook {
  return memoryWorkbook(
    Object.fromEntries(
      tabs.map((name) => [name, instead[name] ? instead[name](rows(name)) : rows(name)]),
    ),
  );
}
