import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { plainTab } from "../../src/local-host/workbook-data";
import { local } from "../local-host/built";
import { launchBrowser } from "./browser";
import { framedSidebar } from "./framed-sidebar";

const dist = join(__dirname, "../../dist");
/** An address of ours that no network knows: everything on it is answered here. */
const sheet = "https://sheet.invalid/";

type Asked = { readonly name: string; readonly message: Readonly<Record<string, unknown>> };

/** The built sidebar, 300 px wide, whose script answers when it is let. */
export type BridgedSidebar = {
  readonly page: Page;
  /** Holds back every answer that comes from now on. */
  readonly hold: () => void;
  /** Lets the answers held back go, and all that follow. */
  readonly release: () => void;
  /** What was asked so far, with the day the browser's clock told. */
  readonly asked: () => readonly Asked[];
  /** Waits until nothing is being waited for. */
  readonly idle: () => Promise<void>;
  readonly close: () => Promise<void>;
};

/** Opens the sidebar on a workbook of plain cells, as of a day, in the reader's size of text. */
export async function bridgedSidebar(
  tabs: Readonly<Record<string, readonly (readonly unknown[])[]>>,
  today: string,
  reader: { readonly textPx?: number } = {},
): Promise<BridgedSidebar> {
  const cell = (value: unknown) =>
    value === "" ? null : { value: value as string | number | boolean };
  const host = await local.openHost({
    workbook: {
      name: "Quillbeck",
      tabs: Object.entries(tabs).map(([name, rows]) =>
        plainTab(
          name,
          rows.map((row) => row.map(cell)),
        ),
      ),
      names: [],
      properties: {},
    },
    bundleSource: readFileSync(join(dist, "code.js"), "utf8"),
    files: {},
  });
  const { context, close } = await launchBrowser(reader);
  const page = context.pages()[0] ?? (await context.newPage());
  await page.setViewportSize({ width: 300, height: 800 });
  let held: Promise<void> = Promise.resolve();
  let letGo = () => {};
  const asked: Asked[] = [];
  await context.exposeFunction("ask", async (name: string, message: string) => {
    const sent = JSON.parse(message) as Record<string, unknown>;
    asked.push({ name, message: sent });
    const wait = held;
    const answer = host.run(name, ["today" in sent ? { ...sent, today } : sent]);
    await wait;
    return JSON.stringify(answer);
  });
  await page.route(`${sheet}**`, (route) =>
    route.fulfill({
      contentType: "text/html; charset=utf-8",
      body: framedSidebar(),
    }),
  );
  await page.goto(`${sheet}sidebar`);
  const idle = async () => {
    await page.locator('main[aria-busy="false"]').waitFor({ timeout: 60_000 });
  };
  await idle();
  return {
    page,
    hold: () => {
      held = new Promise((resolve) => {
        letGo = resolve;
      });
    },
    release: () => {
      held = Promise.resolve();
      letGo();
    },
    asked: () => asked,
    idle,
    close: async () => {
      await close();
      host.dispose();
    },
  };
}
