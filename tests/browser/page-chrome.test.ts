import { readFileSync } from "node:fs";
import type { AxeResults, ContextSpec } from "axe-core";
import type { Page } from "playwright-core";
import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { fixtureScript } from "../local-host/fixture-script";
import { clickCell, ready, type ServedPage, servedPage } from "./served-page";

const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: [plainTab("Squad", [[{ value: null, formula: "=REFUSES(1)" }]])],
  names: [],
  properties: {},
};
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** What axe-core finds in our own parts of the page; the grid library's parts are its own. */
async function faults(page: Page, include: readonly string[]): Promise<string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate(async (parts) => {
    const { axe: checker } = globalThis as unknown as {
      axe: { run: (context: ContextSpec, options: object) => Promise<AxeResults> };
    };
    return checker.run({ include: parts.map((part) => [part]) }, { iframes: false });
  }, include);
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join()}`);
}

let shown: ServedPage;
let notSaved = "";
beforeAll(async () => {
  shown = await servedPage({
    workbook: null,
    script: fixtureScript,
    sidebar: "<p>Squad</p>",
    store: {
      sample: async () => ({
        opening: 0,
        workbook,
        place: "Quillbeck.xlsx",
        notes: ["One table found."],
      }),
      save: async () => {
        if (notSaved !== "") throw new Error(notSaved);
      },
    },
  });
});
afterAll(() => shown.close());

test("a file that cannot be opened is said where it can be read, and the button pressed keeps the focus", async () => {
  const { page } = shown;
  await page.setViewportSize({ width: 320, height: 256 });
  const own = page.getByRole("button", { name: "Open your own" });
  await own.focus();
  const file = { name: "Sets.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from("") };
  await page.locator("input[type=file]").setInputFiles(file);
  const said = page.getByText("Not opened. ");
  await said.waitFor();
  const { y, height } = (await said.boundingBox())!;
  expect([y >= 0, y + height <= 256]).toEqual([true, true]);
  expect(await own.evaluate((one) => one === document.activeElement)).toBe(true);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.getByRole("button", { name: "Open the sample squad" }).focus();
});

test("the first screen is sound, worked by keyboard, and opens the sample", async () => {
  expect(await faults(shown.page, ["main"])).toEqual([]);
  await shown.page.keyboard.press("Tab");
  expect(await shown.page.evaluate(() => document.activeElement?.textContent)).toBe(
    "Open your own",
  );
  await shown.page.keyboard.press("Shift+Tab");
  await shown.page.keyboard.press("Enter");
  await ready(shown.page);
  await shown.page.getByText("One table found.").waitFor();
});

test("cells stay dark on white where the reader sets light letters on a dark ground", async () => {
  const { page } = shown;
  await page.emulateMedia({ forcedColors: "active", colorScheme: "dark" });
  const grounds = await page.evaluate(() => {
    const { backgroundColor } = getComputedStyle(document.body);
    const cells = document.querySelector("canvas[id^=univer-sheet-main-canvas]")!;
    return [backgroundColor, getComputedStyle(cells.parentElement!).backgroundColor];
  });
  expect(grounds).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
  await page.emulateMedia({ forcedColors: "none", colorScheme: "light" });
});

test("toolbar, messages and the sidebar's heading are sound", async () => {
  const { page } = shown;
  await clickCell(page, "Squad", "A1");
  await page.getByText("A1: Two sets are needed").waitFor();
  await page.getByRole("button", { name: "Holdline" }).click();
  await page.getByRole("menuitem", { name: "Open" }).waitFor();
  expect(await faults(page, [".bar", ".messages"])).toEqual([]);
  await page.getByRole("menuitem", { name: "Open" }).click();
  expect(await faults(page, [".sidebar-head"])).toEqual([]);
});

test("the menu is worked by keyboard: arrows move, Escape closes and gives focus back", async () => {
  const { page } = shown;
  const focused = () => page.evaluate(() => document.activeElement?.textContent);
  await page.getByRole("button", { name: "Holdline" }).focus();
  await page.keyboard.press("Enter");
  expect(await focused()).toBe("Open");
  await page.keyboard.press("ArrowDown");
  expect(await focused()).toBe("Check");
  await page.keyboard.press("ArrowDown");
  expect(await focused()).toBe("Open");
  await page.keyboard.press("Escape");
  expect(await focused()).toBe("Holdline");
  expect(await page.getByRole("menu").isVisible()).toBe(false);
});

test("a menu entry that fails says so under its own name", async () => {
  const { page } = shown;
  await page.getByRole("button", { name: "Holdline" }).click();
  await page.getByRole("menuitem", { name: "Check" }).click();
  await page.getByText("Check: Script function not found: check").waitFor();
});

test("a save that fails is said with its reason, and can be tried again", async () => {
  const { page } = shown;
  notSaved = "The file was changed by another program.";
  await clickCell(page, "Squad", "C3");
  await page.keyboard.type("7");
  await page.keyboard.press("Enter");
  await page.getByText(`Not saved. ${notSaved}`).waitFor();
  notSaved = "";
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByText("Saved to Quillbeck.xlsx").waitFor();
  await page.getByText("Not saved").waitFor({ state: "detached" });
});

test("at twice the zoom the toolbar, grid and sidebar still stand side by side", async () => {
  const { page } = shown;
  await page.setViewportSize({ width: 640, height: 400 });
  await page.waitForTimeout(400);
  const grid = (await page.locator(".grid").boundingBox())!;
  const side = (await page.locator("aside.sidebar").boundingBox())!;
  expect(grid.width).toBeGreaterThan(200);
  expect(side.x).toBeGreaterThanOrEqual(grid.x + grid.width - 1);
  expect(side.x + side.width).toBeLessThanOrEqual(640);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(640);
});

test("at four times the zoom the sidebar has a screen of its own, and the grid keeps its room", async () => {
  const { page } = shown;
  await page.setViewportSize({ width: 320, height: 256 });
  await page.waitForTimeout(400);
  const side = (await page.locator("aside.sidebar").boundingBox())!;
  expect([side.width, side.height]).toEqual([320, 256]);
  expect((await page.locator(".grid").boundingBox())!.height).toBeGreaterThanOrEqual(120);
  await page.locator("aside.sidebar iframe").scrollIntoViewIfNeeded();
  expect((await page.locator("aside.sidebar iframe").boundingBox())!.y).toBeLessThan(120);
  notSaved = "The file was changed by another program.";
  await page.evaluate(() => globalThis.holdline!.write("Squad", "C9", [[9]]));
  const said = page.getByText(`Not saved. ${notSaved}`);
  await said.waitFor();
  const { y, height } = (await said.boundingBox())!;
  expect([await page.evaluate(() => scrollY > 100), y >= 0, y + height <= 256]).toEqual([
    true,
    true,
    true,
  ]);
  notSaved = "";
  await page.getByRole("button", { name: "Try again" }).click();
  await said.waitFor({ state: "detached" });
  await page.evaluate(() => scrollTo(0, 0));
  await page.setViewportSize({ width: 640, height: 400 });
});

test("a program that does not answer is said in words, not in the browser's", async () => {
  const { page } = shown;
  await page.route("**/workbook", (route) => route.abort());
  await clickCell(page, "Squad", "C4");
  await page.keyboard.type("8");
  await page.keyboard.press("Enter");
  await page.getByText("Not saved. The program in the terminal does not answer.").waitFor();
  await page.unroute("**/workbook");
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByText("Not saved").waitFor({ state: "detached" });
});

test("the program's end, and a workbook that cannot be opened, are said in words anybody can read", async () => {
  const { page, served } = shown;
  await served.close();
  await page.getByText(/^The program in the terminal has ended/).waitFor();
  expect(await faults(page, [".bar", ".messages"])).toEqual([]);
  const broken = await servedPage({
    workbook: null,
    script: fixtureScript,
    sidebar: "<p>Squad</p>",
    store: {
      opened: async () => {
        throw new Error("The file is not an .xlsx workbook.");
      },
    },
  });
  try {
    await broken.page.getByText("Not opened. The file is not an .xlsx workbook.").waitFor();
    expect(await faults(broken.page, ["#page"])).toEqual([]);
  } finally {
    await broken.close();
  }
});
