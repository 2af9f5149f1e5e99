import type { CellValue } from "exceljs";
import type { CellData } from "../../../src/local-host/workbook-data";
import { fileOf, firstTab, oneCell, partOf, read, saved, withPart } from "./xlsx-file";

test("a cell that takes another format or look changes none of those that looked like it", async () => {
  const original = await fileOf((book) => {
    const sheet = book.addWorksheet("Sets");
    for (const load of [81, 82, 83]) sheet.addRow([load]).getCell(1).numFmt = "0.0";
  });
  const dated = await read(
    await saved(original, oneCell(1, 0, { value: 46154, format: "yyyy-mm-dd" })),
  );
  expect(dated.tabs[0]!.cells).toEqual([
    [{ value: 81, format: "0.0" }],
    [{ value: 46154, format: "yyyy-mm-dd" }],
    [{ value: 83, format: "0.0" }],
  ]);
  const bold = { value: 82, format: "0.0", style: { bold: true, background: "#fde0c4" } };
  const dressed = await read(await saved(original, oneCell(1, 0, bold)));
  expect(dressed.tabs[0]!.cells).toEqual([
    [{ value: 81, format: "0.0" }],
    [bold],
    [{ value: 83, format: "0.0" }],
  ]);
});

test("a cell made bold keeps the colours and sides that are not known here", async () => {
  const original = await fileOf((book) => {
    const cell = book.addWorksheet("Sets").getCell("A1");
    cell.value = "Ilka";
    cell.font = { color: { theme: 4 } as never, strike: true };
    cell.fill = { type: "pattern", pattern: "solid", fgColor: { theme: 5 } as never };
    cell.alignment = { horizontal: "justify", vertical: "top" };
  });
  const bold = oneCell(0, 0, { value: "Ilka", style: { bold: true, upright: "top" } });
  const styles = partOf(await saved(original, bold), "xl/styles.xml");
  expect(styles).toMatch(/<font><b\/><color theme="4"\/><strike\/>/);
  expect(styles).toContain('<fgColor theme="5"/>');
  expect(styles).toContain('horizontal="justify" vertical="top"');
});

test("a row put in above a merged one loses nothing of the rows that take its place", async () => {
  const original = await fileOf((book) => {
    const sheet = book.addWorksheet("Sets");
    sheet.addRows([["a", 1, 2], ["b", 4, 5], ["Week 2"], ["c", 7, 8]]);
    sheet.mergeCells("A3:C3");
    sheet.getCell("C3").border = { right: { style: "thick" } };
  });
  const before = (await read(original)).tabs[0]!;
  const after = { ...before, cells: [[], ...before.cells], merged: ["A4:C4"] };
  const again = (
    await read(
      await saved(
        original,
        firstTab(() => after),
      ),
    )
  ).tabs[0]!;
  expect(again.cells.map((line) => line.map((cell) => cell?.value))).toEqual([
    [],
    ["a", 1, 2],
    ["b", 4, 5],
    ["Week 2"],
    ["c", 7, 8],
  ]);
  expect(again.merged).toEqual(["A4:C4"]);
});

test("empty cells between filled ones show the colours a coach gave them", async () => {
  const original = await fileOf((book) => {
    const sheet = book.addWorksheet("Weeks");
    sheet.addRows([["Athlete", "Mon", "Tue"], ["Ilka"], ["Joss", null, "x"]]);
    const red = { type: "pattern", pattern: "solid", fgColor: { argb: "FFE06666" } } as const;
    sheet.getCell("B2").fill = red;
    sheet.getCell("B3").fill = red;
    sheet.getCell("B9").fill = red;
    sheet.getCell("H2").fill = red;
  });
  const { cells } = (await read(original)).tabs[0]!;
  const coloured = { value: null, style: { background: "#e06666" } };
  expect(cells.slice(1)).toEqual([
    [{ value: "Ilka" }, coloured],
    [{ value: "Joss" }, coloured, { value: "x" }],
  ]);
});

test("cells taken apart keep the looks of each", async () => {
  const original = await fileOf((book) => {
    const sheet = book.addWorksheet("Sets");
    sheet.addRows([["Week 2"], ["a", 1]]);
    sheet.mergeCells("A1:B1");
    sheet.getCell("B1").numFmt = "0.0";
  });
  const apart = await saved(
    original,
    firstTab(({ merged: _, ...tab }) => tab),
  );
  const { cells, merged } = (await read(apart)).tabs[0]!;
  expect(merged).toBeUndefined();
  expect(cells[0]).toEqual((await read(original)).tabs[0]!.cells[0]);
});

describe("a formula filled down", () => {
  const filled = () =>
    fileOf((book) => {
      const sheet = book.addWorksheet("Sets");
      for (let row = 1; row <= 3; row++) sheet.addRow([row, 2]);
      sheet.fillFormula("C1:C3", 'IF(A1=9,"S1",A1*B1)', [2, 4, 6]);
    });
  const formulas = async (bytes: Uint8Array) =>
    (await read(bytes)).tabs[0]!.cells.map((line) => line[2]?.formula);

  test("is read in each cell with its own references, and its texts as they are", async () => {
    expect(await formulas(await filled())).toEqual([
      '=IF(A1=9,"S1",A1*B1)',
      '=IF(A2=9,"S1",A2*B2)',
      '=IF(A3=9,"S1",A3*B3)',
    ]);
  });

  test.each([
    ["another formula", { value: 5, formula: "=A1*5" }],
    ["a number", { value: 5 }],
    ["nothing", null],
  ] as [string, CellData | null][])(
    "stays in the cells below when the first takes %s",
    async (_, cell) => {
      const original = await filled();
      const after = await formulas(await saved(original, oneCell(0, 2, cell)));
      expect(after.slice(1)).toEqual((await formulas(original)).slice(1));
      expect(after[0]).toBe(cell?.formula);
    },
  );
});

test("checks marked by the program that made them are written so that it opens them again", async () => {
  const made = await fileOf((book) => {
    const sheet = book.addWorksheet("Diary");
    sheet.addRow(["Soreness"]);
    sheet.getCell("A2").dataValidation = {
      type: "whole",
      operator: "between",
      formulae: [1, 5],
    };
  });
  const marked = withPart(made, "xl/worksheets/sheet1.xml", (text) =>
    text
      .replace("<worksheet ", '<worksheet xmlns:xr="urn:revisions" ')
      .replace("<dataValidation ", '<dataValidation xr:uid="{0A-0}" '),
  );
  const sheet = partOf(await saved(marked), "xl/worksheets/sheet1.xml");
  expect(sheet).toMatch(/<dataValidation [^<>]*type="whole"[^<>]*sqref="A2"/);
  // A name space that is not declared makes the whole part unreadable.
  expect(sheet).not.toContain("xr:");
});

describe("a formula that another program calculates otherwise", () => {
  const formula = (value: string | number, text: string) => ({ value, formula: text });

  test("keeps the result that program left when none can be calculated here", async () => {
    const original = await fileOf((book) => {
      const sheet = book.addWorksheet("Sets");
      sheet.addRow([{ formula: "Table1[Load]", result: 85 }, 1]);
    });
    const here = oneCell(0, 0, formula("#NAME?", "=Table1[Load]"));
    const again = (await read(await saved(original, here))).tabs[0]!;
    expect(again.cells[0]![0]).toEqual(formula(85, "=Table1[Load]"));
    const caught = oneCell(0, 0, formula(0, "=IFERROR(Table1[Load],0)"));
    const inError = await fileOf((book) => {
      const sheet = book.addWorksheet("Sets");
      sheet.addRow([{ formula: "IFERROR(Table1[Load],0)", result: 85 }, 1]);
    });
    expect((await read(await saved(inError, caught))).tabs[0]!.cells[0]![0]?.value).toBe(85);
    const typed = oneCell(0, 0, formula("#NAME?", "=Table2[Load]"));
    const other = (await read(await saved(original, typed))).tabs[0]!;
    expect(other.cells[0]![0]).toEqual(formula("#NAME?", "=Table2[Load]"));
  });

  test("stays an array formula for its one cell, whether its result is another or not", async () => {
    const text = 'SUM(IF(B1:B2="a",C1:C2))';
    const original = await fileOf((book) => {
      const sheet = book.addWorksheet("Sets");
      sheet.addRows([
        [null, "a", 4],
        [null, "b", 5],
      ]);
      sheet.getCell("A1").value = {
        formula: text,
        result: 4,
        shareType: "array",
        ref: "A1",
      } as unknown as CellValue;
    });
    for (const value of [4, 9]) {
      const bytes = await saved(original, oneCell(0, 0, formula(value, `=${text}`)));
      expect(partOf(bytes, "xl/worksheets/sheet1.xml")).toContain('<f t="array" ref="A1">SUM(IF(');
      expect((await read(bytes)).tabs[0]!.cells[0]![0]).toMatchObject({ value });
    }
  });
});
