import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import render from "preact-render-to-string";
import type { AthleteView, WeekView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { startState } from "../../src/sidebar/state";
import { Sidebar } from "../../src/sidebar/view/sidebar";
import { sampleClub } from "../actions/sample-club";
import { launchBrowser } from "./browser";

const today = "2026-06-28";
const athlete = "Tomas Reyerson";
const styles = ["tokens", "sidebar"].map((name) =>
  readFileSync(join(process.cwd(), `src/sidebar/${name}.css`), "utf8"),
);
let browser: Awaited<ReturnType<typeof launchBrowser>>;
let page: Page;
beforeAll(async () => {
  const book = sampleClub();
  const week = serveRequest(book, "weekView", { today, monday: null, changes: [] }) as WeekView;
  const athleteView = serveRequest(book, "athleteView", { today, athlete }) as AthleteView;
  const state = { ...startState(today), week, athlete, athleteView };
  browser = await launchBrowser();
  page = browser.context.pages()[0] ?? (await browser.context.newPage());
  await page.emulateMedia({ forcedColors: "active", colorScheme: "dark" });
  await page.setContent(
    `<html lang="en-GB"><title>Holdline</title><style>${styles.join("\n")}</style><body>${render(
      <Sidebar state={state} dispatch={() => {}} />,
    )}`,
  );
});
afterAll(() => browser.close());

test("where the reader sets the colours, nothing of a drawing has the colour of its ground", async () => {
  const unseen = await page.evaluate(() => {
    const seen = (colour: string) => !/^none$|rgba\(.*, 0\)$/.test(colour);
    const ground = getComputedStyle(document.documentElement).backgroundColor;
    const canvas = seen(ground) ? ground : "rgb(0, 0, 0)";
    const shapes = [...document.querySelectorAll(".chart :is(path, line, circle, rect, text)")];
    if (shapes.length < 60) throw new Error("The drawings are not there.");
    return shapes.flatMap((shape) => {
      const { fill, stroke } = getComputedStyle(shape);
      const shown = [fill, stroke].some((colour) => seen(colour) && colour !== canvas);
      return shown ? [] : [shape.outerHTML];
    });
  });
  expect(unseen).toEqual([]);
});

test("only the open view is underlined", async () => {
  const lines = await page.evaluate(() => {
    const canvas = document.createElement("i");
    canvas.style.color = "Canvas";
    document.body.append(canvas);
    const ground = getComputedStyle(canvas).color;
    return [...document.querySelectorAll("nav.views button")].map((button) => [
      button.getAttribute("aria-current"),
      getComputedStyle(button).borderBottomColor !== ground,
    ]);
  });
  expect(lines).toEqual([
    ["page", true],
    [null, false],
    [null, false],
    [null, false],
  ]);
});
