import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { type TableName, tableNames } from "../../src/rows/table-name";
import { type MemoryWorkbook, memoryWorkbook } from "./memory-workbook";

/** A sample table of the invented club as typed cells: numbers as numbers, all else as text. */
export function sampleCells(name: TableName): unknown[][] {
  const file = readFileSync(join(process.cwd(), `sample-sheets/${name}.csv`), "utf8");
  return Papa.parse<string[]>(file.trim()).data.map((row) =>
    row.map((text) => (/^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text)),
  );
}

/** The invented club's whole workbook in memory, with some tables in place of its own. */
export function sampleClub(
  instead: Readonly<Record<string, readonly (readonly unknown[])[]>> = {},
): MemoryWorkbook {
  return memoryWorkbook({
    ...Object.fromEntries(tableNames.map((name) => [name, sampleCells(name)])),
    ...instead,
  });
}
