import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Frame, Page } from "playwright-core";
import { readCsvFolder } from "../../src/local-host/files/read-csv-folder";
import { local } from "../local-host/built";
import { launchBrowser } from "./browser";
import { framedSidebar } from "./framed-sidebar";

const dist = join(__dirname, "../../dist");
const patient = { timeout: 120_000 };
/** An address of ours that no network knows: everything on it is answered here. */
const sheet = "https://sheet.invalid/";
let page: Page;
let sidebar: Frame;
let closeBrowser: () => Promise<void>;
let closeHost: () => void;
const strays: string[] = [];

/**
 * The online sheet's side of the sidebar: a sandboxed frame that may run scripts and open windows but
 * no dialogs, and the built script behind the strict services. What the platform's frame allows for
 * printing is not documented, so the stricter case is taken.
 */
beforeAll(async () => {
  const read = readCsvFolder(join(__dirname, "../../sample-sheets"), new Set());
  if (!read.ok) throw new Error(read.refusal.code);
  const host = await local.openHost({
    workbook: read.value.workbook,
    bundleSource: readFileSync(join(dist, "code.js"), "utf8"),
    files: {},
  });
  closeHost = host.dispose;
  const browser = await launchBrowser();
  closeBrowser = browser.close;
  page = browser.context.pages()[0] ?? (await browser.context.newPage());
  page.on("request", (request) => {
    const address = request.url();
    if (!address.startsWith(sheet) && !/^(data|blob|about):/.test(address)) strays.push(address);
  });
  await browser.context.exposeFunction("ask", (name: string, message: string) => {
    const sent = JSON.parse(message) as Record<string, unknown>;
    const answer = host.run(name, ["today" in sent ? { ...sent, today: "2026-06-28" } : sent]);
    return JSON.stringify(answer);
  });
  const framed = framedSidebar();
  const outer = `<!doctype html><title>sheet</title><iframe src="${sheet}sidebar" style="width:300px;height:800px"
    sandbox="allow-scripts allow-same-origin allow-forms allow-popups allow-popups-to-escape-sandbox"></iframe>`;
  await page.route(`${sheet}**`, (route) =>
    route.fulfill({
      contentType: "text/html; charset=utf-8",
      body: route.request().url() === sheet ? outer : framed,
    }),
  );
  await page.goto(sheet);
  const frame = await (await page.waitForSelector("iframe")).contentFrame();
  sidebar = frame!;
  await sidebar.getByText("Read first").waitFor(patient);
});
afterAll(async () => {
  await closeBrowser();
  closeHost();
});

const button = (name: string) => sidebar.getByRole("button", { name, exact: true });
const mm = (points: string | undefined) => Math.round((Number(points) / 72) * 25.4);

/** Prints one kind of pages the way a coach must where the sidebar may not: through a window. */
async function printed(kind: string): Promise<{ window: Page; sizes: string[]; articles: number }> {
  await button(kind).click(patient);
  await sidebar.getByText(/The print window did not open from here/).waitFor(patient);
  const [window] = await Promise.all([
    page.context().waitForEvent("page"),
    button("Open the pages in a window").click(patient),
  ]);
  const articles = await window.locator("article").count();
  const pdf = await window.pdf({ preferCSSPageSize: true, printBackground: true });
  const kept = process.env.HOLDLINE_PDFS;
  if (kept !== undefined) writeFileSync(join(kept, `${kind}.pdf`), pdf);
  const boxes = pdf.toString("latin1").matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g);
  const sizes = [...boxes].map(([, width, height]) => `${mm(width)}×${mm(height)}`);
  return { window, sizes, articles };
}

/** Parts of a page that reach past its edge, to the right or below. */
const cutOff = (window: Page) =>
  window.evaluate(() =>
    [...document.querySelectorAll(".page")].flatMap((one) => {
      const edge = one.getBoundingClientRect();
      return [...one.querySelectorAll("*")].flatMap((part) => {
        const place = part.getBoundingClientRect();
        return place.right > edge.right + 0.5 || place.bottom > edge.bottom + 0.5
          ? [part.textContent]
          : [];
      });
    }),
  );

test.each([
  ["Print cards", "148×210", 10],
  ["Print rack plan", "210×297", 2],
  ["Print page for the head coach", "210×297", 1],
  ["Print charts of those who moved", "210×297", 1],
])(
  "where the sidebar may not print, %s opens in a window of its own, %s mm a page",
  async (kind, size, least) => {
    const { window, sizes, articles } = await printed(kind);
    expect(articles).toBeGreaterThanOrEqual(least);
    expect(sizes).toEqual(Array(articles).fill(size));
    expect(await cutOff(window)).toEqual([]);
    // The window stands outside the sandbox: its own button opens the print window.
    await window.evaluate(() => {
      const seen = window as unknown as { begun: number };
      seen.begun = 0;
      addEventListener("beforeprint", () => {
        seen.begun += 1;
      });
    });
    await window.getByRole("button", { name: "Print these pages" }).click(patient);
    expect(await window.evaluate(() => (window as unknown as { begun: number }).begun)).toBe(1);
    await window.close();
  },
);

test("nothing was fetched from anywhere", () => {
  expect(strays).toEqual([]);
});
