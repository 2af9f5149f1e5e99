import { readFileSync } from "node:fs";
import { join } from "node:path";
import Excel from "exceljs";
import { readCsvFolder } from "../../../src/local-host/files/read-csv-folder";
import { readXlsx } from "../../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import type * as Node from "../../../src/local-host/node";

const root = join(__dirname, "../../..");
const { openHost } = require(join(root, "dist/local/node.cjs")) as typeof Node;
const bundleSource = readFileSync(join(root, "dist/code.js"), "utf8");
const own = new Set(["SQUAD_TABLE", "ROW_CHECK"]);

test("the Squad tab is calculated, saved with its values, and calculated again from the saved file", async () => {
  const read = readCsvFolder(join(root, "sample-sheets"), own);
  if (!read.ok) throw new Error(read.refusal.code);
  const first = await openHost({ workbook: read.value.workbook, bundleSource, files: {} });
  const shown = first.values("Squad");
  const workbook = first.workbook();
  first.dispose();
  const names = shown.slice(3, 15).map(([name]) => name);
  expect(names[0]).toBe("Ilka Brandmoor");
  expect(names[11]).toBe("Maren Aspholt");

  const bytes = await writeXlsx(workbook, null, "a copy", own);
  if (!bytes.ok) throw new Error(bytes.refusal.code);
  // Another program, which does not know our functions, finds the values in the file.
  const book = new Excel.Workbook();
  await book.xlsx.load(bytes.value.buffer as ArrayBuffer);
  const squad = book.getWorksheet("Squad")!;
  expect(squad.getCell("A4").formula).toMatch(/^SQUAD_TABLE\(Athletes!A:J/);
  expect(names.map((_, i) => squad.getCell(`A${4 + i}`).text)).toEqual(names);
  expect(squad.getCell("C5").text).toBe("slipping");
  expect(squad.getCell("F5").numFmt).toContain("%");

  const again = await readXlsx("season", bytes.value);
  if (!again.ok) throw new Error(again.refusal.code);
  const second = await openHost({ workbook: again.value.workbook, bundleSource, files: {} });
  expect(second.values("Squad")).toEqual(shown);
  second.dispose();
});
