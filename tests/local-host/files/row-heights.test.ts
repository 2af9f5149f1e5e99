import { readFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { fileSentence } from "../../../src/local-host/files/file-sentences";
import { readXlsx } from "../../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import type { WorkbookData } from "../../../src/local-host/workbook-data";
import { opened } from "../opened";

const fixture = readFileSync(join(__dirname, "fixtures/written-by-libreoffice.xlsx"));

async function read(bytes: Uint8Array): Promise<WorkbookData> {
  const outcome = await readXlsx("Log", bytes);
  if (!outcome.ok) throw new Error(fileSentence(outcome.refusal));
  return outcome.value.workbook;
}
async function written(workbook: WorkbookData, original: Uint8Array | null) {
  const outcome = await writeXlsx(workbook, original);
  if (!outcome.ok) throw new Error(fileSentence(outcome.refusal));
  return outcome.value;
}
const rowTags = (bytes: Uint8Array) =>
  new TextDecoder().decode(unzipSync(bytes)["xl/worksheets/sheet1.xml"]).match(/<row\b[^>]*>/g)!;

test("a height set by hand in the grid is saved, opened again and shown", async () => {
  const host = await opened({ Plan: [["a"], ["b"], ["c"]] });
  host.engine.book.getSheetByName("Plan")!.setRowHeight(1, 60);
  const saved = await read(await written(host.workbook(), null));
  expect(saved.tabs[0]!.rowHeights).toEqual({ 1: 60 });
  const again = await opened({}, saved);
  expect(again.engine.book.getSheetByName("Plan")!.getRowHeight(1)).toBe(60);
  expect(again.workbook().tabs[0]!.rowHeights).toEqual({ 1: 60 });
});

test("it goes with its row when rows are put in above", async () => {
  const host = await opened({ Plan: [["a"], ["b"], ["c"]] });
  host.engine.book.getSheetByName("Plan")!.setRowHeight(1, 60);
  host.tab("Plan").insertRowsAfter(1, 2);
  expect(host.workbook().tabs[0]!.rowHeights).toEqual({ 3: 60 });
});

test("rows that another program only measured are not taken for ones set by hand, before a save or after", async () => {
  const before = await read(fixture);
  expect(before.tabs.map(({ rowHeights }) => rowHeights)).toEqual([undefined, undefined]);
  const [log, ...others] = before.tabs as [WorkbookData["tabs"][number]];
  const bytes = await written(
    { ...before, tabs: [{ ...log, rowHeights: { 2: 48 } }, ...others] },
    fixture,
  );
  expect((await read(bytes)).tabs[0]!.rowHeights).toEqual({ 2: 48 });
  const heights = rowTags(bytes).map((tag) => [
    / ht="([\d.]+)"/.exec(tag)?.[1],
    / customHeight="1"/.test(tag),
  ]);
  expect(heights.slice(0, 3)).toEqual([
    ["23.85", false],
    [/ ht="([\d.]+)"/.exec(rowTags(fixture)[1]!)?.[1], false],
    ["36", true],
  ]);
  const given = await written(before, bytes);
  expect((await read(given)).tabs[0]!.rowHeights).toBeUndefined();
});
