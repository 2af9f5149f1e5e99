import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { readXlsx } from "../../src/local-host/files/xlsx/read-xlsx";
import { seriousFindings } from "./axe";
import { type SamplePage, samplePage } from "./sample-page";
import { ready, typeInto, until } from "./served-page";

const spring = readFileSync(join(__dirname, "../local-host/by-hand/spring-log.xlsx"));
let sample: SamplePage;
let page: Page;

beforeAll(async () => {
  sample = await samplePage();
  page = sample.page;
});
afterAll(() => sample.close());

/** Lets a file go over the grid, as from a folder on the desktop. */
const drop = (name: string, bytes: Buffer) =>
  page.evaluate(
    ([file, base64]) => {
      const data = new DataTransfer();
      const content = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      data.items.add(new File([content], file));
      const event = new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true });
      document.querySelector(".grid")!.dispatchEvent(event);
    },
    [name, bytes.toString("base64")] as const,
  );
const tabs = () =>
  page.evaluate(() => globalThis.holdline?.workbook().tabs.map(({ name }) => name));
const question = () =>
  `Open spring-log.xlsx in place of this workbook? Everything here is saved to ${sample.squad}.xlsx.`;

test("a file let go over an open workbook is asked about, and staying changes nothing", async () => {
  await typeInto(page, "Squad", "A1", "Mine");
  const before = await tabs();
  await drop("spring-log.xlsx", spring);
  await page.getByText(question()).waitFor();
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Open it");
  expect(await seriousFindings(page, [".messages", ".bar"])).toEqual([]);
  await page.getByRole("button", { name: "Stay here" }).click();
  await page.getByText(question()).waitFor({ state: "detached" });
  expect(await tabs()).toEqual(before);
});

test("a file that is no workbook is refused in words, and the open one stays", async () => {
  const before = await tabs();
  await drop("notes.xlsx", Buffer.from("not a workbook"));
  await page.getByRole("button", { name: "Open it" }).click();
  await page.getByText(/^Not opened\. The file is not an \.xlsx workbook/).waitFor();
  expect(await tabs()).toEqual(before);
});

test("in a second window on the same file, what was saved meanwhile is not written over, and it says so", async () => {
  const other = await sample.newPage();
  await other.goto(page.url());
  await ready(other);
  await typeInto(page, "Squad", "A1", "Typed in the first window");
  await page.getByText(`Saved to ${sample.squad}.xlsx`).waitFor();
  await typeInto(other, "Squad", "A2", "Typed in the second");
  await other.getByText(/^Not saved\. .* in another window, since it was opened here/).waitFor();
  const read = await readXlsx("Quillbeck", readFileSync(`${sample.squad}.xlsx`));
  if (!read.ok) throw new Error(read.refusal.code);
  const [first, second] = read.value.workbook.tabs[0]!.cells;
  expect(first?.[0]?.value).toBe("Typed in the first window");
  expect(second?.[0]?.value).not.toBe("Typed in the second");
  await other.close();
});

test("opened, it stands in the old one's place, whose last change is in its file", async () => {
  await drop("spring-log.xlsx", spring);
  await page.getByRole("button", { name: "Open it" }).click();
  await until(async () => (await tabs().catch(() => undefined))?.includes("Squad") === false);
  await ready(page);
  await page.getByRole("heading", { name: "spring-log" }).waitFor();
  const kept = await readXlsx("Quillbeck", readFileSync(`${sample.squad}.xlsx`));
  expect(kept.ok && kept.value.workbook.tabs[0]!.cells[0]![0]?.value).toBe(
    "Typed in the first window",
  );
  await page.reload();
  await ready(page);
  await page.getByRole("heading", { name: "spring-log" }).waitFor();
});

test("from the first screen one can go back to the workbook that is open", async () => {
  await page.getByRole("button", { name: "Open…" }).click();
  await page.getByRole("button", { name: "Back to the workbook" }).click();
  await ready(page);
  await page.getByRole("heading", { name: "spring-log" }).waitFor();
});

test("the browser's own way back from the first screen leads to the workbook, too", async () => {
  await page.getByRole("button", { name: "Open…" }).click();
  await page.getByRole("button", { name: "Back to the workbook" }).waitFor();
  await page.goBack();
  await page.getByRole("heading", { name: "spring-log" }).waitFor();
  await ready(page);
});

test("what is in no file yet is not left behind unasked", async () => {
  const question = page.getByText(/^What you changed here is not in a file yet/);
  const first = await tabs();
  await typeInto(page, first![0]!, "A1", "In no file");
  await page.getByRole("button", { name: "Open…" }).click();
  await question.waitFor();
  await page.getByRole("button", { name: "Stay here" }).click();
  await question.waitFor({ state: "detached" });
  const kept = await page.evaluate(() => globalThis.holdline?.workbook().tabs[0]);
  expect(kept?.cells[0]?.[0]?.value).toBe("In no file");
  await page.getByRole("button", { name: "Open…" }).click();
  await page.getByRole("button", { name: "Open another", exact: true }).click();
  await page.getByRole("button", { name: "Back to the workbook" }).waitFor();
});
