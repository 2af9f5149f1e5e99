import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { launchBrowser } from "./browser";
import { type Program, startProgram } from "./program";
import { clickCell, ready, typeInto, until, values } from "./served-page";

const folder = mkdtempSync(join(tmpdir(), "holdline-program-"));
const squad = join(folder, "Quillbeck");
const kept = `${squad}.xlsx`;
const programs: Program[] = [];
let page: Page;
let closeBrowser: () => Promise<void>;

beforeAll(async () => {
  cpSync(join(__dirname, "../../sample-sheets"), squad, { recursive: true });
  const browser = await launchBrowser();
  closeBrowser = browser.close;
  page = browser.context.pages()[0] ?? (await browser.context.newPage());
});
afterAll(async () => {
  await closeBrowser();
  for (const program of programs) await program.stop();
  rmSync(folder, { recursive: true, force: true });
});

const start = async (...args: string[]) => {
  const program = startProgram("open", ...args);
  programs.push(program);
  await page.goto(await program.address);
  return program;
};
/** Rows not used, by athlete, as the Squad tab counts them. */
const rowsNotUsed = async (name: string) => {
  const rows = await values(page, "Squad");
  const heading = rows.find((row) => row[0] === "Athlete")!;
  const column = heading.indexOf("Rows not used");
  return rows.find((row) => row[0] === name)?.[column];
};

test("the sample squad opens with a word for every athlete, and nothing is written", async () => {
  await start(squad);
  await ready(page);
  const athletes = (await values(page, "Athletes")).slice(1).map(([name]) => name);
  const words = (await values(page, "Squad"))
    .filter(([name]) => athletes.includes(name))
    .map(([, , word]) => word);
  expect(words.length).toBe(athletes.length);
  for (const word of words) expect(word).toMatch(/^(holding|slipping|rising|level|too few rows)/);
  await page.waitForTimeout(1500);
  expect(existsSync(kept)).toBe(false);
});

test("a typed formula of the add-on answers", async () => {
  await typeInto(page, "Squad", "B24", '=VELOCITY_LOSS("0.62 0.60 0.57")');
  const loss = (await values(page, "Squad"))[23]![1];
  expect(loss).toBeCloseTo((0.62 - 0.57) / 0.62, 10);
});

test("an edited row is read again: a load that cannot be is counted and named, and undone", async () => {
  const [heading, first] = await values(page, "Sets");
  const column = (word: RegExp) => heading!.findIndex((found) => word.test(String(found)));
  const athlete = String(first![column(/^athlete/i)]);
  const cell = `${String.fromCharCode(65 + column(/^load/i))}2`;
  const before = Number(await rowsNotUsed(athlete));
  await typeInto(page, "Sets", cell, "9999");
  expect(Number(await rowsNotUsed(athlete))).toBe(before + 1);
  await page.getByRole("button", { name: "Undo" }).click();
  await until(async () => Number(await rowsNotUsed(athlete)) === before);
});

test("the change is kept in an .xlsx file beside the folder, which the terminal reads again", async () => {
  await until(() => existsSync(kept));
  await page.getByText(`Saved to ${kept}`).waitFor();
  const program = join(__dirname, "../../dist/local/holdline.cjs");
  const answer = execFileSync(
    process.execPath,
    [program, "formula", kept, "=Squad!B24", "--json"],
    {
      encoding: "utf8",
    },
  );
  expect(JSON.parse(answer)[0][0]).toBeCloseTo(0.0806, 4);
});

test("the menu opens the add-on's own sidebar", async () => {
  await page.getByRole("button", { name: "Holdline" }).click();
  await page.getByRole("menuitem").first().click();
  const inside = page.frameLocator("aside.sidebar iframe");
  await inside.getByRole("navigation").waitFor();
  await inside.getByText("Squad", { exact: true }).first().click();
  await inside.getByText("Tomas Reyerson").first().waitFor();
});

test("Ctrl+C ends it clearly: the page says so, the program ends with 0", async () => {
  const { status, said } = await programs[0]!.stop();
  expect([status, said.trim().split("\n").pop()]).toEqual([0, "Closed."]);
  await page.getByText("The program in the terminal has ended").waitFor();
});

test("without a workbook, the first screen offers the sample or one's own", async () => {
  await start();
  await page.getByRole("button", { name: "Open the sample squad" }).waitFor();
  const files = page.locator("input[type=file]");
  await files.setInputFiles({
    name: "notes.txt",
    mimeType: "text/plain",
    buffer: Buffer.from("x"),
  });
  await page.getByText(/^Not opened\. Give one \.xlsx file/).waitFor();
  await files.setInputFiles({
    name: "Sets.csv",
    mimeType: "text/csv",
    buffer: readFileSync(join(squad, "Sets.csv")),
  });
  await ready(page);
  expect((await values(page, "Sets")).length).toBeGreaterThan(100);
  await page.getByText("Not kept in a file yet").waitFor();
  await clickCell(page, "Sets", "A2");
});
