import { strFromU8, unzipSync } from "fflate";
import { csvTab } from "../../src/local-host/files/csv-tab";
import { fileSentence } from "../../src/local-host/files/file-sentences";
import { isHarmlessFormula } from "../../src/local-host/files/harmless-formula";
import { readCsvFiles } from "../../src/local-host/files/read-csv-folder";
import { readXlsx } from "../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../src/local-host/files/xlsx/write-xlsx";
import { type CellData, plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { hostileClub } from "./corpus/hostile-club";
import { formulas, hostileText, keys } from "./corpus/hostile-text";

const own = new Set(["SQUAD_TABLE", "ROW_CHECK"]);
const cell = (value: unknown): CellData | null =>
  value === "" ? null : { value: value as string | number };
const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: Object.entries(hostileClub()).map(([name, rows]) =>
    plainTab(
      name,
      rows.map((row) => row.map(cell)),
    ),
  ),
  names: [],
  properties: Object.fromEntries(keys.map((key) => [key, key])),
};

/** XML 1.0 holds no control signs (2.2) and reads a carriage return as a line feed (2.11). */
const inXml = (value: CellData["value"]) =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
  typeof value === "string" ? value.replace(/[\0\x07]/g, "").replace(/\r/g, "\n") : value;

test("an .xlsx file holds every hostile text as text: no formula, no link, nothing outside", async () => {
  const written = await writeXlsx(workbook, null);
  if (!written.ok) throw new Error(JSON.stringify(written.refusal));
  const parts = unzipSync(written.value);
  for (const [path, bytes] of Object.entries(parts)) {
    expect(path).not.toMatch(/\.\.|^\/|externalLink|vbaProject|queryTable|connections/);
    const text = strFromU8(bytes);
    if (/worksheets\/sheet\d+\.xml$/.test(path)) expect(text).not.toMatch(/<f[ >]|<hyperlink/);
    if (/\.rels$/.test(path)) expect(text).not.toContain("TargetMode");
    expect(text).not.toMatch(/<script|<svg|<img|<iframe/i);
  }
  const read = await readXlsx("Quillbeck", written.value);
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  const { tabs } = read.value.workbook;
  expect(tabs.map(({ name }) => name)).toEqual(workbook.tabs.map(({ name }) => name));
  for (const [at, tab] of tabs.entries()) {
    const given = workbook.tabs[at]!.cells.map((row) =>
      row.map((one) => inXml(one?.value ?? null)),
    );
    const back = tab.cells.map((row) => row.map((one) => one?.value ?? null));
    expect(tab.cells.flat().filter((one) => one?.formula !== undefined)).toEqual([]);
    expect(back).toEqual(given);
  }
  // What is remembered under a prototype's name is remembered as any other; under __proto__ nothing is.
  const { properties } = read.value.workbook;
  expect(Object.entries(properties).sort()).toEqual(
    keys.flatMap((key) => (key === "__proto__" ? [] : [[key, key]])).sort(),
  );
  expect(Object.getPrototypeOf(properties)).toBe(Object.prototype);
});

test.each(hostileText)("the CSV field %j stays text, or is arithmetic alone", (text) => {
  const field = `"${text.replaceAll('"', '""')}"`;
  for (const line of [`a,b\n1,${field}\n`, `${field},b\n1,2\n`]) {
    const read = csvTab("Sets", line, own);
    if (!read.ok) throw new Error(read.refusal.code);
    for (const one of read.value.tab.cells.flat()) {
      if (one?.formula !== undefined) {
        expect(isHarmlessFormula(one.formula, own)).toBe(true);
        expect(one.formula).toMatch(/^=[\d+]+$/);
      }
    }
    const [held] = read.value.tab.cells.flat().filter((one) => one?.value === text);
    expect(held ?? text).toEqual(/^=[\d+]+$/.test(text) ? text : { value: text });
  }
});

test.each([
  "../../outside.csv",
  "..\\outside.csv",
  "/etc/passwd.csv",
  "con.csv",
  "__proto__.csv",
  "constructor.csv",
  "<img src=x onerror=alert(1)>.csv",
  `${"x".repeat(5000)}.csv`,
  "Sets\u202Evsc.csv",
])("the file name %j makes a tab of its own and reaches nothing", async (name) => {
  const bytes = Buffer.from("Date,Athlete\n2026-06-02,Tomas Reyerson\n");
  const read = readCsvFiles("Workbook", [{ name, bytes }], own);
  if (!read.ok) throw new Error(read.refusal.code);
  const [tab] = read.value.workbook.tabs;
  expect(tab!.name.length).toBeLessThanOrEqual(31);
  expect(tab!.cells[1]![1]).toEqual({ value: "Tomas Reyerson" });
  // In the file a tab's name is no path.
  const written = await writeXlsx(read.value.workbook, null);
  if (!written.ok) throw new Error(JSON.stringify(written.refusal));
  for (const path of Object.keys(unzipSync(written.value)))
    expect(path).toMatch(/^(?!.*\.\.)[\w[\]./-]+$/);
});

test("formulas that reach outside are none of those a CSV file may run", () => {
  expect(formulas.filter((text) => isHarmlessFormula(text, own))).toEqual(["=1+1"]);
});

test.each([
  "x".repeat(32),
  "'Sets",
  "Sets'",
  "../../outside",
  "[book]Sets",
  "History",
  "Sets\u0007",
  " ",
])(
  "a tab typed as %j is not cut short on saving: the coach is asked for another name",
  async (name) => {
    const tab = plainTab(name, [[{ value: 1 }]]);
    const written = await writeXlsx({ name: "w", tabs: [tab], names: [], properties: {} }, null);
    expect(written).toMatchObject({ ok: false, refusal: { code: "tab-name-unfit" } });
    if (!written.ok) expect(fileSentence(written.refusal)).toContain(`“${name}”`);
  },
);
