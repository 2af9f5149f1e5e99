import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { fixtureScript } from "../local-host/fixture-script";
import { clickCell, type ServedPage, servedPage, until } from "./served-page";

let shown: ServedPage;
let copied: WorkbookData | null = null;
const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: [plainTab("Sets", [[{ value: "Load" }]])],
  names: [],
  properties: {},
};
beforeAll(async () => {
  shown = await servedPage({
    workbook,
    script: fixtureScript,
    store: {
      opened: async () => ({ opening: 0, workbook, place: null, notes: [] }),
      exported: async (_, given) => {
        copied = given;
        return new Uint8Array([0]);
      },
    },
  });
});
afterAll(() => shown.close());

async function beginTyping(cell: string, text: string): Promise<void> {
  await clickCell(shown.page, "Sets", cell);
  await shown.page.keyboard.type(text, { delay: 15 });
  await until(() => shown.page.evaluate(() => globalThis.holdline!.engine.book.isCellEditing()));
  await shown.page.waitForTimeout(300);
}

test("what is still being typed is in the copy", async () => {
  await beginTyping("A3", "85");
  await shown.page.getByRole("button", { name: "Save as .xlsx" }).click();
  await until(() => copied !== null);
  expect(copied!.tabs[0]!.cells[2]![0]).toMatchObject({ value: 85 });
});

test("what is still being typed keeps the page from being left unasked", async () => {
  await beginTyping("A4", "90");
  const kept = await shown.page.evaluate(() => {
    const leaving = new Event("beforeunload", { cancelable: true });
    dispatchEvent(leaving);
    return leaving.defaultPrevented;
  });
  expect(kept).toBe(true);
});
