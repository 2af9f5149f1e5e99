import { join } from "node:path";
import { readCsvFolder } from "../../../src/local-host/files/read-csv-folder";

const read = readCsvFolder(
  join(__dirname, "../../../sample-sheets"),
  new Set(["SQUAD_TABLE", "ROW_CHECK"]),
);
if (!read.ok) throw new Error(read.refusal.code);
const tab = (name: string) => read.value.workbook.tabs.find((one) => one.name === name)!;
/** Pixels beside the row numbers of a window 1280 px wide. */
const room = 1280 - 46;
const width = (columns: readonly (number | null)[]) =>
  columns.reduce<number>((sum, one) => sum + (one ?? 0), 0);

test("the squad's columns stand side by side at 1280 px, its last session and rows not used among them", () => {
  const { columnWidths, cells } = tab("Squad");
  const notes = cells[2]!.findIndex((cell) => cell?.value === "Notes");
  expect(notes).toBe(columnWidths.length - 1);
  expect(width(columnWidths.slice(0, notes))).toBeLessThan(room);
});

test("rows not used have a tab of their own, where every sentence has room for two lines", () => {
  const { columnWidths, cells, rowHeights, frozenRows } = tab("Rows not used");
  expect(cells[1]!.map((cell) => cell?.value)).toEqual([
    "Cell",
    "Found",
    "What to do",
    "Why it matters",
  ]);
  expect(width(columnWidths)).toBeLessThanOrEqual(room);
  expect(frozenRows).toBe(2);
  expect(cells[3]!.every((cell) => cell?.style?.wrap === true)).toBe(true);
  expect(rowHeights?.[3]).toBe(38);
});

test("the day asked about is shown as a day, not as a number of digits", () => {
  expect(tab("Squad").cells[0]![10]).toMatchObject({ format: "d mmm yyyy" });
});
