import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { readCsvFolder } from "../../../src/local-host/files/read-csv-folder";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import { plainTab, type WorkbookData } from "../../../src/local-host/workbook-data";

// Needs LibreOffice's `soffice` on the path: run with npm run test:libreoffice.
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "holdline-soffice-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A tab as LibreOffice shows it, by its place from 1: opened without a window, written as CSV. */
async function shown(workbook: WorkbookData, place: number): Promise<string[][]> {
  const bytes = await writeXlsx(workbook, null, "a copy", new Set(["SQUAD_TABLE"]));
  if (!bytes.ok) throw new Error(bytes.refusal.code);
  writeFileSync(join(folder, "book.xlsx"), bytes.value);
  const csv = `csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,${place}`;
  const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
  execFileSync(
    "soffice",
    ["--headless", profile, "--convert-to", csv, "--outdir", folder, join(folder, "book.xlsx")],
    {
      stdio: "ignore",
      timeout: 120_000,
    },
  );
  const file = join(folder, `book-${workbook.tabs[place - 1]!.name}.csv`);
  return Papa.parse<string[]>(readFileSync(file, "utf8"), { skipEmptyLines: true }).data;
}

test("LibreOffice (soffice needed) shows the sample's sets as they were saved", async () => {
  const read = readCsvFolder(
    join(__dirname, "../../../sample-sheets"),
    new Set(["SQUAD_TABLE", "ROW_CHECK"]),
  );
  if (!read.ok) throw new Error(read.refusal.code);
  const place = read.value.workbook.tabs.findIndex(({ name }) => name === "Sets") + 1;
  const text = readFileSync(join(__dirname, "../../../sample-sheets/Sets.csv"), "utf8");
  const typed = Papa.parse<string[]>(text, { skipEmptyLines: true }).data;
  expect(await shown(read.value.workbook, place)).toEqual(typed);
});

test("LibreOffice (soffice needed) shows what our formulas gave, dates, formats and texts", async () => {
  const workbook: WorkbookData = {
    name: "book",
    tabs: [
      plainTab("Squad", [
        [
          {
            value: "Tomas",
            formula: "=SQUAD_TABLE(Sets!A:Q)",
            fills: [
              ["Tomas", -0.08],
              ["Joss", 0.14],
            ],
          },
        ],
        [],
        [{ value: 46154, format: "yyyy-mm-dd" }, { value: 0.08, format: "0%" }, { value: "007" }],
        [{ value: 3, formula: "=SUM(1,2)" }, { value: true }, { value: "Bjørn & <Åse>" }],
      ]),
    ],
    names: [],
    properties: {},
  };
  expect(await shown(workbook, 1)).toEqual([
    ["Tomas", "-0.08", ""],
    ["Joss", "0.14", ""],
    ["2026-05-12", "8%", "007"],
    ["3", "TRUE", "Bjørn & <Åse>"],
  ]);
});
