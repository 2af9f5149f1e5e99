import { plainTab } from "../../src/local-host/workbook-data";
import { clickCell, type ServedPage, servedPage, until } from "./served-page";

let shown: ServedPage;
beforeAll(async () => {
  const day = { value: 46154, format: "dd/mm/yyyy" };
  const american = { value: 46154, format: "mm/dd/yyyy" };
  shown = await servedPage({
    workbook: {
      name: "Quillbeck",
      tabs: [plainTab("Sets", [[{ value: "Date" }], [day], [american], [american]])],
      names: [],
      properties: {},
    },
  });
});
afterAll(() => shown.close());

const held = (row: number) =>
  shown.page.evaluate((at) => {
    const { cells } = globalThis.holdline!.workbook().tabs[0]!;
    const cell = cells[at - 1]?.[0];
    return cell ? `${cell.value} ${cell.format}` : "";
  }, row);

async function type(cell: string, text: string): Promise<void> {
  await clickCell(shown.page, "Sets", cell);
  await shown.page.keyboard.type(text, { delay: 15 });
  await shown.page.waitForTimeout(300);
  await shown.page.keyboard.press("Enter");
}

// The browser of these tests speaks British English. 46154 is 12 May 2026.
test("a day typed day before month is that day, in an empty cell and in one that shows days", async () => {
  await type("A5", "12/05/2026");
  await until(async () => (await held(5)) === "46154 dd/mm/yyyy");
  await type("A2", "13/05/2026");
  await until(async () => (await held(2)) === "46155 dd/mm/yyyy");
  await type("A3", "05/11/2026");
  await until(async () => (await held(3)) === "46153 mm/dd/yyyy");
});

test("a cell that shows days opened and left keeps its day", async () => {
  await clickCell(shown.page, "Sets", "A4");
  await shown.page.keyboard.press("F2");
  await shown.page.waitForTimeout(300);
  await shown.page.keyboard.press("Enter");
  await shown.page.waitForTimeout(500);
  expect(await held(4)).toBe("46154 mm/dd/yyyy");
});

test("a formula typed with semicolons and decimal commas is calculated, as in the online sheet", async () => {
  await type("A9", "=LOAD_DROP(80;0,6;0,7;2,5)");
  await type("A10", "=LOAD_DROP(80,0.6,0.7,2.5)");
  await until(async () => (await held(10)).startsWith("7"));
  await until(async () => (await held(9)) === (await held(10)));
});
