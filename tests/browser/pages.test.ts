import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Frame, Page } from "playwright-core";
import { launchBrowser } from "./browser";
import { type Program, startProgram } from "./program";
import { ready, until } from "./served-page";

const folder = mkdtempSync(join(tmpdir(), "holdline-pages-"));
const squad = join(folder, "Quillbeck");
const complaints: string[] = [];
const strays: string[] = [];
let program: Program;
let page: Page;
let sidebar: Frame;
let newPage: () => Promise<Page>;
let closeBrowser: () => Promise<void>;
let clicks = 0;

beforeAll(async () => {
  cpSync(join(__dirname, "../../sample-sheets"), squad, { recursive: true });
  const browser = await launchBrowser();
  closeBrowser = browser.close;
  newPage = () => browser.context.newPage();
  page = browser.context.pages()[0] ?? (await newPage());
  page.on("console", (message) => {
    if (/print|Security Policy/i.test(message.text())) complaints.push(message.text());
  });
  program = startProgram("open", squad);
  const address = await program.address;
  page.on("request", (request) => {
    if (!request.url().startsWith(new URL(address).origin)) strays.push(request.url());
  });
  await page.goto(address);
  await ready(page);
  await page.getByRole("button", { name: "Holdline" }).click();
  await page.getByRole("menuitem").first().click();
  const frame = await (await page.waitForSelector("aside.sidebar iframe")).contentFrame();
  sidebar = frame!;
  await button("Print cards").waitFor();
  // A browser without a screen takes every dialog as dismissed and soon ignores more of them: the
  // first is opened in earnest, the others are counted.
  await sidebar.evaluate(() => {
    const counted = window as unknown as { asked: number; opened: number };
    counted.asked = 0;
    counted.opened = 0;
    addEventListener("beforeprint", () => {
      counted.opened += 1;
    });
    const open = window.print.bind(window);
    window.print = () => {
      counted.asked += 1;
      if (counted.asked === 1) open();
    };
  });
});
afterAll(async () => {
  await closeBrowser();
  await program.stop();
  rmSync(folder, { recursive: true, force: true });
});

const button = (name: string) => sidebar.getByRole("button", { name, exact: true });
const asked = () => sidebar.evaluate(() => (window as unknown as { asked: number }).asked);
const opened = () => sidebar.evaluate(() => (window as unknown as { opened: number }).opened);

/** What the browser would print of the sidebar now, as PDF: number and size in mm of its pages. */
async function printed(name: string): Promise<{ sizes: string[]; articles: number }> {
  const shown = await sidebar.evaluate(() => ({
    style: [...document.querySelectorAll("style")].map((one) => one.textContent).join("\n"),
    body: `${document.getElementById("pages")!.outerHTML}${document.getElementById("sidebar")!.outerHTML}`,
    articles: document.querySelectorAll("#pages article").length,
  }));
  const paper = await newPage();
  await paper.setContent(
    `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><style>${shown.style}</style></head><body>${shown.body}</body></html>`,
  );
  const pdf = await paper.pdf({ preferCSSPageSize: true });
  await paper.close();
  writeFileSync(join(folder, `${name}.pdf`), pdf);
  const mm = (points: string | undefined) => Math.round((Number(points) / 72) * 25.4);
  const sizes = [
    ...pdf.toString("latin1").matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g),
  ].map(([, width, height]) => `${mm(width)}×${mm(height)}`);
  return { sizes, articles: shown.articles };
}

async function print(name: string): Promise<{ sizes: string[]; articles: number }> {
  const before = await asked();
  clicks = 0;
  await button(name).click();
  clicks += 1;
  await sidebar
    .getByText(/ready to print/)
    .first()
    .waitFor();
  await until(async () => (await asked()) > before);
  return printed(name);
}

test("cards: one click from the opened sidebar, one A5 page for each session of each athlete", async () => {
  const { sizes, articles } = await print("Print cards");
  expect(clicks).toBeLessThanOrEqual(2);
  expect(articles).toBeGreaterThan(10);
  expect(sizes).toEqual(Array(articles).fill("148×210"));
  expect(await opened()).toBe(1);
});

test("the print window can be opened again without making the pages anew", async () => {
  const before = await asked();
  await button("Open the print window again").click();
  await until(async () => (await asked()) === before + 1);
});

test("rack plan: one A4 page for each gym session", async () => {
  const { sizes, articles } = await print("Print rack plan");
  expect(articles).toBeGreaterThan(0);
  expect(sizes).toEqual(Array(articles).fill("210×297"));
});

test("the head coach's page: one A4 page", async () => {
  const { sizes, articles } = await print("Print page for the head coach");
  expect([articles, sizes]).toEqual([1, ["210×297"]]);
});

test("on screen the pages stay unseen and the sidebar seen, on paper the other way round", async () => {
  const seen = () =>
    sidebar.evaluate(() =>
      ["pages", "sidebar"].map((id) => getComputedStyle(document.getElementById(id)!).display),
    );
  const screen = await seen();
  await page.emulateMedia({ media: "print" });
  const paper = await seen();
  await page.emulateMedia({ media: null });
  expect([screen, paper]).toEqual([
    ["none", "block"],
    ["block", "none"],
  ]);
});

test("nothing was cut off at the edge of a page, refused by the sandbox, or fetched from elsewhere", async () => {
  await print("Print cards");
  const paper = await newPage();
  const html = await sidebar.evaluate(
    () =>
      `<style>${[...document.querySelectorAll("style")].map((one) => one.textContent).join("\n")}</style>${document.getElementById("pages")!.outerHTML}`,
  );
  await paper.emulateMedia({ media: "print" });
  await paper.setContent(html);
  const over = await paper.evaluate(() =>
    [...document.querySelectorAll(".page")].flatMap((one) => {
      const edge = one.getBoundingClientRect();
      return [...one.querySelectorAll("*")]
        .filter((part) => part.getBoundingClientRect().right > edge.right + 0.5)
        .map((part) => part.textContent);
    }),
  );
  await paper.close();
  expect(over).toEqual([]);
  expect([complaints, strays]).toEqual([[], []]);
});
