import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { readXlsx } from "../../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import { plainTab, type TabData, type WorkbookData } from "../../../src/local-host/workbook-data";

// Needs LibreOffice's `soffice` on the path: run with npm run test:libreoffice.
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "holdline-through-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A file as LibreOffice writes it after opening it: what it did not understand of ours is gone. */
function through(bytes: Uint8Array): Uint8Array {
  writeFileSync(join(folder, "book.xlsx"), bytes);
  const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
  const out = join(folder, "out");
  execFileSync(
    "soffice",
    ["--headless", profile, "--convert-to", "xlsx", "--outdir", out, join(folder, "book.xlsx")],
    { stdio: "ignore", timeout: 200_000 },
  );
  return readFileSync(join(out, "book.xlsx"));
}

const sets: TabData = {
  ...plainTab("Sets", [
    [{ value: "Date", style: { bold: true } }, { value: "Athlete" }, { value: "Kind" }],
    [
      { value: 46154, format: "yyyy-mm-dd" },
      { value: "Wren Oddie", note: "left early" },
      { value: "work" },
    ],
    [{ value: 46155, format: "yyyy-mm-dd" }, { value: "Tomas Reyerson" }, { value: "marker" }],
  ]),
  frozenRows: 1,
  frozenColumns: 2,
  columnWidths: [140, null, 64],
  rowHeights: { 2: 48 },
  conditionalFormats: [
    { ranges: ["C2:C50"], formula: '=$C2="marker"', background: "#fde0c4", bold: true },
  ],
  validations: [{ range: "C2:C50", values: ["warm-up", "marker", "work"], help: "One of three." }],
};
const squad: TabData = { ...plainTab("Squad", [[{ value: "today" }]]), frozenRows: 3 };
const workbook: WorkbookData = {
  name: "book",
  tabs: [sets, squad],
  names: [{ name: "kinds", ref: "Sets!$C$2:$C$50" }],
  properties: { remembered: "yes" },
};

test("LibreOffice (soffice needed) is given frozen panes and keeps widths, heights, lists, highlights, notes and names of ours", async () => {
  const bytes = await writeXlsx(workbook, null);
  if (!bytes.ok) throw new Error(bytes.refusal.code);
  // A conversion without a window drops every file's panes: what LibreOffice is given is looked at
  // instead, by the standard's own words (ECMA-376 part 1, 18.3.1.66 and 18.2.30).
  const parts = unzipSync(bytes.value);
  const part = (path: string) => new TextDecoder().decode(parts[path]);
  expect(part("xl/worksheets/sheet1.xml")).toMatch(
    /<sheetView workbookViewId="0"[^>]*><pane xSplit="2" ySplit="1" topLeftCell="C2" activePane="bottomRight" state="frozen"\/>/,
  );
  expect(part("xl/worksheets/sheet2.xml")).toMatch(
    /<pane ySplit="3" topLeftCell="A4" activePane="bottomLeft" state="frozen"\/>/,
  );
  expect(part("xl/workbook.xml")).toMatch(/<bookViews><workbookView /);
  const back = through(bytes.value);
  const read = await readXlsx("book", back);
  if (!read.ok) throw new Error(read.refusal.code);
  const [first] = read.value.workbook.tabs;
  expect(Math.abs(first!.columnWidths[0]! - 140)).toBeLessThanOrEqual(2);
  expect(Math.abs(first!.columnWidths[2]! - 64)).toBeLessThanOrEqual(2);
  expect(Math.abs(first!.rowHeights![2]! - 48)).toBeLessThanOrEqual(1);
  expect(first!.conditionalFormats).toEqual(sets.conditionalFormats);
  expect(first!.validations).toMatchObject([
    { range: "C2:C50", values: ["warm-up", "marker", "work"], help: "One of three." },
  ]);
  expect(first!.cells[1]![1]).toMatchObject({ value: "Wren Oddie", note: "left early" });
  expect(first!.cells[1]![0]).toMatchObject({ value: 46154, format: "yyyy-mm-dd" });
  expect(read.value.workbook.names).toMatchObject([{ name: "kinds", ref: "Sets!$C$2:$C$50" }]);
  expect(read.value.workbook.properties).toEqual({ remembered: "yes" });
  // Saved by us again, with nothing changed, its file is read as before.
  const again = await writeXlsx(read.value.workbook, back);
  const kept = again.ok ? await readXlsx("book", again.value) : again;
  expect(kept.ok && kept.value.workbook).toEqual(read.value.workbook);
});
