import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import type { Served } from "../../src/local-host/server/serve-workbook";
import type { OpenedWorkbook, WorkbookStore } from "../../src/local-host/server/workbook-store";
import type { WorkbookData } from "../../src/local-host/workbook-data";
import { local } from "../local-host/built";
import { launchBrowser } from "./browser";

const dist = join(__dirname, "../../dist");
const built = (name: string) => {
  const path = join(dist, name);
  if (!existsSync(path)) throw new Error(`Run npm run build first: ${name} is missing.`);
  return readFileSync(path, "utf8");
};

export type ServedPage = {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly served: Served;
  /** What the page saved last. */
  readonly saved: () => WorkbookData | null;
  /** Addresses asked for outside this server, and complaints of the page's own security policy. */
  readonly strays: readonly string[];
  readonly close: () => Promise<void>;
};

/** The built page in a browser, on a workbook kept in memory. */
export async function servedPage(given: {
  readonly workbook: WorkbookData | null;
  readonly script?: string;
  readonly sidebar?: string;
  readonly store?: Partial<WorkbookStore>;
}): Promise<ServedPage> {
  let saved: WorkbookData | null = null;
  const opened = (workbook: WorkbookData): OpenedWorkbook => ({
    workbook,
    place: `${workbook.name}.xlsx`,
    notes: [],
  });
  const none = async () => {
    throw new Error("This test gives no such workbook.");
  };
  const served = await local.serveWorkbook({
    files: {
      "page.js": built("local/page.js"),
      "page.css": built("local/page.css"),
      "code.js": given.script ?? built("code.js"),
      "Sidebar.html": given.sidebar ?? built("Sidebar.html"),
    },
    store: {
      opened: async () => given.workbook && opened(given.workbook),
      sample: none,
      imported: none,
      save: async (workbook) => {
        saved = workbook;
      },
      exported: none,
      ...given.store,
    },
  });
  const { context, close } = await launchBrowser();
  const page = context.pages()[0] ?? (await context.newPage());
  const strays: string[] = [];
  context.on("request", (request) => {
    const address = request.url();
    const here = address.startsWith(served.url) || /^(data|blob|about):/.test(address);
    if (!here) strays.push(address);
  });
  page.on("console", (message) => {
    if (/Content Security Policy/.test(message.text())) strays.push(message.text());
  });
  page.on("pageerror", (error) => strays.push(error.message));
  await page.goto(served.url);
  if (given.workbook) await ready(page);
  return {
    page,
    context,
    served,
    strays,
    saved: () => saved,
    close: async () => {
      await close();
      await served.close();
    },
  };
}

/** Waits until the workbook is open, calculated and drawn. */
export async function ready(page: Page): Promise<void> {
  await page.waitForFunction("globalThis.holdline !== undefined", undefined, { timeout: 30_000 });
  await page.waitForSelector(".grid canvas");
}

/** Values of a tab, once nothing is being calculated. */
export const values = (page: Page, tab: string): Promise<unknown[][]> =>
  page.evaluate(async (name) => {
    const host = globalThis.holdline!;
    await host.settled();
    return host.values(name).map((row) => row.map((cell) => (cell instanceof Date ? "date" : cell)));
  }, tab);

/** Clicks a cell, as a coach would: cells are drawn, so its place is asked of the grid. */
export async function clickCell(page: Page, tab: string, cell: string): Promise<void> {
  const place = await page.evaluate(
    ([name, address]) => {
      const { book } = globalThis.holdline!.engine;
      const sheet = book.getSheetByName(name!)!;
      book.setActiveSheet(sheet);
      const { x, y, width, height } = sheet.getRange(address!).getCellRect();
      return { x: x + width / 2, y: y + height / 2 };
    },
    [tab, cell],
  );
  // Changing tabs redraws the grid a moment later.
  await page.waitForTimeout(300);
  const grid = (await page.locator("canvas[id^=univer-sheet-main-canvas]").boundingBox())!;
  await page.mouse.click(grid.x + place.x, grid.y + place.y);
  await page.waitForTimeout(200);
}

/** Types into a cell and presses Enter; the editor needs a moment before it takes Enter as the end. */
export async function typeInto(page: Page, tab: string, cell: string, text: string): Promise<void> {
  await clickCell(page, tab, cell);
  await page.keyboard.type(text, { delay: 15 });
  await page.waitForTimeout(400);
  await page.keyboard.press("Enter");
  await page.waitForTimeout(200);
}
