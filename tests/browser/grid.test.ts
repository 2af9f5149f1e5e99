import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { fixtureScript } from "../local-host/fixture-script";
import {
  cellPlace,
  clickCell,
  type ServedPage,
  servedPage,
  typeInto,
  until,
  values,
} from "./served-page";

const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: [
    {
      ...plainTab("Squad", [
        [{ value: "Total" }, { value: null, formula: "=TOTAL(Sets!B:B)" }],
        [{ value: "Word" }, { value: null, formula: '=IF(B1<100,"slipping","holding")' }],
        [{ value: "Refused" }, { value: null, formula: "=REFUSES(1)" }],
      ]),
      conditionalFormats: [
        { ranges: ["B2"], formula: '=$B2="slipping"', background: "#fde0c4", bold: true },
      ],
    },
    plainTab("Sets", [
      [{ value: "Athlete" }, { value: "Load" }],
      [{ value: "Wren Oddie" }, { value: 40 }],
      [{ value: "Tomas Reyerson" }, { value: 85 }],
    ]),
  ],
  names: [],
  properties: {},
};
const sidebar = `<!doctype html><html><head><style>p{color:#1b1d20}</style></head><body><p id="says"></p><script>
var says = function (text) { document.getElementById("says").textContent = text; };
function ask(name, arg) {
  says("asked");
  google.script.run
    .withSuccessHandler(function (value, mark) { says("given " + mark + " " + JSON.stringify(value)); })
    .withFailureHandler(function (error, mark) { says("refused " + mark + " " + error.message); })
    .withUserObject("x")[name](arg);
}
</script></body></html>`;

type Ask = (name: string, argument: unknown) => void;

let shown: ServedPage;
beforeAll(async () => {
  shown = await servedPage({ workbook, script: fixtureScript, sidebar });
});
afterAll(() => shown.close());

/** Colour and cover that the grid drew near the left edge of a cell; all 0 is bare. */
const drawnColour = (cell: string): Promise<number[]> =>
  shown.page.evaluate((address) => {
    const { book } = globalThis.holdline!.engine;
    const { x, y, height } = book.getActiveSheet().getRange(address).getCellRect();
    const canvas = document.querySelector<HTMLCanvasElement>(
      "canvas[id^=univer-sheet-main-canvas]",
    )!;
    const scale = canvas.width / canvas.getBoundingClientRect().width;
    const at = [(x + 3) * scale, (y + height - 4) * scale].map(Math.round) as [number, number];
    return [...canvas.getContext("2d")!.getImageData(...at, 1, 1).data];
  }, cell);

test("a refused formula's sentence is read out for the selected cell, from the first click on", async () => {
  await clickCell(shown.page, "Squad", "B3");
  await shown.page.getByText("B3: Two sets are needed, 1 was found.").waitFor();
  await clickCell(shown.page, "Squad", "D9");
  await shown.page.getByText("B3: Two sets are needed").waitFor({ state: "detached" });
});

test("a typed formula over a range open below is calculated", async () => {
  await typeInto(shown.page, "Squad", "A5", "=TOTAL(Sets!B2:B)");
  expect((await values(shown.page, "Squad"))[4]).toEqual([125, ""]);
});

test("an edited row changes the result, the word and its highlight, and undo brings them back", async () => {
  await clickCell(shown.page, "Squad", "D9");
  const holding = await drawnColour("B2");
  await typeInto(shown.page, "Sets", "B3", "45");
  expect((await values(shown.page, "Squad")).slice(0, 2)).toEqual([
    ["Total", 85],
    ["Word", "slipping"],
  ]);
  await clickCell(shown.page, "Squad", "D9");
  expect([holding, await drawnColour("B2")]).toEqual([
    [0, 0, 0, 0],
    [0xfd, 0xe0, 0xc4, 255],
  ]);
  await shown.page.getByRole("button", { name: "Undo" }).click();
  expect((await values(shown.page, "Squad"))[1]).toEqual(["Word", "holding"]);
  // A screen reader hears it: cells change there without a word.
  await shown.page.getByRole("status").getByText("Undone in Sets").waitFor();
  await shown.page.getByRole("button", { name: "Redo" }).click();
  await shown.page.getByRole("status").getByText("Redone in Sets").waitFor();
  await shown.page.getByRole("button", { name: "Redo" }).click();
  await shown.page.getByRole("status").getByText("Nothing to redo").waitFor();
  await shown.page.getByRole("button", { name: "Undo" }).click();
  await shown.page.getByRole("status").getByText("Undone in Sets").waitFor();
});

test("a row added below is counted, and the change is saved", async () => {
  await typeInto(shown.page, "Sets", "B4", "100");
  expect((await values(shown.page, "Squad"))[0]).toEqual(["Total", 225]);
  await until(() => shown.saved()?.tabs[1]?.cells[3]?.[1]?.value === 100);
  await shown.page.getByText("Saved to Quillbeck.xlsx").waitFor();
});

test("two formulas that name each other hold no figure, and the selected one says why", async () => {
  await typeInto(shown.page, "Squad", "D12", "=E12+1");
  await typeInto(shown.page, "Squad", "E12", "=D12+1");
  await until(async () => (await values(shown.page, "Squad"))[11]?.[4] === "#REF!");
  await clickCell(shown.page, "Squad", "D12");
  await shown.page.getByText("D12: This formula rests on its own result").waitFor();
  await clickCell(shown.page, "Squad", "D9");
  await shown.page.getByText("D12: This formula").waitFor({ state: "detached" });
});

test("the sentence stands beside the cell under the pointer", async () => {
  await clickCell(shown.page, "Squad", "D9");
  const place = await cellPlace(shown.page, "B3");
  await shown.page.mouse.move(place.x - 20, place.y);
  await shown.page.mouse.move(place.x, place.y, { steps: 4 });
  await shown.page.getByText("Two sets are needed, 1 was found.", { exact: true }).waitFor();
});

test("the menu opens the sidebar beside the grid, 300 px wide and not over it", async () => {
  await shown.page.getByRole("button", { name: "Holdline" }).click();
  await shown.page.getByRole("menuitem", { name: "Open" }).click();
  const panel = (await shown.page.locator("aside.sidebar").boundingBox())!;
  const grid = (await shown.page.locator(".grid").boundingBox())!;
  expect([panel.width, panel.x, grid.x + grid.width]).toEqual([300, 980, 980]);
});

test.each([
  ["givesBack", { day: "2026-05-12" }, 'given x {"day":"2026-05-12"}'],
  ["givesNothing", null, "given x null"],
  ["says", null, "refused x No rows yet."],
  ["hidden_", null, "refused x Script function not found: hidden_"],
  [
    "givesDate",
    null,
    "refused x The answer holds a Date at day, which the bridge cannot carry: send text.",
  ],
])("the sidebar calls %s as the platform would", async (name, given, says) => {
  const frame = shown.page.frameLocator("aside.sidebar iframe");
  await frame
    .locator("body")
    .evaluate(
      (_body, [called, argument]) => (window as unknown as { ask: Ask }).ask(called, argument),
      [name, given] as const,
    );
  await frame.getByText(says, { exact: true }).waitFor();
});

test("a sidebar that asks for anything elsewhere is stopped before a request is made", async () => {
  const before = shown.strays.length;
  const frame = shown.page.frameLocator("aside.sidebar iframe");
  const outcome = await frame.locator("body").evaluate(() =>
    fetch("https://example.org/").then(
      () => "fetched",
      () => "stopped",
    ),
  );
  expect(outcome).toBe("stopped");
  const complaints = shown.strays.splice(before);
  expect(complaints.join()).toMatch(/violates the document's Content Security Policy/);
  expect(complaints.filter((stray) => stray.startsWith("http"))).toEqual([]);
});

test("once the sidebar is closed, what is typed goes into the selected cell", async () => {
  await clickCell(shown.page, "Squad", "F5");
  const frame = shown.page.frameLocator("aside.sidebar iframe");
  await frame.locator("body").click();
  await shown.page.getByRole("button", { name: "Close the sidebar" }).click();
  await shown.page.keyboard.type("72", { delay: 30 });
  await shown.page.waitForTimeout(400);
  await shown.page.keyboard.press("Enter");
  await until(async () => (await values(shown.page, "Squad"))[4]?.[5] === 72);
});

test("nothing was asked for outside this server", () => {
  expect(shown.strays).toEqual([]);
});

test("what is typed before the first calculation has ended is saved too", async () => {
  await shown.page.addInitScript(() => {
    const opened = setInterval(() => {
      if (globalThis.holdline === undefined) return;
      clearInterval(opened);
      const { textContent } = document.querySelector("header [role=status]") as HTMLElement;
      globalThis.holdline.write("Sets", "B2", [[71]]);
      globalThis.holdline.write("Sets", "D2", [[textContent]]);
    }, 1);
  });
  await shown.page.reload();
  await until(() => shown.saved()?.tabs[1]?.cells[1]?.[1]?.value === 71);
  expect((await values(shown.page, "Sets"))[1]?.[3]).toBe("Calculating…");
  await shown.page.getByText("Saved to Quillbeck.xlsx").waitFor();
});
