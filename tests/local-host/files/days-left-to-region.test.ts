import Excel from "exceljs";
import { fileOf, oneCell, read, saved } from "./xlsx-file";

/** A day and a time of a form's answer as programs save them by themselves: formats 14 and 22. */
const file = () =>
  fileOf((book) => {
    const sheet = book.addWorksheet("Diary");
    for (const [at, format] of ["mm-dd-yy", 'm/d/yy "h":mm', "dd/mm/yyyy"].entries()) {
      const cell = sheet.getCell(1, at + 1);
      cell.value = new Date(Date.UTC(2026, 1, 3, 7, 12));
      cell.numFmt = format;
    }
  });

test("days in a region's own order are shown year first, others as they are", async () => {
  const [line] = (await read(await file())).tabs[0]!.cells;
  expect(line!.map((cell) => cell?.format)).toEqual([
    "yyyy-mm-dd",
    "yyyy-mm-dd h:mm",
    "dd/mm/yyyy",
  ]);
});

test("in the file they keep their format, also where the day is changed", async () => {
  const bytes = await saved(await file(), oneCell(0, 0, { value: 46_200, format: "yyyy-mm-dd" }));
  const book = new Excel.Workbook();
  await book.xlsx.load(bytes.buffer as ArrayBuffer);
  const sheet = book.getWorksheet("Diary")!;
  expect(sheet.getCell("A1").value).toEqual(new Date(Date.UTC(2026, 5, 27)));
  expect(["A1", "B1", "C1"].map((at) => sheet.getCell(at).numFmt)).toEqual([
    "mm-dd-yy",
    'm/d/yy "h":mm',
    "dd/mm/yyyy",
  ]);
});
