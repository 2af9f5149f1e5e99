import { plainTab } from "../../src/local-host/workbook-data";
import { type ServedPage, servedPage, until, values } from "./served-page";

const script = `
function onOpen() {
  SpreadsheetApp.getUi().createMenu("Rows").addItem("Check", "check").addToUi();
}
function check() {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile("Sidebar").setTitle("Rows"));
}
function goToCell() {
  SpreadsheetApp.getActive().getSheetByName("Sets").getRange("H300").activate();
}`;
const sidebar = `<button type="button">Go to H300</button><script>
  document.querySelector("button").addEventListener("click", () => google.script.run.goToCell());
</script>`;
let shown: ServedPage;
beforeAll(async () => {
  const rows = Array.from({ length: 400 }, (_, row) => [
    { value: `row ${row + 1}` },
    ...Array.from({ length: 7 }, () => ({ value: 5 })),
  ]);
  shown = await servedPage({
    workbook: {
      name: "Quillbeck",
      tabs: [plainTab("Squad", [[{ value: "Squad" }]]), plainTab("Sets", rows)],
      names: [],
      properties: {},
    },
    script,
    sidebar,
  });
  await shown.page.getByRole("button", { name: "Rows" }).click();
  await shown.page.getByRole("menuitem", { name: "Check" }).click();
});
afterAll(() => shown.close());

test.each([
  ["a laptop", { width: 1280, height: 800 }],
  ["a phone", { width: 375, height: 667 }],
  ["four times the zoom", { width: 320, height: 256 }],
] as const)(
  "%s: the cell gone to is in sight, in its tab, and what is typed next is in it",
  async (place, size) => {
    const { page } = shown;
    await page.setViewportSize(size);
    await page.evaluate(() => {
      const { book } = globalThis.holdline!.engine;
      book.setActiveSheet(book.getSheetByName("Squad")!);
    });
    const go = page.frameLocator("aside.sidebar iframe").getByRole("button");
    await go.click();
    const at = () =>
      page.evaluate(() => {
        const sheet = globalThis.holdline!.engine.book.getActiveSheet();
        const { top, bottom } = document.querySelector(".grid")!.getBoundingClientRect();
        return {
          tab: sheet.getSheetName(),
          cell: sheet.getActiveRange()?.getA1Notation(),
          scrolled: sheet.getScrollState().sheetViewStartRow > 250,
          grid: top >= 0 && bottom <= innerHeight,
        };
      });
    await until(async () => (await at()).scrolled);
    expect(await at()).toEqual({ tab: "Sets", cell: "H300", scrolled: true, grid: true });
    await page.keyboard.type(`82.5 ${place}`, { delay: 15 });
    await page.keyboard.press("Enter");
    await until(async () => (await values(page, "Sets"))[299]?.[7] === `82.5 ${place}`);
  },
);
