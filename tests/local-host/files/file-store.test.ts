import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileStore } from "../../../src/local-host/files/file-store";
import type { WorkbookData } from "../../../src/local-host/workbook-data";

const sample = join(__dirname, "../../../sample-sheets");

const fixture = join(__dirname, "fixtures/written-by-libreoffice.xlsx");
const own = new Set(["SQUAD_TABLE", "ROW_CHECK"]);
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "holdline-store-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const store = (path: string | null) => fileStore({ path, sample, own });

function typed(workbook: WorkbookData, value: string): WorkbookData {
  const [first, ...others] = workbook.tabs;
  return {
    ...workbook,
    tabs: [{ ...first!, cells: [[{ value }], ...first!.cells.slice(1)] }, ...others],
  };
}

test("an .xlsx file is saved in place, again and again", async () => {
  const path = join(folder, "Log.xlsx");
  cpSync(fixture, path);
  const { opened, save } = store(path);
  const first = (await opened())!;
  expect(first).toMatchObject({ place: path, notes: [] });
  const { opening, workbook } = first;
  await Promise.all([save(opening, typed(workbook, "one")), save(opening, typed(workbook, "two"))]);
  await save(opening, typed(workbook, "three"));
  const again = (await store(path).opened())!;
  expect(again.workbook.tabs[0]!.cells[0]![0]?.value).toBe("three");
});

test("a file another program changed is not overwritten, and saving goes on refusing", async () => {
  const path = join(folder, "Log.xlsx");
  cpSync(fixture, path);
  const { opened, save } = store(path);
  const { opening, workbook } = (await opened())!;
  writeFileSync(path, "another's");
  await expect(save(opening, workbook)).rejects.toThrow(`${path} was changed by another program`);
  await expect(save(opening, workbook)).rejects.toThrow("Nothing was written");
  expect(readFileSync(path, "utf8")).toBe("another's");
});

test("of two windows on one file, the one that saves later is refused and writes over nothing", async () => {
  const path = join(folder, "Log.xlsx");
  cpSync(fixture, path);
  const { opened, save, exported } = store(path);
  const [one, other] = [(await opened())!, (await opened())!];
  await save(one.opening, typed(one.workbook, "typed in one"));
  await expect(save(other.opening, typed(other.workbook, "typed in the other"))).rejects.toThrow(
    "in another window",
  );
  await save(one.opening, typed(one.workbook, "typed again in one"));
  const standing = (await store(path).opened())!;
  expect(standing.workbook.tabs[0]!.cells[0]![0]?.value).toBe("typed again in one");
  // What was typed in the other can still be kept as a copy.
  const copy = join(folder, "Copy.xlsx");
  writeFileSync(copy, await exported(other.opening, typed(other.workbook, "typed in the other")));
  const kept = (await store(copy).opened())!;
  expect(kept.workbook.tabs[0]!.cells[0]![0]?.value).toBe("typed in the other");
});

test("a window only looked at stops nobody from saving, and one loaded anew saves again", async () => {
  const path = join(folder, "Log.xlsx");
  cpSync(fixture, path);
  const { opened, save } = store(path);
  const one = (await opened())!;
  await opened();
  await save(one.opening, typed(one.workbook, "one"));
  const anew = (await opened())!;
  expect(anew.workbook.tabs[0]!.cells[0]![0]?.value).toBe("one");
  await save(anew.opening, typed(anew.workbook, "two"));
  await expect(save(one.opening, one.workbook)).rejects.toThrow("in another window");
});

test("a workbook opened in another window leaves this one its place, and its look in a copy", async () => {
  const path = join(folder, "Log.xlsx");
  cpSync(fixture, path);
  const { opened, imported, save } = store(path);
  const one = (await opened())!;
  const other = await imported([
    { name: "Sets.csv", bytes: readFileSync(join(sample, "Sets.csv")) },
  ]);
  await save(one.opening, typed(one.workbook, "typed in one"));
  await expect(save(other.opening, other.workbook)).rejects.toThrow("kept nowhere yet");
  const standing = (await store(path).opened())!;
  expect(standing.workbook.tabs[0]!.cells[0]![0]?.value).toBe("typed in one");
  // The page loaded anew shows what was opened last, whoever saved since.
  expect((await opened())!.workbook.tabs.map(({ name }) => name)).toEqual(["Sets"]);
});

test("a page this program never opened is told so, and writes nothing", async () => {
  const path = join(folder, "Log.xlsx");
  cpSync(fixture, path);
  const { opened, save } = store(path);
  const { workbook } = (await opened())!;
  await expect(save(7, workbook)).rejects.toThrow("load it again");
  expect(readFileSync(path)).toEqual(readFileSync(fixture));
});

test("a folder of CSV files is kept as an .xlsx file beside it; the folder stays as it is", async () => {
  const path = join(folder, "season");
  cpSync(sample, path, { recursive: true });
  const { opened, save } = store(path);
  const { opening, workbook, place } = (await opened())!;
  expect(place).toBe(`${path}.xlsx`);
  expect(existsSync(`${path}.xlsx`)).toBe(false);
  await save(opening, workbook);
  // Loaded anew, the page shows the file.
  expect((await opened())!.place).toBe(`${path}.xlsx`);
  const again = (await store(`${path}.xlsx`).opened())!;
  expect(again.workbook.tabs.map(({ name }) => name)).toEqual(
    workbook.tabs.map(({ name }) => name),
  );
  expect(readFileSync(join(path, "Sets.csv"))).toEqual(readFileSync(join(sample, "Sets.csv")));
  // A folder whose .xlsx file is there already is not kept over it.
  expect((await store(path).opened())!.place).toBeNull();
});

test("the sample is kept nowhere, and says so when it is to be saved", async () => {
  const { opened, save, exported } = store(null);
  const { opening, workbook, place } = (await opened())!;
  expect(place).toBeNull();
  expect(workbook.tabs.map(({ name }) => name)).toEqual(
    "Squad,Athletes,Availability,Sets,Jumps,Diary,Runs,Races,Plates,Rules,Rows not used".split(","),
  );
  await expect(save(opening, workbook)).rejects.toThrow("kept nowhere yet");
  const copy = join(folder, "copy.xlsx");
  writeFileSync(copy, await exported(opening, workbook));
  const { workbook: read } = (await store(copy).opened())!;
  expect(read.tabs).toEqual(
    workbook.tabs.map((tab) => ({
      ...tab,
      columnWidths: expect.anything(),
      cells: expect.anything(),
    })),
  );
  expect(read.tabs[3]!.cells).toHaveLength(workbook.tabs[3]!.cells.length);
  expect(read.tabs[3]!.cells[700]).toEqual(
    workbook.tabs[3]!.cells[700]!.slice(0, read.tabs[3]!.cells[700]!.length),
  );
});

test("files dropped on the page are opened without a place", async () => {
  const { imported } = store(null);
  const csv = (name: string) => ({ name, bytes: readFileSync(join(sample, name)) });
  const two = await imported([csv("Sets.csv"), csv("Athletes.csv")]);
  expect(two.workbook.tabs.map(({ name }) => name)).toEqual(["Athletes", "Sets"]);
  const one = await imported([{ name: "Log.xlsx", bytes: readFileSync(fixture) }]);
  expect(one).toMatchObject({ place: null, workbook: { name: "Log" } });
  await expect(
    imported([csv("Sets.csv"), { name: "a.pdf", bytes: new Uint8Array() }]),
  ).rejects.toThrow("Give one .xlsx file, or CSV files only");
});

test.each([
  ["nowhere.xlsx", "There is no file or folder"],
  ["notes.txt", "neither an .xlsx file nor a folder"],
])("opening %s is refused with a sentence", async (name, sentence) => {
  writeFileSync(join(folder, "notes.txt"), "x");
  await expect(store(join(folder, name)).opened()).rejects.toThrow(sentence);
});

test("a page loaded anew shows what was last saved of a folder, and a file given in the page", async () => {
  const path = join(folder, "season");
  cpSync(sample, path, { recursive: true });
  const { opened, save, imported } = store(path);
  const first = (await opened())!;
  await save(first.opening, typed(first.workbook, "mine"));
  const again = (await opened())!;
  expect([again.place, again.workbook.tabs[0]!.cells[0]![0]?.value]).toEqual([
    `${path}.xlsx`,
    "mine",
  ]);
  await expect(imported([{ name: "notes.txt", bytes: new Uint8Array() }])).rejects.toThrow(
    "Give one",
  );
  expect((await opened())!.place).toBe(`${path}.xlsx`);
  await imported([{ name: "Log.xlsx", bytes: readFileSync(fixture) }]);
  expect((await opened())!).toMatchObject({ place: null, workbook: { name: "Log" } });
});
