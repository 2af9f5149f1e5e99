import Excel from "exceljs";
import { fileOf, oneCell, read, saved } from "./xlsx-file";

// ECMA-376 part 1, 18.17.4.1: in the 1904 system day 0 is 1 January 1904, 1462 days after the other's.
const from1904 = () =>
  fileOf((book) => {
    book.properties.date1904 = true;
    const sheet = book.addWorksheet("Sets");
    const cells: [unknown, string][] = [
      [new Date(Date.UTC(2026, 5, 1)), "yyyy-mm-dd"],
      [0.3125, "h:mm"],
      [1.5, "[h]:mm"],
      [{ formula: "B1*2", result: 0.625 }, "hh:mm:ss"],
      [{ formula: "A1+1", result: new Date(Date.UTC(2026, 5, 2)) }, "d mmm"],
    ];
    cells.forEach(([value, format], at) => {
      const cell = sheet.getCell(1, at + 1);
      cell.value = value as Excel.CellValue;
      cell.numFmt = format;
    });
  });

test("days are days, and times of day and durations stay what they are", async () => {
  const { cells } = (await read(await from1904())).tabs[0]!;
  // 1 June 2026 is serial day 46174.
  expect(cells[0]!.map((cell) => cell?.value)).toEqual([46174, 0.3125, 1.5, 0.625, 46175]);
});

test.each([
  ["a day", 0, { value: 46180, format: "yyyy-mm-dd" }, 46180 - 1462],
  ["a time of day", 1, { value: 0.75, format: "h:mm" }, 0.75],
  ["a duration", 2, { value: 2.25, format: "[h]:mm" }, 2.25],
  [
    "a day that a formula gives",
    4,
    { value: 46181, formula: "=A1+7", format: "d mmm" },
    46181 - 1462,
  ],
])("%s is written as the file counts", async (_, column, cell, inFile) => {
  const bytes = await saved(await from1904(), oneCell(0, column, cell));
  expect((await read(bytes)).tabs[0]!.cells[0]![column]).toEqual(cell);
  const book = new Excel.Workbook();
  await book.xlsx.load(bytes.buffer as ArrayBuffer);
  const found = book.getWorksheet("Sets")!.getCell(1, column + 1);
  const date = (found.result ?? found.value) as Date;
  // The library adds the 1462 days to all of them.
  expect(date.getTime() / 86_400_000 + 25_569 - 1462).toBeCloseTo(inFile, 9);
});
