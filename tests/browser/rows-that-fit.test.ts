import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { type ServedPage, servedPage, typeInto, until } from "./served-page";

const wrap = { wrap: true };
// A speed is typed into A2; the wrapped answer beside it is then longer. Row 4 was set by hand.
const answer = (row: number) => ({
  value: null,
  formula: `=DAY_LOAD(A${row},0.86,85,3,2.5,67.5)`,
  style: wrap,
});
const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: [
    {
      ...plainTab("Week", [
        [{ value: "Speed" }, { value: "Lift today" }, { value: "Note" }],
        [null, answer(2), null],
        [null, { value: null, style: wrap }, null],
        [null, answer(4), null],
      ]),
      columnWidths: [90, 100, null],
      rowHeights: { 3: 30 },
    },
  ],
  names: [],
  properties: {},
};
let shown: ServedPage;
beforeAll(async () => {
  shown = await servedPage({ workbook });
});
afterAll(() => shown.close());

const heightOf = (row: number) =>
  shown.page.evaluate(
    (at) => globalThis.holdline!.engine.book.getActiveSheet().getRowHeight(at - 1),
    row,
  );

test("a row grows with its formula's answer, and is low again when what was typed is taken back", async () => {
  const low = await heightOf(2);
  await typeInto(shown.page, "Week", "A2", "0.79 0.80");
  // "80 kg for the remaining 3 sets (−5.9 %): …" takes five lines or more of some 15 pixels.
  await until(async () => (await heightOf(2)) >= 75);
  await shown.page.getByText("Undo", { exact: true }).click();
  await until(async () => (await heightOf(2)) === low);
});

test("measured heights are nothing to take back: one undo takes the typed speed", async () => {
  await typeInto(shown.page, "Week", "A2", "0.79 0.80");
  await until(async () => (await heightOf(2)) >= 75);
  await shown.page.getByText("Undo", { exact: true }).click();
  const typed = () => shown.page.evaluate(() => globalThis.holdline!.values("Week")[1]?.[0] ?? "");
  await until(async () => (await typed()) === "");
});

test("a long note typed into a wrapped cell is read whole", async () => {
  const low = await heightOf(3);
  await typeInto(shown.page, "Week", "B3", "calf tight after the long run, ask before the jumps");
  await until(async () => (await heightOf(3)) > 2 * low);
});

test("a height set by hand stays, whatever its formula answers", async () => {
  await typeInto(shown.page, "Week", "A4", "0.79 0.80");
  const answered = () =>
    shown.page.evaluate(() => String(globalThis.holdline!.values("Week")[3]?.[1] ?? ""));
  await until(async () => /^80 kg/.test(await answered()));
  await shown.page.waitForTimeout(500);
  expect(await heightOf(4)).toBe(30);
});
