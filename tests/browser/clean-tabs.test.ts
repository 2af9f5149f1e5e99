import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { tableNames } from "../../src/rows/table-name";
import { type ServedPage, servedPage, until, values } from "./served-page";

const cells = (rows: readonly (readonly string[])[]) =>
  rows.map((row) => row.map((value) => ({ value })));
const athletes = [["Athlete"], ["Ilka Brandmoor"], ["Tomas Reyerson"]];
const kit = [["bands", "four"]];
const mine: WorkbookData = {
  name: "Quillbeck",
  tabs: [plainTab("Athletes", cells(athletes)), plainTab("Kit", cells(kit))],
  names: [],
  properties: {},
};
const patient = { timeout: 120_000 };
let served: ServedPage;

beforeAll(async () => {
  served = await servedPage({ workbook: mine });
  const { page } = served;
  await page.getByRole("button", { name: "Holdline" }).click();
  await page.getByRole("menuitem").first().click();
  await sidebar().getByRole("button", { name: "Set up" }).click(patient);
});
afterAll(() => served.close());

const sidebar = () => served.page.frameLocator("aside.sidebar iframe");
/** Clicks "Set up tabs" and waits for what it says. */
const setUpTabs = async (says: RegExp): Promise<void> => {
  await sidebar().getByRole("button", { name: "Set up tabs" }).click(patient);
  await sidebar().getByText(says).waitFor(patient);
};
/** The workbook as the page would save it, of each tab the first rows: whole columns are formatted. */
const standing = () =>
  served.page.evaluate(async () => {
    const host = globalThis.holdline!;
    await host.settled();
    const { tabs, properties } = host.workbook();
    return {
      properties,
      tabs: tabs.map(({ name, cells, frozenRows, validations }) => ({
        name,
        frozenRows,
        validations,
        cells: cells.slice(0, 4),
      })),
    };
  });

test("Set up tabs makes a tab a missing table: drop-downs, a heading that stays in view and warns", async () => {
  await setUpTabs(/^Made: .*Sets.*Your own tabs are as they were\.$/);
  const { tabs, properties } = await standing();
  const made = tableNames.filter((name) => name !== "Athletes");
  expect(tabs.map(({ name }) => name)).toEqual(["Athletes", "Kit", ...made]);
  const sets = tabs.find(({ name }) => name === "Sets")!;
  expect(sets.frozenRows).toBe(1);
  expect(sets.cells[0]!.every((cell) => cell?.style?.bold)).toBe(true);
  const lists = sets.validations.map(({ values: list, refusesOthers }) => [list, refusesOthers]);
  expect(lists).toContainEqual([["Ilka Brandmoor", "Tomas Reyerson"], false]);
  // A name typed otherwise is still taken: it is marked, not turned away.
  expect(lists.every(([, refuses]) => refuses === false)).toBe(true);
  const kept = Object.values(properties).join("");
  expect(kept).toContain("Holdline finds the columns by these headings");
  expect(kept).toMatch(/"warningOnly":true/);
});

test("clicked again after a row was entered, nothing is lost and nothing is made twice", async () => {
  const { page } = served;
  const headings = (await values(page, "Sets"))[0]!;
  const row = headings.map((heading) =>
    heading === "Athlete" ? "Ilka Brandmoor" : heading === "Exercise" ? "back squat" : "",
  );
  await page.evaluate(
    ([line, last]) => globalThis.holdline!.write("Sets", `A2:${last}2`, [line as string[]]),
    [row, String.fromCharCode(64 + row.length)] as const,
  );
  const before = await standing();
  await setUpTabs(/^No table is missing: no tab was made\. Drop-downs are up to date\.$/);
  const after = await standing();
  expect(after.tabs.map(({ name }) => name)).toEqual(before.tabs.map(({ name }) => name));
  expect(after.tabs.map((tab) => tab.cells)).toEqual(before.tabs.map((tab) => tab.cells));
  const own = [athletes, kit].map((rows) => rows.map((row) => [...row]));
  expect([await values(page, "Athletes"), await values(page, "Kit")]).toEqual(own);
  expect((await values(page, "Sets"))[1]).toContain("Ilka Brandmoor");
  await until(() => served.saved() !== null);
  expect(served.strays).toEqual([]);
});
