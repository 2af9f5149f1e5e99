import Excel from "exceljs";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import type { TabData, WorkbookData } from "../../../src/local-host/workbook-data";
import { fileOf, firstTab, oneCell, partOf, read, saved, withPart } from "./xlsx-file";

const part = "xl/tables/table1.xml";

/** A table as other programs write it: how many rows its headings take is not said where it is one. */
async function withTable(more = "", formula: string | null = null) {
  const plain = await fileOf((book) => {
    const sheet = book.addWorksheet("Sets");
    sheet.addTable({
      name: "Sets",
      ref: "A2",
      headerRow: true,
      columns: [{ name: "Date" }, { name: "Load" }, { name: "Reps" }],
      rows: [
        ["Mon", 80, 5],
        ["Tue", 81, 5],
        ["Wed", 82, 3],
      ],
    });
    sheet.getCell("A1").value = "Spring";
    if (formula !== null) sheet.getCell("E3").value = { formula, result: 1 };
  });
  return withPart(
    plain,
    part,
    () =>
      `<?xml version="1.0"?><table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xr="urn:r" id="1" xr:uid="{0}" name="Sets" displayName="Sets" ref="A2:C5" totalsRowShown="0" headerRowDxfId="3"><autoFilter ref="A2:C5" xr:uid="{1}"><filterColumn colId="2"><filters><filter val="5"/><dateGroupItem year="2026" dateTimeGrouping="year"/></filters></filterColumn></autoFilter><tableColumns count="3"><tableColumn id="1" name="Date" dataDxfId="2"/><tableColumn id="2" name="Load"/><tableColumn id="5" name="Reps">${more}</tableColumn></tableColumns><tableStyleInfo name="TableStyleMedium2" showRowStripes="1"/></table>`,
  );
}

const columnsOf = (bytes: Uint8Array) =>
  [...partOf(bytes, part).matchAll(/<tableColumn [^<>]*id="(\d+)" name="([^"]*)"/g)].map(
    ([, id, name]) => `${id} ${name}`,
  );
const refusal = async (original: Uint8Array, change: (workbook: WorkbookData) => WorkbookData) => {
  const outcome = await writeXlsx(change(await read(original)), original);
  return outcome.ok ? null : outcome.refusal;
};
const lines = (change: (cells: TabData["cells"]) => TabData["cells"]) =>
  firstTab((tab) => ({ ...tab, cells: change(tab.cells) }));

test("a table is a table with its headings, filter and formulas after a save", async () => {
  const more = "<calculatedColumnFormula>Sets[Load]*2</calculatedColumnFormula>";
  const bytes = await saved(await withTable(more), oneCell(2, 1, { value: 85 }));
  const table = partOf(bytes, part);
  expect(table).not.toContain("headerRowCount");
  expect(table).toContain('<filterColumn colId="2"><filters><filter val="5"/><dateGroupItem');
  expect(table).toContain(more);
  // Looks by number: the numbers are others now.
  expect(table).not.toMatch(/dxfid/i);
  const sheet = partOf(bytes, "xl/worksheets/sheet1.xml");
  const [, id] = /<tableParts count="1"><tablePart r:id="([^"]*)"\/>/.exec(sheet) ?? [];
  expect(partOf(bytes, "xl/worksheets/_rels/sheet1.xml.rels")).toMatch(
    new RegExp(`Id="${id}"[^>]*relationships/table"[^>]*Target="../tables/table1.xml"`),
  );
  expect(partOf(bytes, "[Content_Types].xml")).toContain(`PartName="/${part}"`);
  // Once more, as the next save does.
  expect(partOf(await saved(bytes), part)).toBe(table);
});

test("a column is called as its heading is, line break and all", async () => {
  const bytes = await saved(await withTable(), oneCell(1, 1, { value: "Load\n(kg) <&>" }));
  expect(columnsOf(bytes)).toEqual(["1 Date", "2 Load_x000a_(kg) &lt;&amp;&gt;", "5 Reps"]);
});

test.each([
  ["empty", null, null],
  ["no text", { value: 5 }, null],
  ["the same as another", { value: "date" }, null],
  ["another than the one a formula names", { value: "Mass" }, "SUM(Sets[Load])"],
])("a heading that is %s is not saved, and said", async (_, cell, formula) => {
  const original = await withTable("", formula);
  expect(await refusal(original, oneCell(1, 1, cell))).toEqual({
    code: "table-heading",
    facts: { cell: "Sets B2" },
  });
  expect(await refusal(original, oneCell(1, 2, { value: "Repetitions" }))).toBeNull();
});

test.each([
  [
    "a row put in above it",
    (cells: TabData["cells"]) => [[], ...cells],
    "A3:C6",
    ["1 Date", "2 Load", "5 Reps"],
    '<filterColumn colId="2">',
  ],
  [
    "a row taken out of it",
    (cells: TabData["cells"]) => cells.filter((_, at) => at !== 3),
    "A2:C4",
    ["1 Date", "2 Load", "5 Reps"],
    '<filterColumn colId="2">',
  ],
  [
    "a column put in and headed",
    (cells: TabData["cells"]) =>
      cells.map((line, at) =>
        at === 0 ? line : [line[0]!, at === 1 ? { value: "Lift" } : null, ...line.slice(1)],
      ),
    "A2:D5",
    ["1 Date", "6 Lift", "2 Load", "5 Reps"],
    '<filterColumn colId="3">',
  ],
  [
    "a column taken out",
    (cells: TabData["cells"]) =>
      cells.map(([date, , ...others], at) => (at === 0 ? [date!] : [date!, ...others])),
    "A2:B5",
    ["1 Date", "5 Reps"],
    '<filterColumn colId="1">',
  ],
])("after %s the table is where its rows are", async (_, change, ref, columns, filter) => {
  const bytes = await saved(await withTable(), lines(change));
  expect(partOf(bytes, part)).toContain(`ref="${ref}" totalsRowShown`);
  expect(partOf(bytes, part)).toContain(`<autoFilter ref="${ref}"`);
  expect(partOf(bytes, part)).toContain(filter);
  expect(columnsOf(bytes)).toEqual(columns);
});

test("a file with a table is opened again by the library that other programs read it with (exceljs)", async () => {
  const bytes = await saved(await withTable(), oneCell(2, 1, { value: 85 }));
  const book = new Excel.Workbook();
  await book.xlsx.load(Uint8Array.from(bytes).buffer);
  expect(book.getWorksheet("Sets")!.getTable("Sets")).toBeDefined();
});

test("a table is gone with its rows", async () => {
  const original = await withTable();
  const below = lines((cells) => [...cells, [{ value: "below" }]]);
  const longer = await saved(original, below);
  const bytes = await saved(
    longer,
    lines((cells) => [cells[0]!, cells[5]!]),
  );
  expect(partOf(bytes, part)).toBe("");
  expect(partOf(bytes, "xl/worksheets/sheet1.xml")).not.toContain("tablePart");
});
