import { readFileSync } from "node:fs";
import { join } from "node:path";
import Excel from "exceljs";
import fc from "fast-check";
import { strToU8, unzipSync, zipSync } from "fflate";
import { fileSentence } from "../../../src/local-host/files/file-sentences";
import { readXlsx } from "../../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import {
  type CellData,
  type CellStyle,
  plainTab,
  type TabData,
  type WorkbookData,
} from "../../../src/local-host/workbook-data";

const fixture = readFileSync(join(__dirname, "fixtures/written-by-libreoffice.xlsx"));

async function read(bytes: Uint8Array, name = "Log"): Promise<WorkbookData> {
  const outcome = await readXlsx(name, bytes);
  if (!outcome.ok) throw new Error(fileSentence(outcome.refusal));
  return outcome.value.workbook;
}

async function written(workbook: WorkbookData, original: Uint8Array | null = null) {
  const outcome = await writeXlsx(workbook, original);
  if (!outcome.ok) throw new Error(fileSentence(outcome.refusal));
  return outcome.value;
}

/** A file with one part added or changed. */
function withPart(bytes: Uint8Array, path: string, change: (text: string) => string): Uint8Array {
  const parts = unzipSync(bytes);
  const old = parts[path] ? new TextDecoder().decode(parts[path]) : "";
  return zipSync({ ...parts, [path]: strToU8(change(old)) });
}

const workbook = (...tabs: TabData[]): WorkbookData => ({
  name: "Log",
  tabs,
  names: [],
  properties: {},
});

describe("a file written by LibreOffice", () => {
  test("is read with values, dates, formulas, formats, looks, notes", async () => {
    const [log, squad] = (await read(fixture)).tabs;
    expect(log!.name).toBe("Log");
    expect(log!.cells[0]!.map((cell) => cell?.value)).toEqual([
      "Lift",
      "Datum",
      "Load (lb)",
      "Bar speed m/s",
      "OK?",
    ]);
    expect(log!.cells[0]![0]!.style).toEqual({ bold: true, background: "#fde0c4", wrap: true });
    expect(log!.cells[1]![0]).toMatchObject({ value: "squat", note: "home gym" });
    expect(log!.cells[1]![1]).toEqual({ value: 46154, format: "yyyy-mm-dd" });
    expect(log!.cells[1]![3]).toEqual({ value: 0.62, format: "0.00" });
    expect(log!.cells[2]![2]).toEqual({ value: 188.7, formula: "=C2*1.02" });
    expect(log!.cells[3]!.slice(0, 2).map((cell) => cell?.value)).toEqual([true, "007"]);
    expect(squad!.cells[1]![0]).toEqual({ value: "Bjørn & Åse" });
  });

  test("keeps an array formula's results as its own, not as typed cells", async () => {
    const { cells } = (await read(fixture)).tabs[0]!;
    expect(cells[3]![2]).toEqual({ value: 370, formula: "=C2:C3*2", fills: [[370], [377.4]] });
    expect(cells[4]?.[2] ?? null).toBeNull();
  });

  test("is read with its widths, lists, conditional formats and names", async () => {
    const { tabs, names } = await read(fixture);
    const log = tabs[0]!;
    // 22.32 digits of 7 pixels and 5 of padding.
    expect(log.columnWidths[0]).toBe(161);
    expect(log.validations).toEqual([{ range: "E2:E3", values: ["y", "n"], refusesOthers: true }]);
    expect(log.conditionalFormats).toEqual([
      { ranges: ["D2:D20"], formula: "=D2<0.6", background: "#d6e6f7", bold: true },
    ]);
    expect(names).toEqual([{ name: "speeds", ref: "Log!$D$2:$D$20" }]);
  });

  test("comes back from a save with one cell changed and all else as it was", async () => {
    const before = await read(fixture);
    const log = before.tabs[0]!;
    const cells = log.cells.map((line) => [...line]);
    cells[1]![2] = { ...cells[1]![2]!, value: 190 };
    const after = { ...before, tabs: [{ ...log, cells }, before.tabs[1]!] };
    const bytes = await written(after, fixture);
    expect(await read(bytes)).toEqual(after);
    // Row heights and the tab's print settings are not in our data, and stay in the file.
    const parts = unzipSync(bytes);
    const sheet = new TextDecoder().decode(parts["xl/worksheets/sheet1.xml"]);
    expect(sheet).toContain('ht="23.85"');
    expect(sheet).toMatch(/<pageMargins left="0\.7875/);
  });
});

test("what stood at the top of its row and stands at its bottom now is written so", async () => {
  const of = (style: CellStyle) =>
    workbook(plainTab("Next week", [[{ value: "Lift today", style }]]));
  const styleIn = async (bytes: Uint8Array) => (await read(bytes)).tabs[0]!.cells[0]![0]!.style;
  const top = await written(of({ wrap: true, upright: "top" }));
  expect(await styleIn(top)).toEqual({ wrap: true, upright: "top" });
  expect(await styleIn(await written(of({ wrap: true }), top))).toEqual({ wrap: true });
});

test("a workbook of every kind of cell comes back from a new file as it was", async () => {
  const tab: TabData = {
    ...plainTab("Set's", [
      [
        { value: "Date", style: { bold: true, italic: true, colour: "#1f4e79", align: "center" } },
        { value: "Load", style: { background: "#fde0c4", wrap: true, upright: "top" } },
        { value: "007", note: "stays text" },
      ],
      [
        { value: 46154, format: "yyyy-mm-dd" },
        { value: 57.5, format: "0.0" },
        null,
        { value: true },
        { value: 0.75, format: "hh:mm" },
      ],
      [
        { value: 3, formula: "=SUM(B2:B)", fills: [[3]] },
        null,
        { value: "n", style: { align: "right", upright: "middle" } },
      ],
      [],
      [
        {
          value: "a",
          formula: '=SQUAD_TABLE(Sets!A:Q, "B2:H")',
          fills: [
            ["a", 0.1],
            ["b", null],
          ],
        },
      ],
      [],
      [null, null, { value: "x" }],
    ]),
    frozenRows: 1,
    frozenColumns: 2,
    columnWidths: [120, null, 60, null, null],
    conditionalFormats: [
      { ranges: ["C2:C9"], formula: '=C2="slipping"', background: "#fde0c4", bold: true },
      { ranges: ["A2:A9", "E2:E9"], formula: "=A2>1", colour: "#1f4e79", italic: true },
    ],
    validations: [
      { range: "D2:D", values: ["y", "n"], refusesOthers: false, help: "moved well?" },
      { range: "B2", values: ["a & b"], refusesOthers: true },
    ],
    merged: ["F1:G1"],
  };
  const hidden = { ...plainTab("Hidden", [[{ value: 1 }]]), hidden: true, columnWidths: [null] };
  const before: WorkbookData = {
    name: "Log",
    tabs: [tab, hidden],
    names: [
      { name: "whole", ref: "'Set''s'!$A:$Q" },
      { name: "open", ref: "'Set''s'!$A$2:$A" },
    ],
    properties: { choices: '{"a":"ä <&>"}' },
  };
  const after = await read(await written(before));
  const cells = before.tabs[0]!.cells.map((line) => [...line]);
  cells[2]![0] = { value: 3, formula: "=SUM(B2:B)" };
  expect(after.tabs[0]!.cells).toEqual(cells);
  expect(after).toEqual({
    ...before,
    tabs: [{ ...tab, cells, columnWidths: after.tabs[0]!.columnWidths }, hidden],
  });
  expect(after.tabs[0]!.columnWidths.slice(0, 3)).toEqual([120, null, 60]);
});

describe("a formula of our own that fills cells around it", () => {
  const own = new Set(["SQUAD_TABLE"]);
  const squad = workbook(
    plainTab("Squad", [
      [
        {
          value: "Tomas",
          formula: "=SQUAD_TABLE(Sets!A:Q)",
          fills: [
            ["Tomas", -0.08],
            ["Joss", null],
          ],
        },
        { value: null, format: "0%" },
      ],
      [],
      [{ value: "below" }],
    ]),
  );
  const saved = async () => {
    const bytes = await writeXlsx(squad, null, "a copy", own);
    if (!bytes.ok) throw new Error(bytes.refusal.code);
    return bytes.value;
  };

  test("comes back with its values, as its own", async () => {
    expect((await read(await saved())).tabs).toEqual([
      { ...squad.tabs[0]!, columnWidths: [null, null] },
    ]);
  });

  test("is a plain formula with plain values to another program", async () => {
    const book = new Excel.Workbook();
    await book.xlsx.load((await saved()).buffer as ArrayBuffer);
    const sheet = book.getWorksheet("Squad")!;
    expect(sheet.getCell("A1").value).toEqual({
      formula: "SQUAD_TABLE(Sets!A:Q)",
      result: "Tomas",
    });
    expect([sheet.getCell("B1").value, sheet.getCell("A2").value]).toEqual([-0.08, "Joss"]);
  });

  test("leaves what another program typed over one of its values where it is", async () => {
    const book = new Excel.Workbook();
    await book.xlsx.load((await saved()).buffer as ArrayBuffer);
    book.getWorksheet("Squad")!.getCell("A2").value = "typed";
    const { cells } = (await read(new Uint8Array(await book.xlsx.writeBuffer()))).tabs[0]!;
    expect(cells[1]![0]).toEqual({ value: "typed" });
  });

  test("takes its old values with it when it gives fewer", async () => {
    const [tab] = squad.tabs;
    const [first, look] = tab!.cells[0]!;
    const fewer = { ...first!, fills: [["Tomas", -0.09]] };
    const after = {
      ...squad,
      tabs: [{ ...tab!, cells: [[fewer, look!], ...tab!.cells.slice(1)] }],
    };
    const bytes = await writeXlsx(after, await saved(), "in place", own);
    const [again] = (await read(bytes.ok ? bytes.value : new Uint8Array())).tabs;
    expect(again!.cells).toEqual(after.tabs[0]!.cells);
  });
});

test("what is written is read again, whatever a coach typed", async () => {
  const text = fc
    .string({ unit: "grapheme", minLength: 1, maxLength: 20 })
    .filter((typed) => !/[\p{Cc}\ufffe\uffff]/u.test(typed) && typed.trim() === typed);
  const cell: fc.Arbitrary<CellData | null> = fc.oneof(
    fc.constant(null),
    text.map((value) => ({ value })),
    fc
      .double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 })
      .map((n) => ({ value: n === 0 ? 0 : n })),
    fc.integer({ min: 40000, max: 50000 }).map((value) => ({ value, format: "yyyy-mm-dd" })),
    fc.boolean().map((value) => ({ value })),
  );
  const lines = fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(lines, async (cells) => {
      const after = await read(
        await written(workbook(plainTab("Sets", [...cells, [{ value: "end" }]]))),
      );
      cells.forEach((line, row) => {
        expect(line.map((_, column) => after.tabs[0]!.cells[row]?.[column] ?? null)).toEqual(line);
      });
    }),
    { numRuns: 40 },
  );
});

test("looks we do not show stay in the file: borders, fonts, row heights, other conditional formats", async () => {
  const book = new Excel.Workbook();
  const sheet = book.addWorksheet("Sets");
  sheet.getCell("A1").value = "Load";
  sheet.getCell("A1").border = { bottom: { style: "double" } };
  sheet.getCell("A1").font = { name: "Georgia", size: 14, underline: true };
  sheet.getRow(1).height = 40;
  sheet.pageSetup.orientation = "landscape";
  sheet.getCell("A2").value = { richText: [{ text: "57" }, { font: { bold: true }, text: ".5" }] };
  sheet.addConditionalFormatting({
    ref: "A2:A9",
    rules: [{ type: "cellIs", operator: "greaterThan", formulae: [50], priority: 1, style: {} }],
  });
  const original = new Uint8Array(await book.xlsx.writeBuffer());
  const before = await read(original, "Sets");
  const tab = before.tabs[0]!;
  const bytes = await written(
    { ...before, tabs: [{ ...tab, cells: [[{ value: "Load (kg)" }], ...tab.cells.slice(1)] }] },
    original,
  );
  const again = new Excel.Workbook();
  await again.xlsx.load(bytes.buffer as ArrayBuffer);
  const kept = again.getWorksheet("Sets")!;
  expect(kept.getCell("A1").value).toBe("Load (kg)");
  expect(kept.getCell("A1").border.bottom!.style).toBe("double");
  expect(kept.getCell("A1").font).toMatchObject({ name: "Georgia", size: 14, underline: true });
  expect(kept.getRow(1).height).toBe(40);
  expect(kept.pageSetup.orientation).toBe("landscape");
  expect(kept.getCell("A2").value).toMatchObject({ richText: [{ text: "57" }, { text: ".5" }] });
  expect(JSON.stringify(kept.model)).toContain("greaterThan");
});

test("tabs can be renamed, added, taken away and put in another order", async () => {
  const first = workbook(plainTab("A", [[{ value: 1 }]]), plainTab("B", [[{ value: 2 }]]));
  const original = await written(first);
  const renamed = workbook(plainTab("A", [[{ value: 1 }]]), plainTab("C", [[{ value: 2 }]]));
  const namesOf = async (bytes: Uint8Array) => (await read(bytes)).tabs.map(({ name }) => name);
  expect(await namesOf(await written(renamed, original))).toEqual(["A", "C"]);
  const fewer = workbook(plainTab("B", [[{ value: 2 }]]));
  expect(await namesOf(await written(fewer, original))).toEqual(["B"]);
  const turned = workbook(first.tabs[1]!, plainTab("New", []), first.tabs[0]!);
  expect(await namesOf(await written(turned, original))).toEqual(["B", "New", "A"]);
});

test("a document's own properties come through a save", async () => {
  const bytes = withPart(fixture, "docProps/custom.xml", () => "<Properties>club</Properties>");
  const parts = unzipSync(await written(await read(bytes), bytes));
  const text = (path: string) => new TextDecoder().decode(parts[path]);
  expect(text("docProps/custom.xml")).toBe("<Properties>club</Properties>");
  expect(text("[Content_Types].xml")).toContain('PartName="/docProps/custom.xml"');
  expect(text("_rels/.rels")).toContain('Target="docProps/custom.xml"');
});

test.each([
  ["xl/charts/chart1.xml", "a chart"],
  ["xl/vbaProject.bin", "macros"],
  ["xl/pivotTables/pivotTable1.xml", "a pivot table"],
  ["xl/externalLinks/externalLink1.xml", "links to other workbooks"],
  ["customXml/item1.xml", "document properties of its own"],
  ["xl/somethingNew.xml", "a part named xl/somethingNew.xml"],
])(
  "a file with %s opens with a warning, and a save in place is refused: %s",
  async (path, what) => {
    const bytes = withPart(fixture, path, () => "<x/>");
    const outcome = await readXlsx("Log", bytes);
    expect(outcome.ok && outcome.value.notes.map(({ facts }) => facts.what)).toEqual([what]);
    const before = await read(bytes);
    expect(await writeXlsx(before, bytes)).toEqual({
      ok: false,
      refusal: { code: "save-would-lose", facts: { what } },
    });
    expect((await writeXlsx(before, bytes, "a copy")).ok).toBe(true);
  },
);

test.each([
  [
    '<cfRule type="duplicateValues" dxfId="0" priority="9"/>',
    "conditional formats of another kind",
  ],
  ['<scenario name="x"/>', "scenarios"],
])("a tab that holds %s is not saved in place", async (xml, what) => {
  const bytes = withPart(fixture, "xl/worksheets/sheet1.xml", (text) =>
    text.replace("</worksheet>", `${xml}</worksheet>`),
  );
  const outcome = await writeXlsx(workbook(), bytes);
  expect(outcome).toMatchObject({ refusal: { code: "save-would-lose", facts: { what } } });
});

describe("files made to harm, or damaged", () => {
  test("a small file that unpacks to a large one is refused before it is unpacked", async () => {
    const parts = unzipSync(fixture);
    const bomb = zipSync({ ...parts, "xl/media/a.bin": new Uint8Array(60_000_000) }, { level: 9 });
    expect(bomb.length).toBeLessThan(100_000);
    expect(await readXlsx("x", bomb)).toMatchObject({ refusal: { code: "unpacks-too-large" } });
  });

  test("a part that is longer than it says is refused, not read in part", async () => {
    const bytes = Buffer.from(zipSync(unzipSync(fixture)));
    // Uncompressed size in the central directory stands 22 bytes before the name.
    bytes.writeUInt32LE(3000, bytes.lastIndexOf("xl/worksheets/sheet1.xml") - 22);
    expect(await readXlsx("x", bytes)).toMatchObject({ refusal: { code: "not-xlsx" } });
  });

  test.each(["../evil.xml", "/etc/x", "xl/../../x", "C:/x"])(
    "a part named %s is refused",
    async (path) => {
      const bytes = withPart(fixture, path, () => "<x/>");
      expect(await readXlsx("x", bytes)).toMatchObject({
        refusal: { code: "part-outside", facts: { part: path } },
      });
    },
  );

  test.each([
    ["empty", new Uint8Array()],
    ["text", strToU8("Date,Athlete\n")],
    ["cut short", fixture.subarray(0, 4000)],
    ["a zip of something else", zipSync({ "a.txt": strToU8("a") })],
    [
      "dates as text",
      withPart(fixture, "xl/worksheets/sheet1.xml", (t) =>
        t.replace('<c r="B2" s="2" t="n">', '<c r="B2" s="2" t="d">'),
      ),
    ],
  ])("a file that is %s is refused with what to do", async (_, bytes) => {
    const outcome = await readXlsx("x", bytes);
    expect(outcome).toMatchObject({ ok: false, refusal: { code: "not-xlsx" } });
  });

  test.each([
    ["XFD1", "too-many-columns"],
    ["A1048576", "too-many-rows"],
  ])("a cell far away at %s is refused, not laid out", async (cell, code) => {
    const row = /\d+/.exec(cell)![0];
    const bytes = withPart(fixture, "xl/worksheets/sheet2.xml", (text) =>
      text.replace(
        /<sheetData>[\s\S]*<\/sheetData>/,
        `<sheetData><row r="${row}"><c r="${cell}"><v>1</v></c></row></sheetData>`,
      ),
    );
    expect(await readXlsx("x", bytes)).toMatchObject({ refusal: { code } });
  });

  test("a list over a whole column is kept without laying out a million cells", async () => {
    const bytes = withPart(fixture, "xl/worksheets/sheet1.xml", (text) =>
      text.replace('sqref="E2:E3"', 'sqref="E2:E1048576"'),
    );
    const before = await read(bytes);
    expect(before.tabs[0]!.validations[0]!.range).toBe("E2:E");
    expect((await read(await written(before, bytes))).tabs[0]!.validations[0]!.range).toBe("E2:E");
  });
});
