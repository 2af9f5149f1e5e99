import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";

/** A sample file's cells as a spreadsheet passes them: plain numbers as numbers, the rest as text. */
export function csvCells(name: string, as: "numbers" | "text"): unknown[][] {
  const text = readFileSync(
    join(process.cwd(), "tests/rows/layouts/samples", name),
    "utf8",
  ).replace(/^\ufeff/, "");
  const rows = Papa.parse<string[]>(text.trimEnd()).data;
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) =>
    Array.from({ length: width }, (_, at) => {
      const cell = row[at] ?? "";
      return as === "numbers" && /^-?\d*\.?\d+$/.test(cell) ? Number(cell) : cell;
    }),
  );
}
