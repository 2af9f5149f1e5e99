import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { csvCell } from "../../../src/local-host/files/csv-cell";
import { csvTab } from "../../../src/local-host/files/csv-tab";
import { fileSentence } from "../../../src/local-host/files/file-sentences";
import { isHarmlessFormula } from "../../../src/local-host/files/harmless-formula";
import { readCsvFolder } from "../../../src/local-host/files/read-csv-folder";
import { csvFiles, csvText } from "../../../src/local-host/files/write-csv-folder";
import { plainTab } from "../../../src/local-host/workbook-data";

const own = new Set(["SQUAD_TABLE", "ROW_CHECK"]);
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "holdline-csv-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test.each([
  ["", null],
  ["0.62", { value: 0.62 }],
  [".86", { value: 0.86 }],
  ["-3", { value: -3 }],
  ["007", { value: "007" }],
  ["57,5", { value: "57,5" }],
  ["18:00", { value: "18:00" }],
  ["19/05/2026", { value: "19/05/2026" }],
  ["2026-02-30", { value: "2026-02-30" }],
  ["1234567890123456", { value: "1234567890123456" }],
  ["TRUE", { value: true }],
  ["0.62 0.60", { value: "0.62 0.60" }],
])("the field %p becomes %p", (text, cell) => {
  expect(csvCell(text)).toEqual(cell);
});

test("an ISO date becomes a real date: 12 May 2026 is day 46154 of the spreadsheet's count", () => {
  // 46154: typed into a spreadsheet as 2026-05-12 and formatted as a number; 1 January 2026 is 46023.
  expect(csvCell("2026-05-12")).toEqual({ value: 46154, format: "yyyy-mm-dd" });
});

test.each([
  ["=SQUAD_TABLE(Athletes!A:J, Sets!A:Q, $K$1)", true],
  ["=ROW_CHECK('My sets'!A:Q, \"Sets (old) | x\")", true],
  ["=A1*2+3", true],
  ['=HYPERLINK("http://example.org")', false],
  ["=cmd|' /C calc'!A0", false],
  ["='[other.xlsx]Tab'!A1", false],
  ["=WEBSERVICE(A1)", false],
  ["=IMPORTDATA(A1)", false],
  ["={1,2}", false],
])("%s is run from a CSV file: %p", (formula, harmless) => {
  expect(isHarmlessFormula(formula, own)).toBe(harmless);
});

test("a formula that reaches outside stays text and is named", () => {
  const read = csvTab("Squad", 'a,b\n1,=WEBSERVICE("x")\n', own);
  expect(read.ok && read.value.tab.cells[1]).toEqual([{ value: 1 }, { value: '=WEBSERVICE("x")' }]);
  expect(read.ok && read.value.notes.map(fileSentence)).toEqual([
    "Squad B2 begins with “=” but uses more than Holdline's formulas and arithmetic, so it was read as text.",
  ]);
});

test("semicolons, quotes, a byte-order mark and Windows line ends are read", () => {
  writeFileSync(join(folder, "Sets.csv"), '\ufeffDate;Athlete\r\n2026-05-19;"Oona; P."\r\n');
  const read = readCsvFolder(folder, own);
  expect(read.ok && read.value.workbook.tabs[0]).toMatchObject({
    name: "Sets",
    frozenRows: 1,
    cells: [
      [{ value: "Date" }, { value: "Athlete" }],
      [{ value: 46161, format: "yyyy-mm-dd" }, { value: "Oona; P." }],
    ],
  });
});

test("names in Windows' letters are read and questioned", () => {
  writeFileSync(join(folder, "Athletes.csv"), Buffer.from("Athlete\nBj\xf6rn\n", "latin1"));
  const read = readCsvFolder(folder, own);
  expect(read.ok && read.value.workbook.tabs[0]!.cells[1]).toEqual([{ value: "Björn" }]);
  expect(read.ok && read.value.notes.map(({ code }) => code)).toEqual(["letters-guessed"]);
});

test("an unclosed quotation mark is refused by file, not half read", () => {
  writeFileSync(join(folder, "Sets.csv"), 'Date,Note\n2026-05-19,"knees in\n2026-05-21,\n');
  const read = readCsvFolder(folder, own);
  expect(read).toMatchObject({
    ok: false,
    refusal: { code: "csv-quotes", facts: { file: "Sets.csv" } },
  });
});

test("a folder without CSV files is refused", () => {
  writeFileSync(join(folder, "notes.txt"), "hello");
  mkdirSync(join(folder, "old.csv"));
  expect(readCsvFolder(folder, own)).toMatchObject({ ok: false, refusal: { code: "no-csv" } });
});

test("a link to a file that is gone does not stop the others", () => {
  symlinkSync(join(folder, "nowhere"), join(folder, "Gone.csv"));
  writeFileSync(join(folder, "Sets.csv"), "Date\n");
  const read = readCsvFolder(folder, own);
  expect(read.ok && read.value.workbook.tabs.map(({ name }) => name)).toEqual(["Sets"]);
});

test.each(["../Sets", "a/b", "..", "C:x", "", "nul", ".hidden", "Sets\u0000"])(
  "the tab name %p never becomes a file",
  (name) => {
    expect(csvFiles({ name: "w", tabs: [plainTab(name, [])], names: [], properties: {} })).toEqual({
      ok: false,
      refusal: { code: "tab-name-no-file", facts: { tab: name } },
    });
  },
);

test("what is written is read again, whatever text a coach typed", () => {
  const text = fc
    .string({ unit: "grapheme", minLength: 1, maxLength: 12 })
    .filter(
      (typed) => !typed.startsWith("=") && !/\r/.test(typed) && csvCell(typed)?.value === typed,
    );
  const cell = fc.oneof(
    text.map((value) => ({ value })),
    fc.integer({ min: -99999, max: 99999 }).map((n) => ({ value: n / 100 })),
    fc.integer({ min: 40000, max: 50000 }).map((value) => ({ value, format: "yyyy-mm-dd" })),
    fc.boolean().map((value) => ({ value })),
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 8 }), (cells) => {
      const read = csvTab("Sets", csvText(plainTab("Sets", cells)), own);
      expect(read.ok && read.value.tab.cells).toEqual(cells);
    }),
    { numRuns: 200 },
  );
});
