import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import Papa from "papaparse";
import { csvCell } from "../../../src/local-host/files/csv-cell";
import { csvTab } from "../../../src/local-host/files/csv-tab";
import { fileSentence } from "../../../src/local-host/files/file-sentences";
import { isHarmlessFormula } from "../../../src/local-host/files/harmless-formula";
import { readCsvFiles, readCsvFolder } from "../../../src/local-host/files/read-csv-folder";

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

test("Windows' own letters are read: the curved apostrophe of a name, a caron, a dash", () => {
  // As Windows' code page 1252 has them: 0x92, 0x8a, 0x9e, 0x8e, 0x96, 0x80 (WHATWG Encoding Standard).
  const bytes = Buffer.from(
    "Athlete\nRen\xe9e O\x92Dea\n\x8a\xe1rka\nJo\x9eo \x8e\n5\x968 \x80\n",
    "latin1",
  );
  const read = readCsvFiles("Log", [{ name: "Athletes.csv", bytes }], own);
  if (!read.ok) throw new Error(read.refusal.code);
  expect(read.value.workbook.tabs[0]!.cells.flat().map((cell) => cell?.value)).toEqual([
    ...["Athlete", "Renée O’Dea", "Šárka", "Jožo Ž", "5–8 €"],
  ]);
});

test("an unclosed quotation mark is refused by file, not half read", () => {
  writeFileSync(join(folder, "Sets.csv"), 'Date,Note\n2026-05-19,"knees in\n2026-05-21,\n');
  const read = readCsvFolder(folder, own);
  expect(read).toMatchObject({
    ok: false,
    refusal: { code: "csv-quotes", facts: { file: "Sets.csv" } },
  });
});

test.each([
  ["a picture", Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0, 0, 0, 0x0d, 0x22])],
  ["a program's own file", Buffer.from("Date,Load\n\0\x01\0")],
])("%s named .csv is refused as no text", (_, bytes) => {
  const read = readCsvFiles("Workbook", [{ name: "Sets.csv", bytes }], own);
  if (read.ok) throw new Error("It was read.");
  expect(fileSentence(read.refusal)).toBe(
    "Sets.csv is not text, so it is no CSV file. Save the tab as CSV, then open that file.",
  );
});

test("files without a cell are refused, an empty one beside others is an empty tab", () => {
  const empty = { name: "Jumps.csv", bytes: Buffer.from("\ufeff\n,,\n") };
  const read = readCsvFiles("Workbook", [empty], own);
  if (read.ok) throw new Error("It was read.");
  expect(fileSentence(read.refusal)).toBe(
    "Nothing is written in Jumps.csv. Save the tab as CSV again, then open that file.",
  );
  const sets = { name: "Sets.csv", bytes: Buffer.from("Date,Load\n") };
  const both = readCsvFiles("Workbook", [empty, sets], own);
  expect(both.ok && both.value.workbook.tabs.map(({ cells }) => cells.length)).toEqual([1, 0]);
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

test("what another program writes as CSV is read as it was typed (papaparse's writer)", () => {
  const text = fc
    .string({ unit: "grapheme", minLength: 1, maxLength: 12 })
    .filter(
      (typed) => !typed.startsWith("=") && !/\r/.test(typed) && csvCell(typed)?.value === typed,
    );
  const field = fc.oneof(
    text.map((typed) => [typed, { value: typed }] as const),
    fc.integer({ min: -99999, max: 99999 }).map((n) => [`${n / 100}`, { value: n / 100 }] as const),
    fc.constant(["2026-05-12", { value: 46154, format: "yyyy-mm-dd" }] as const),
    fc.boolean().map((value) => [value ? "TRUE" : "FALSE", { value }] as const),
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(field, field, field), { minLength: 1, maxLength: 8 }), (rows) => {
      const written = Papa.unparse(
        rows.map((row) => row.map(([typed]) => typed)),
        { newline: "\n" },
      );
      const read = csvTab("Sets", written, own);
      expect(read.ok && read.value.tab.cells).toEqual(
        rows.map((row) => row.map(([, cell]) => cell)),
      );
    }),
    { numRuns: 200 },
  );
});

test("a file's name becomes a name that a tab can have, and no two are the same", () => {
  const names = [
    "Winter block 2026, speeds of the bar.csv",
    "Winter block 2026, speeds of the bags.csv",
    "'24.csv",
    "history.csv",
    " .csv",
  ];
  const files = names.map((name) => ({ name, bytes: Buffer.from("Date\n") }));
  const read = readCsvFiles("Workbook", files, own);
  expect(read.ok && read.value.workbook.tabs.map(({ name }) => name).sort()).toEqual(
    [
      "24",
      "Tab",
      "Tab history",
      "Winter block 2026, speeds of th",
      "Winter block 2026, speeds of 2",
    ].sort(),
  );
  expect(read.ok && read.value.notes.map(fileSentence)).toContain(
    "Winter block 2026, speeds of the bar.csv became the tab “Winter block 2026, speeds of 2”.",
  );
});

test.each([
  ["a title above the headings", "Kraftraum 2026\n\nName;Last\nIlka;57,5\nJoss;60,5\n", [2, 3, 4]],
  ["a comma in a heading", "Name, group;Last\nIlka;57,5\nJoss;60\n", [0, 1, 2]],
])("semicolons part the fields under %s", (_, text, rows) => {
  const read = csvTab("Sets", text, own);
  const cells = read.ok ? read.value.tab.cells : [];
  expect(rows.map((row) => cells[row]?.length)).toEqual(rows.map(() => 2));
});

test("commas part them where a note holds more semicolons", () => {
  const read = csvTab("Sets", "Name,Load,Note\nIlka,57.5,a; b; c; d\n", own);
  expect(read.ok && read.value.tab.cells[1]?.[2]).toEqual({ value: "a; b; c; d" });
});

test("UTF-16 is read in either order of its bytes", () => {
  const little = Buffer.from("\ufeffName;Größe\n", "utf16le");
  const big = Buffer.from(little).swap16();
  for (const bytes of [little, big]) {
    const read = readCsvFiles("Log", [{ name: "Sets.csv", bytes }], own);
    expect(read.ok && read.value.workbook.tabs[0]!.cells[0]).toEqual([
      { value: "Name" },
      { value: "Größe" },
    ]);
    expect(read.ok && read.value.notes).toEqual([]);
  }
});
