import type { Reading } from "../../src/rows/reading";
import { cellAddress } from "../../src/rows/value/cell-address";
import { sayRowIssue } from "../../src/words/row-issues";
import { programWord } from "./program-words";
import type { Table } from "./tables";

/** Fails with a sentence when a reading loses a row, gives no number for a figure or leaves an issue unsaid. */
export function checkReading(table: Table, reading: Reading<unknown>): void {
  const { rowsRead, rowsReported, rowsBlank, rowsHeading } = reading;
  const counts = [rowsRead, rowsReported, rowsBlank, rowsHeading];
  if (counts.some((count) => !Number.isInteger(count) || count < 0))
    throw new Error(`counts ${counts}`);
  const sum = counts.reduce((a, b) => a + b, 0);
  if (sum !== table.length)
    throw new Error(`counts ${counts} add up to ${sum}, not ${table.length}`);
  if (rowsReported > 0 && reading.issues.length === 0)
    throw new Error("rows reported without an issue");
  for (const record of reading.records) sound(record, "record");
  for (const note of reading.notes ?? []) sound(note, "note");
  for (const issue of reading.issues) {
    sound(issue, "issue");
    if (issue.row < 1 || issue.row > table.length)
      throw new Error(`issue ${issue.code} in row ${issue.row}`);
    const address = cellAddress(issue.row, Math.max(issue.column, 1));
    if (issue.cell !== address)
      throw new Error(`issue ${issue.code} at ${issue.cell}, not ${address}`);
    const said = Object.values(sayRowIssue(issue)).join(" ");
    if (programWord(said, table) !== undefined) throw new Error(`said: ${said}`);
  }
}

function sound(value: unknown, path: string): void {
  if (value === undefined) throw new Error(`${path} is undefined`);
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error(`${path} is ${value}`);
  if (typeof value !== "object" || value === null) return;
  for (const [key, part] of Object.entries(value)) sound(part, `${path}.${key}`);
}
