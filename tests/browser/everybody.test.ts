import type { Frame, Page } from "playwright-core";
import { seriousFindings } from "./axe";
import { type SamplePage, samplePage } from "./sample-page";
import { until, values } from "./served-page";

const patient = { timeout: 120_000 };
let sidebar: Frame;
let sample: SamplePage;
let page: Page;

beforeAll(async () => {
  sample = await samplePage();
  page = sample.page;
});
afterAll(() => sample.close());

/** Text of what has the focus, and whether a ring is drawn round it. */
const focused = (where: Page | Frame) =>
  where.evaluate(() => {
    const one = document.activeElement as HTMLElement;
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    const ringed = outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 1;
    return { text: (one.textContent ?? "").trim(), tag: one.tagName, ringed };
  });

test("menu, sidebar, next week and writing are worked by keyboard alone, the focus seen at every step", async () => {
  // Tab goes from cell to cell in the grid: F6 leads out of it.
  await page.keyboard.press("F6");
  expect(await focused(page)).toMatchObject({ text: "Holdline", ringed: true });
  await page.keyboard.press("Enter");
  expect(await focused(page)).toMatchObject({ text: "Open sidebar", ringed: true });
  await page.keyboard.press("Enter");
  sidebar = (await (await page.waitForSelector("aside.sidebar iframe")).contentFrame())!;
  await sidebar.getByText("Read first").waitFor(patient);
  const seen: { text: string; ringed: boolean }[] = [];
  const isWrite = ({ text }: { text: string }) => /^Write \d+ rows$/.test(text);
  for (let presses = 0; presses < 60 && !seen.some(isWrite); presses++) {
    await page.keyboard.press("Tab");
    seen.push(await focused(sidebar));
  }
  expect(seen.find(isWrite)).toBeDefined();
  expect(seen.slice(0, 4).map(({ text }) => text.replace(/\d.*$/, "").trim())).toEqual([
    "Next week",
    "Squad",
    "Rows",
    "Set up",
  ]);
  expect(seen.filter(({ ringed }) => !ringed)).toEqual([]);
  await page.keyboard.press("Enter");
  await sidebar.getByText(/^\d+ rows new\.$/).waitFor(patient);
  await page.keyboard.press("F6");
  const place = () =>
    page.evaluate(() => document.activeElement?.closest(".grid, .bar, .sidebar")?.className);
  // The sidebar's keys reach the page by message: a turn or two later.
  await until(async () => /grid/.test((await place()) ?? ""));
  await page.keyboard.press("F6");
  expect(await place()).toBe("bar");
  await page.keyboard.press("F6");
  expect(await place()).toBe("sidebar");
  const rows = (await values(page, "Next week")).slice(4).filter(([athlete]) => athlete !== "");
  expect(rows.length).toBeGreaterThanOrEqual(10);
});

test("Enter opens an athlete with the focus on the name, Escape leads back to the same row", async () => {
  const row = sidebar.locator("button.row").nth(2);
  const name = await row.locator(".name").textContent();
  await row.focus();
  await page.keyboard.press("Enter");
  const inside = () => sidebar.evaluate(() => document.activeElement?.textContent ?? "");
  await until(async () => (await inside()) === name);
  expect(await focused(sidebar)).toMatchObject({ text: name, tag: "H1" });
  // In a field Escape is the field's own.
  await sidebar.getByLabel("Contacts").focus();
  await page.keyboard.press("Escape");
  expect(await sidebar.getByLabel("Contacts").count()).toBe(1);
  await sidebar.getByRole("button", { name: "Leave out this week" }).focus();
  await page.keyboard.press("Escape");
  await until(async () => (await sidebar.getByLabel("Contacts").count()) === 0);
  const back = await focused(sidebar);
  expect(back.tag).toBe("BUTTON");
  expect(back.text.startsWith(name!)).toBe(true);
});

test("nothing of any athlete's week stands past the sidebar's right edge, however many plates", async () => {
  const rows = sidebar.locator("button.row");
  const count = await rows.count();
  expect(count).toBeGreaterThan(10);
  for (let at = 0; at < count; at++) {
    await rows.nth(at).click();
    await sidebar.getByText("All athletes").waitFor(patient);
    const past = await sidebar.evaluate(() => {
      const edge = document.documentElement.clientWidth;
      const texts = document.querySelectorAll(
        "main p, main td, main th, main li, main strong, main span",
      );
      return [...texts]
        .filter((one) => one.getBoundingClientRect().right > edge)
        .map(({ textContent }) => textContent);
    });
    expect(past).toEqual([]);
    await sidebar.getByText("All athletes").click();
    await rows.nth(at).waitFor(patient);
  }
});

test("a button that was pressed keeps the focus while its work is done and after it", async () => {
  const write = sidebar.getByRole("button", { name: /^Write (?:\d+ rows|again)$/ });
  await write.focus();
  await page.keyboard.press("Enter");
  await sidebar
    .getByText(/rows? the same\.$/)
    .first()
    .waitFor(patient);
  await until(async () => (await write.getAttribute("aria-disabled")) !== "true");
  expect((await focused(sidebar)).text).toBe("Write again");
});

test("what was pressed and is done with leaves the focus in the view, not at the page's beginning", async () => {
  await sidebar.getByRole("button", { name: "Take back" }).focus();
  await page.keyboard.press("Enter");
  await until(async () => (await focused(sidebar)).tag === "H1");
  expect(await focused(sidebar)).toMatchObject({ text: "Next week" });
});

test("headings of the week stand over their columns", async () => {
  const edges = await sidebar.evaluate(() => {
    const boxes = (where: string) =>
      [...document.querySelector(where)!.children].map((one) => one.getBoundingClientRect());
    const [, day, sets, kg] = boxes(".heads");
    const range = document.createRange();
    range.selectNodeContents(document.querySelector(".heads")!.children[1]!);
    const between = sets!.left - range.getBoundingClientRect().right;
    const [, rowDay, rowSets, rowKg] = boxes(".row.four");
    if (between < 2) return [between - 9];
    return [day!.left - rowDay!.left, sets!.right - rowSets!.right, kg!.right - rowKg!.right];
  });
  for (const apart of edges) expect(Math.abs(apart)).toBeLessThan(1.5);
});

test("a row is read out with its unit, and its word apart from its reason", async () => {
  const said = await sidebar.locator("button.row").allTextContents();
  expect(said.filter((one) => /\d kg/.test(one)).length).toBeGreaterThan(5);
  expect(said.find((one) => one.startsWith("Tomas Reyerson"))).toMatch(/slipping: \S/);
});

test.each([
  ["twice the zoom", { width: 640, height: 400 }],
  ["a phone", { width: 375, height: 700 }],
] as const)("at %s nothing runs off to the side, and every button is there", async (_, size) => {
  await page.setViewportSize(size);
  await page.waitForTimeout(500);
  for (const [view, there] of [
    ["Squad", "slipping"],
    ["Rows", "Check again"],
    ["Set up", "Find tables again"],
    ["Next week", "Read first"],
  ] as const) {
    await sidebar
      .getByRole("button", { name: new RegExp(`^${view}`) })
      .first()
      .click(patient);
    await sidebar.getByText(there).first().waitFor(patient);
    const widths = await sidebar.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect([view, widths[0]! <= widths[1]!, widths]).toEqual([view, true, widths]);
  }
  const off = await page.evaluate(() =>
    [...document.querySelectorAll(".bar button, .sidebar-head button")]
      .filter((one) => one.getClientRects().length > 0)
      .map((one) => ({ text: one.textContent, at: one.getBoundingClientRect() }))
      .filter(({ at }) => at.left < 0 || at.right > innerWidth || at.bottom > innerHeight)
      .map(({ text }) => text),
  );
  expect(off).toEqual([]);
  const grid = (await page.locator(".grid").boundingBox())!;
  expect([grid.width >= 200, grid.height >= 120]).toEqual([true, true]);
  await page.setViewportSize({ width: 1280, height: 800 });
});

test.each(["Print cards", "Print rack plan", "Print page for the head coach"])(
  "%s: axe finds nothing serious on the pages",
  async (name) => {
    await sidebar
      .getByRole("button", { name: /^Next week/ })
      .first()
      .click(patient);
    await sidebar.evaluate(() => {
      window.print = () => {};
      document.getElementById("pages")!.replaceChildren();
    });
    await sidebar.getByRole("button", { name, exact: true }).click(patient);
    await until(() => sidebar.evaluate(() => document.querySelector("#pages article") !== null));
    const html = await sidebar.evaluate(
      () =>
        `<!doctype html><html lang="en-GB"><head><title>Pages</title>${[...document.querySelectorAll("style")].map((one) => one.outerHTML).join("")}</head><body>${document.getElementById("pages")!.outerHTML}</body></html>`,
    );
    const paper = await sample.newPage();
    await paper.emulateMedia({ media: "print" });
    await paper.setContent(html);
    expect(await seriousFindings(paper)).toEqual([]);
    await paper.close();
  },
);
