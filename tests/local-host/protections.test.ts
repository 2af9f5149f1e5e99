import { readXlsx } from "../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../src/local-host/files/xlsx/write-xlsx";
import type { WorkbookData } from "../../src/local-host/workbook-data";
import { opened } from "./opened";

const onPlan = (code: string) => `var s = ss.getSheetByName("Plan"); ${code}`;
const described = onPlan(
  "return s.getProtections(SpreadsheetApp.ProtectionType.RANGE).map(function (p) { return [p.getRange().getA1Notation(), p.getDescription(), p.isWarningOnly()]; }).concat(s.getProtections(SpreadsheetApp.ProtectionType.SHEET).length);",
);
const protect = onPlan(
  's.getRange("A2:B3").protect().setDescription("Filled by Holdline").setWarningOnly(true); return 1;',
);
const throughFile = async (workbook: WorkbookData): Promise<WorkbookData> => {
  const bytes = await writeXlsx(workbook, null);
  if (!bytes.ok) throw new Error(bytes.refusal.code);
  const read = await readXlsx(workbook.name, bytes.value);
  if (!read.ok) throw new Error(read.refusal.code);
  return read.value.workbook;
};

test("a protection that warns outlives an inserted row, a new tab name and the file", async () => {
  const host = await opened({ Plan: [["a"], ["b"], ["c"]] });
  host.run("onSheet", [protect]);
  host.run("onSheet", [onPlan("s.insertRowsAfter(1, 2); return 1;")]);
  const again = await opened({}, await throughFile(host.workbook()));
  expect(again.run("onSheet", [described])).toEqual([["A4:B5", "Filled by Holdline", true], 0]);
});

test("it goes with the last of its rows", async () => {
  const host = await opened({ Plan: [["a"], ["b"], ["c"], ["d"]] });
  host.run("onSheet", [protect]);
  host.run("onSheet", [onPlan("s.deleteRows(2, 2); return 1;")]);
  expect(host.run("onSheet", [described])).toEqual([0]);
});

test("what is said of a protected cell is known by its place", async () => {
  const host = await opened({ Plan: [["a"], ["b"]] });
  host.run("onSheet", [protect]);
  const tab = host.tab("Plan").inside;
  expect([tab.protectedAt(1, 1), tab.protectedAt(0, 0)]).toEqual(["Filled by Holdline", null]);
});
