import { plainTab } from "../../src/local-host/workbook-data";
import { fixtureScript } from "../local-host/fixture-script";
import { clickCell, type ServedPage, servedPage } from "./served-page";

let shown: ServedPage;
beforeAll(async () => {
  const rows = ["Load", 80, 820, 85].map((value) => [{ value }]);
  shown = await servedPage({
    workbook: {
      name: "Quillbeck",
      tabs: [{ ...plainTab("Sets", rows), hiddenRows: [2] }],
      names: [],
      properties: {},
    },
    script: fixtureScript,
    sidebar: "<p>Rows</p>",
  });
});
afterAll(() => shown.close());

test("led to a cell in a hidden row, the coach reads where it is; elsewhere nothing is said", async () => {
  const { page } = shown;
  const said = page.getByText("A3 is in a hidden row or column: read and change it in the line");
  await page.evaluate(() => {
    const { book } = globalThis.holdline!.engine;
    book.setActiveRange(book.getActiveSheet().getRange("A3"));
  });
  await said.waitFor();
  await clickCell(page, "Sets", "A4");
  await said.waitFor({ state: "detached" });
});
