import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { fileSentence } from "../../src/local-host/files/file-sentences";
import { limits } from "../../src/local-host/files/limits";
import { readXlsx } from "../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../src/local-host/files/xlsx/write-xlsx";
import { plainTab } from "../../src/local-host/workbook-data";

const tab = plainTab("Sets", [[{ value: "Athlete" }], [{ value: "Tomas Reyerson" }]]);
let parts: Record<string, Uint8Array>;
const sheet = "xl/worksheets/sheet1.xml";
const book = "xl/workbook.xml";

beforeAll(async () => {
  const made = await writeXlsx({ name: "Log", tabs: [tab], names: [], properties: {} }, null);
  if (!made.ok) throw new Error(made.refusal.code);
  parts = unzipSync(made.value);
});

/** The file with one part's text changed. */
const spoilt = (path: string, change: (text: string) => string, level: 0 | 9 = 0) => {
  const before = strFromU8(parts[path]!);
  const after = change(before);
  expect(after).not.toBe(before);
  return zipSync({ ...parts, [path]: strToU8(after) }, { level });
};
const before = (close: string, more: string) => (text: string) => text.replace(close, more + close);
const many = (piece: string, letters: number) => piece.repeat(Math.ceil(letters / piece.length));

/** Bounded by what is refused before the library sees it: none of these would end otherwise. */
test.each([
  [
    "all cells of the largest tab merged",
    sheet,
    "merges-too-much",
    (text: string) =>
      text.replace(
        "</sheetData>",
        '</sheetData><mergeCells count="1"><mergeCell ref="A1:XFD1048576"/></mergeCells>',
      ),
  ],
  [
    "a merged range that is none",
    sheet,
    "merges-too-much",
    (text: string) =>
      text.replace(
        "</sheetData>",
        '</sheetData><mergeCells count="1"><mergeCell ref="A1:"/></mergeCells>',
      ),
  ],
  [
    "a column format for two billion columns",
    sheet,
    "too-many-columns",
    before("<sheetData>", '<cols><col min="1" max="2000000000" width="9" customWidth="1"/></cols>'),
  ],
  [
    "a row past the largest tab",
    sheet,
    "too-many-rows",
    before("</sheetData>", '<row r="2000000000"><c r="A2000000000"><v>1</v></c></row>'),
  ],
  [
    "one cell in the last row of all",
    sheet,
    "too-many-rows",
    before("</sheetData>", '<row r="1048576"><c r="A1048576"><v>1</v></c></row>'),
  ],
  [
    "one cell in the last column of all",
    sheet,
    "too-many-columns",
    before("</sheetData>", '<row r="9"><c r="XFD9"><v>1</v></c></row>'),
  ],
  [
    "a cell beyond the last column",
    sheet,
    "not-xlsx",
    before("</sheetData>", '<row r="9"><c r="ZZZZ9"><v>1</v></c></row>'),
  ],
  [
    "entities that unfold into each other",
    sheet,
    "not-xlsx",
    (text: string) =>
      text.replace(
        "<worksheet",
        `<!DOCTYPE w [<!ENTITY a "x">${Array.from({ length: 30 }, (_, i) => `<!ENTITY a${i} "&a${i - 1};&a${i - 1};">`).join("")}]><worksheet`,
      ),
  ],
  [
    "an entity from a file of this machine",
    sheet,
    "not-xlsx",
    (text: string) =>
      text.replace(
        "<worksheet",
        '<!DOCTYPE w [<!ENTITY a SYSTEM "file:///etc/passwd">]><worksheet',
      ),
  ],
  ["names never closed", book, "not-xlsx", before("</workbook>", many("<definedName>", 900_000))],
  [
    "lists never closed, after as many ends",
    sheet,
    "not-xlsx",
    before("</worksheet>", many("</dataValidation>", 400_000) + many("<dataValidation>", 400_000)),
  ],
] as const)("%s is refused with a sentence", async (_, path, code, change) => {
  const read = await readXlsx("Log", spoilt(path, change));
  expect(read).toMatchObject({ ok: false, refusal: { code } });
  if (!read.ok) expect(fileSentence(read.refusal)).toMatch(/^[A-Z].{30,}\.$|\)\.$/);
});

test("a name over all cells, the library's own kind included, is kept as a name and unrolled nowhere", async () => {
  const names = ["_xlnm._FilterDatabase", "Everything"].map(
    (name) =>
      `<definedName name="${name}" localSheetId="0" hidden="1">Sets!$A$1:$XFD$1048576</definedName>`,
  );
  const file = spoilt(book, before("<calcPr", `<definedNames>${names.join("")}</definedNames>`));
  const read = await readXlsx("Log", file);
  expect(read).toMatchObject({
    ok: true,
    value: { workbook: { tabs: [{ cells: { length: 2 } }] } },
  });
  if (!read.ok) return;
  const saved = await writeXlsx(read.value.workbook, file);
  expect(saved.ok && strFromU8(unzipSync(saved.value)[book]!)).toContain("$XFD$1048576");
});

test("a dimension of the largest tab with one cell takes no more than the cell", async () => {
  const file = spoilt(sheet, (text) =>
    text.replace(/<dimension [^>]*>/, '<dimension ref="A1:XFD1048576"/>'),
  );
  const read = await readXlsx("Log", file);
  expect(read.ok && read.value.workbook.tabs[0]!.cells.flat()).toHaveLength(2);
});

test("shared texts that swell are refused before they are unpacked", async () => {
  const file = spoilt(
    "xl/sharedStrings.xml",
    before("</sst>", many("<si><t>Tomas</t></si>", 30_000_000)),
    9,
  );
  expect(file.length).toBeLessThan(limits.fileBytes);
  expect(await readXlsx("Log", file)).toMatchObject({ refusal: { code: "unpacks-too-large" } });
});

test("elements nested a hundred thousand deep end in the rows or in a refusal, and harm nothing", async () => {
  const deep = 100_000;
  const file = spoilt(sheet, before("<sheetData>", "<a>".repeat(deep) + "</a>".repeat(deep)));
  const read = await readXlsx("Log", file);
  expect(read.ok ? read.value.workbook.tabs[0]!.cells.length : read.refusal.code).toEqual(
    read.ok ? 2 : "not-xlsx",
  );
});

test("a shared formula over the whole tab stands in the cells that name it and in no other", async () => {
  const file = spoilt(
    sheet,
    before(
      "</sheetData>",
      '<row r="9"><c r="A9"><f t="shared" si="0" ref="A9:XFD1048576">B9</f><v>1</v></c><c r="B9"><f t="shared" si="0"/><v>1</v></c></row>',
    ),
  );
  const read = await readXlsx("Log", file);
  expect(read.ok && read.value.workbook.tabs[0]!.cells[8]!.map((cell) => cell?.formula)).toEqual([
    "=B9",
    "=C9",
  ]);
});
