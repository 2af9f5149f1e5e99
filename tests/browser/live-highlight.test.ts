import type { Page } from "playwright-core";
import { dressColours } from "../../src/words/dress";
import { type SamplePage, samplePage } from "./sample-page";
import { clickCell, until, values } from "./served-page";

let sample: SamplePage;
let page: Page;

beforeAll(async () => {
  sample = await samplePage();
  page = sample.page;
});
afterAll(() => sample.close());

/** Row of a coach's own table, from 1. */
const rowOf = async (tab: string, is: (row: readonly unknown[]) => boolean) =>
  (await values(page, tab)).findIndex(is) + 1;
const tomas = async () => {
  const row = await rowOf("Squad", ([athlete]) => athlete === "Tomas Reyerson");
  const cells = (await values(page, "Squad"))[row - 1]!;
  return { row, word: cells[2], lastSession: cells[9] };
};

/** Colour that the grid drew near the lower left corner of a cell of the Squad tab; "bare" for none. */
async function ground(cell: string): Promise<string> {
  await clickCell(page, "Squad", "B22");
  return page.evaluate((address) => {
    const { book } = globalThis.holdline!.engine;
    const { x, y, height } = book.getActiveSheet().getRange(address).getCellRect();
    const canvas = document.querySelector<HTMLCanvasElement>(
      "canvas[id^=univer-sheet-main-canvas]",
    )!;
    const scale = canvas.width / canvas.getBoundingClientRect().width;
    const at = [(x + 3) * scale, (y + height - 3) * scale].map(Math.round) as [number, number];
    const [red, green, blue, cover] = canvas.getContext("2d")!.getImageData(...at, 1, 1).data;
    if (cover === 0) return "bare";
    return `#${[red!, green!, blue!].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
  }, cell);
}

/** Goes to a cell far down and types over it, as a coach would. */
async function typeOver(tab: string, cell: string, text: string): Promise<void> {
  await clickCell(page, tab, "B2");
  await page.evaluate((address) => {
    globalThis.holdline!.engine.book.getActiveSheet().getRange(address).activate();
  }, cell);
  await page.keyboard.type(text, { delay: 15 });
  await page.keyboard.press("Enter");
}

const openTab = () =>
  page.evaluate(() => globalThis.holdline!.engine.book.getActiveSheet().getSheetName());

test("a marker set that was mistyped is put right: Tomas's word and its highlight follow, and Undo brings both back", async () => {
  const { row, word, lastSession } = await tomas();
  expect([word, lastSession]).toEqual(["slipping", "23 Jun: below usual"]);
  expect([await ground(`C${row}`), await ground(`J${row}`)]).toEqual([
    dressColours.low.background,
    dressColours.low.background,
  ]);

  // The last of his marker sets in the table, on 23 June.
  const sets = await values(page, "Sets");
  const last = sets.findLastIndex((set) => set[2] === "Tomas Reyerson" && set[5] === "marker") + 1;
  expect(sets[last - 1]![8]).toBe("0.79 0.80 0.78");
  await typeOver("Sets", `I${last}`, "0.86 0.87 0.85");
  await until(async () => (await tomas()).word === "holding");
  expect(await tomas()).toEqual({ row, word: "holding", lastSession: "23 Jun: as usual" });
  expect([await ground(`C${row}`), await ground(`J${row}`)]).toEqual(["bare", "bare"]);

  // Taken back from the squad, the changed row comes into sight.
  await clickCell(page, "Squad", "B6");
  await page.getByRole("button", { name: "Undo" }).click();
  await until(async () => (await openTab()) === "Sets");
  await until(async () => (await tomas()).word === "slipping");
  expect(await tomas()).toEqual({ row, word, lastSession });
  expect([await ground(`C${row}`), await ground(`J${row}`)]).toEqual([
    dressColours.low.background,
    dressColours.low.background,
  ]);
});
