import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Frame, Page } from "playwright-core";
import type { Done } from "../../src/actions/messages";
import { writeXlsx } from "../../src/local-host/files/xlsx/write-xlsx";
import { type CellData, plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { type ServedPage, servedPage, until, values } from "../browser/served-page";
import { hostileClub } from "./corpus/hostile-club";
import { formulas, hostileText, scripts } from "./corpus/hostile-text";

const patient = { timeout: 120_000 };
const cell = (value: unknown): CellData | null =>
  value === "" ? null : { value: value as string | number };
const club = hostileClub();
const workbook: WorkbookData = {
  name: scripts[1],
  tabs: Object.entries(club).map(([name, rows]) =>
    plainTab(
      name,
      rows.map((row) => row.map(cell)),
    ),
  ),
  names: [],
  properties: {},
};
const squadTab = plainTab("Squad", [
  [
    {
      value: null,
      formula: '=SQUAD_TABLE(Athletes!A:D,Z1,Sets!A:I,Z1,Diary!A:H,Races!A:F,"2026-06-28")',
    },
  ],
]);

/** The built sidebar on a day when the club trains: it asks the browser for today. */
const sidebarOf28June = readFileSync(join(__dirname, "../../dist/Sidebar.html"), "utf8").replace(
  "<head>",
  () =>
    "<head><script>window.Date = class extends Date { constructor(...at) { if (at.length === 0) super(2026, 5, 28, 9); else super(...at); } };</script>",
);

let served: ServedPage;
let page: Page;
let sidebar: Frame;
/** Dialogs, uncaught errors, complaints of the security policy, windows: none may come. */
const seen: string[] = [];
let exported: WorkbookData | null = null;

beforeAll(async () => {
  served = await servedPage({
    workbook: { ...workbook, tabs: [...workbook.tabs, squadTab] },
    sidebar: sidebarOf28June,
    store: {
      exported: async (_, changed) => {
        exported = changed;
        const bytes = await writeXlsx(changed, null);
        if (!bytes.ok) throw new Error(JSON.stringify(bytes.refusal));
        return bytes.value;
      },
    },
  });
  page = served.page;
  page.on("dialog", (dialog) => {
    seen.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  served.context.on("page", (opened) => seen.push(`window: ${opened.url()}`));
  page.on("console", (message) => {
    if (message.type() === "error") seen.push(`console: ${message.text()}`);
  });
});
afterAll(() => served.close());

/** In every frame: no mark of a script that ran, no element that could run or fetch anything. */
async function nothingRan(): Promise<void> {
  for (const frame of page.frames()) {
    const found = await frame.evaluate(() => {
      const away = [
        ...document.querySelectorAll("[src], [href], [action], form, object, embed, base, meta"),
      ]
        .map((one) => one.outerHTML.slice(0, 200))
        .filter((html) => /127\.0\.0\.2|onerror|onload|javascript:|refresh/i.test(html));
      const handlers = [...document.querySelectorAll("*")].filter((one) =>
        one.getAttributeNames().some((name) => name.startsWith("on")),
      );
      const { broken } = window as unknown as { broken?: unknown };
      return {
        broken: broken ?? null,
        away,
        handlers: handlers.map((one) => one.outerHTML.slice(0, 200)),
      };
    });
    expect([frame.url().slice(0, 30), found]).toEqual([
      frame.url().slice(0, 30),
      { broken: null, away: [], handlers: [] },
    ]);
  }
  expect([seen, served.strays]).toEqual([[], []]);
}

const button = (name: string | RegExp) => sidebar.getByRole("button", { name }).first();
const ask = (name: string, message: object) =>
  page.evaluate(([asked, sent]) => globalThis.holdline!.run(asked as string, [sent]), [
    name,
    message,
  ] as const);

test("the grid opens the workbook: its name, tabs, headings and cells are drawn as text", async () => {
  expect(await page.title()).toContain(scripts[1]);
  expect(await values(page, "Athletes")).toHaveLength(club.Athletes!.length);
  await nothingRan();
});

test("formulas over it answer in text and figures", async () => {
  const rows = await values(page, "Squad");
  // A row for each name, the doubled ones included, and the table's heading is none.
  expect(rows.filter(([word]) => word !== "").length).toBeGreaterThan(40);
  await nothingRan();
});

test("sidebar: squad, athletes with charts and diary, rows, set up and the next week", async () => {
  await page.getByRole("button", { name: "Holdline" }).click();
  await page.getByRole("menuitem").first().click();
  sidebar = (await (await page.waitForSelector("aside.sidebar iframe")).contentFrame())!;
  await button(/^Squad/).click(patient);
  await sidebar
    .getByText("<script>window.broken=1</script>", { exact: true })
    .first()
    .waitFor(patient);
  await nothingRan();
  let charts = 0;
  for (const [at, name] of hostileText.entries()) {
    // Every fourth is opened: all are drawn in the list.
    if (at % 4 !== 0) continue;
    const line = sidebar.getByText(name.slice(0, 200).trim(), { exact: true }).first();
    if ((await line.count()) === 0) continue;
    await line.click(patient);
    await until(async () => (await sidebar.locator("main[aria-busy=false]").count()) > 0);
    charts += await sidebar.locator("svg").count();
    await nothingRan();
    await button(/^Squad/).click(patient);
    await until(async () => (await sidebar.locator("main[aria-busy=false]").count()) > 0);
  }
  expect(charts).toBeGreaterThan(5);
  for (const view of [/^Rows/, /^Set up/, /^Next week/]) {
    await button(view).click(patient);
    await until(async () => (await sidebar.locator("main[aria-busy=false]").count()) > 0);
    await nothingRan();
  }
});

test("paper: cards, rack plan, the page of the week and the charts of those who slipped", async () => {
  await sidebar.evaluate(() => {
    window.print = () => {};
  });
  for (const kind of [/^Print cards/, /^Print rack/, /^Print page/, /^Print charts/]) {
    await button(kind).click(patient);
    await until(() => sidebar.evaluate(() => document.querySelector("#pages article") !== null));
    expect(await sidebar.locator("#pages").textContent()).toContain("window.broken=1");
    await nothingRan();
    await sidebar.evaluate(() => document.getElementById("pages")!.replaceChildren());
  }
});

test("a week is written: names that begin like formulas stand as text", async () => {
  const { said } = (await ask("writeWeek", {
    today: "2026-06-28",
    monday: "2026-06-29",
    changes: [],
    athletes: null,
  })) as Done;
  expect(said).toMatch(/\d+ rows new/);
  const written = await values(page, "Next week");
  for (const text of formulas) expect(written.map(([name]) => name)).toContain(text.trim());
  await nothingRan();
});

test("saved as .xlsx and kept, no text became a formula", async () => {
  await page.getByRole("button", { name: "Save as .xlsx" }).click();
  await until(() => exported !== null);
  for (const kept of [exported!, served.saved()]) {
    if (kept === null) continue;
    for (const { name, cells } of kept.tabs) {
      const made = cells.flat().flatMap((one) => (one?.formula === undefined ? [] : [one.formula]));
      if (name === "Squad") expect(made).toHaveLength(1);
      else if (name === "Next week") {
        for (const formula of made)
          expect(formula).not.toMatch(/1\+1|cmd|HYPERLINK|IMPORT|broken|away/);
      } else expect([name, made]).toEqual([name, []]);
    }
  }
  await nothingRan();
});

test("the sidebar cannot call what the browser gives every page", async () => {
  const browsers = [
    "eval",
    "Function",
    "open",
    "alert",
    "print",
    "close",
    "postMessage",
    "navigator",
  ];
  for (const name of [
    ...browsers,
    "core",
    "__proto__",
    "constructor",
    "toString",
    "hasOwnProperty",
  ]) {
    const said = await page.evaluate((asked) => {
      try {
        return String(globalThis.holdline!.run(asked, ["window.broken=1"]));
      } catch (error) {
        return (error as Error).message;
      }
    }, name);
    expect(said).toBe(`Script function not found: ${name}`);
  }
  await nothingRan();
});

test("should text ever become an element, the page's policy still keeps it from running and from asking anywhere", async () => {
  const complaints = seen.length + served.strays.length;
  const tried = () => {
    const script = document.createElement("script");
    script.textContent = "window.broken=1";
    const picture = document.createElement("img");
    picture.src = "http://127.0.0.2:9/away";
    picture.setAttribute("onerror", "window.broken=1");
    document.body.append(script, picture);
    return fetch("http://127.0.0.2:9/away").then(
      () => "answered",
      () => (window as unknown as { broken?: number }).broken ?? "refused",
    );
  };
  // The sidebar's frame is a sandbox of its own origin under the same policy.
  expect([await page.evaluate(tried), await sidebar.evaluate(tried)]).toEqual([
    "refused",
    "refused",
  ]);
  await until(() => seen.length + served.strays.length >= complaints + 6);
  expect(seen.filter((one) => !/Content Security Policy/.test(one))).toEqual([]);
});
