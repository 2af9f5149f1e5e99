import { fileOf, partOf, read, saved } from "./files/xlsx-file";
import { opened } from "./opened";

/** A list whose telephone numbers and second row were hidden, each with a size of its own. */
const withHidden = () =>
  fileOf((book) => {
    const sheet = book.addWorksheet("Athletes");
    sheet.addRows([
      ["Athlete", "Telephone", "Event"],
      ["Oona", "555 01", "1500 m"],
      ["Ilka", "555 02", "800 m"],
      ["Joss", "555 03", "10 km"],
    ]);
    Object.assign(sheet.getColumn(2), { width: 20, hidden: true });
    Object.assign(sheet.getRow(3), { height: 40, hidden: true });
  });
const sheet = "xl/worksheets/sheet1.xml";
const columns = (bytes: Uint8Array) => partOf(bytes, sheet).match(/<col\b[^<>]*>/g);
const third = (bytes: Uint8Array) => /<row r="3"[^<>]*>/.exec(partOf(bytes, sheet))?.[0];

test("what a coach hid is hidden here, and comes back hidden as it was", async () => {
  const original = await withHidden();
  const host = await opened({}, await read(original));
  const grid = host.engine.book.getSheetByName("Athletes")!.getSheet();
  const seen = (count: number, isSeen: (at: number) => boolean) =>
    Array.from({ length: count }, (_, at) => isSeen(at));
  expect(seen(3, (column) => grid.getColVisible(column))).toEqual([true, false, true]);
  expect(seen(4, (row) => grid.getRowVisible(row))).toEqual([true, true, false, true]);
  const again = await saved(original, () => host.workbook());
  expect([columns(again), third(again)]).toEqual([columns(original), third(original)]);
});

test("what is shown or hidden in the grid is so in the file, beside what else was hidden", async () => {
  const original = await withHidden();
  const host = await opened({}, await read(original));
  const grid = host.engine.book.getSheetByName("Athletes")!;
  grid.showColumns(1);
  grid.hideRow(grid.getRange("A2"));
  const tab = (await read(await saved(original, () => host.workbook()))).tabs[0]!;
  expect([tab.hiddenRows, tab.hiddenColumns]).toEqual([[1, 2], undefined]);
});

test("hidden lines go along when others come and go before them", async () => {
  const original = await withHidden();
  const host = await opened({}, await read(original));
  const grid = host.engine.book.getSheetByName("Athletes")!;
  grid.insertRows(0, 2);
  grid.insertColumns(0, 1);
  const tab = (await read(await saved(original, () => host.workbook()))).tabs[0]!;
  expect([tab.hiddenRows, tab.hiddenColumns]).toEqual([[4], [2]]);
});
