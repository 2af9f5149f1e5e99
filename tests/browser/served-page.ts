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
  readonly strays: string[];
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
    opening: 0,
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
      save: async (_, workbook) => {
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
  const closeAll = async () => {
    await close();
    await served.close();
  };
  try {
    await page.goto(served.url);
    if (given.workbook) await ready(page);
  } catch (error) {
    await closeAll();
    throw error;
  }
  return {
    page,
    context,
    served,
    strays,
    saved: () => saved,
    close: closeAll,
  };
}

/** Waits until the workbook is open, calculated and drawn. The page's policy forbids waiting by text. */
export async function ready(page: Page): Promise<void> {
  await page.waitForSelector(".grid canvas[id^=univer-sheet-main-canvas]");
  await until(() => page.evaluate(() => globalThis.holdline !== undefined));
  await page.evaluate(() => globalThis.holdline!.settled());
}

/** Waits until a question is answered with yes, at most a minute. */
export async function until(question: () => Promise<boolean> | boolean): Promise<void> {
  const end = performance.now() + 60_000;
  while (!(await question())) {
    if (performance.now() > end) throw new Error("This did not come about within a minute.");
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Values of a tab, once nothing is being calculated. */
export const values = (page: Page, tab: string): Promise<unknown[][]> =>
  page.evaluate(async (name) => {
    const host = globalThis.holdline!;
    await host.settled();
    return host
      .values(name)
      .map((row) => row.map((cell) => (cell instanceof Date ? "date" : cell)));
  }, tab);

/** Middle of a cell of the shown tab on the page: cells are drawn, so it is asked of the grid. */
export async function cellPlace(page: Page, cell: string): Promise<{ x: number; y: number }> {
  const inGrid = await page.evaluate((address) => {
    const sheet = globalThis.holdline!.engine.book.getActiveSheet();
    const { x, y, width, height } = sheet.getRange(address).getCellRect();
    return { x: x + width / 2, y: y + height / 2 };
  }, cell);
  const grid = (await page.locator("canvas[id^=univer-sheet-main-canvas]").boundingBox())!;
  return { x: grid.x + inGrid.x, y: grid.y + inGrid.y };
}

/** Clicks a cell as a coach would. */
export async function clickCell(page: Page, tab: string, cell: string): Promise<void> {
  await page.evaluate((name) => {
    const { book } = globalThis.holdline!.engine;
    book.setActiveSheet(book.getSheetByName(name)!);
  }, tab);
  // Changing tabs redraws the grid a moment later.
  await page.waitForTimeout(300);
  const { x, y } = await cellPlace(page, cell);
  await page.mouse.click(x, y);
  await page.waitForTimeout(200);
}

const isEditing = (page: Page) =>
  page.evaluate(() => globalThis.holdline!.engine.book.isCellEditing());

/** Types into a cell and presses Enter, again when the list of functions took it, until the cell has it. */
export async function typeInto(page: Page, tab: string, cell: string, text: string): Promise<void> {
  await clickCell(page, tab, cell);
  await page.keyboard.type(text, { delay: 15 });
  await until(() => isEditing(page));
  for (let presses = 0; presses < 5 && (await isEditing(page)); presses++) {
    await page.waitForTimeout(400);
    await page.keyboard.press("Enter");
    await page.waitForTimeout(200);
  }
  await until(async () => !(await isEditing(page)));
}
