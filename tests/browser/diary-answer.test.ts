import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { launchBrowser } from "./browser";
import { type Program, startProgram } from "./program";
import { ready, until, values } from "./served-page";

jest.setTimeout(180_000);

const folder = mkdtempSync(join(tmpdir(), "holdline-diary-"));
const squad = join(folder, "Quillbeck");
let program: Program;
let page: Page;
let closeBrowser: () => Promise<void>;

beforeAll(async () => {
  cpSync(join(__dirname, "../../sample-sheets"), squad, { recursive: true });
  const browser = await launchBrowser();
  closeBrowser = browser.close;
  page = browser.context.pages()[0] ?? (await browser.context.newPage());
  program = startProgram("open", squad);
  await page.goto(await program.address);
  await ready(page);
});
afterAll(async () => {
  await closeBrowser();
  await program.stop();
  rmSync(folder, { recursive: true, force: true });
});

const noteOf = async (cell: string) =>
  (await values(page, "Diary"))[Number(cell.replace(/\D/g, "")) - 1]?.[
    cell.replace(/\d/g, "").charCodeAt(0) - 65
  ];

test("an answer typed beside an unusual day stands in the Diary, and Undo takes it back", async () => {
  await page.getByRole("button", { name: "Holdline" }).click();
  await page.getByRole("menuitem").first().click();
  const inside = page.frameLocator("aside.sidebar iframe");
  await inside.getByRole("button", { name: "Squad" }).click();
  await inside.getByText("Tomas Reyerson").first().click();
  const field = inside.getByLabel(/^Answer for /).first();
  await field.waitFor({ timeout: 90_000 });
  expect(await inside.getByRole("img", { name: /Sessions and diary of/ }).count()).toBe(1);
  const goesTo = await inside
    .getByText(/^Goes to Diary/)
    .first()
    .textContent();
  const cell = /Diary ([A-Z]+\d+)/.exec(goesTo!)![1]!;
  expect(await noteOf(cell)).toBe("");
  await field.fill("=new shoes, no lunch");
  await inside.getByRole("button", { name: "Write into the Diary" }).first().click();
  await inside.getByText("note: “=new shoes, no lunch”").waitFor({ timeout: 90_000 });
  expect(await noteOf(cell)).toBe("=new shoes, no lunch");
  expect(
    await inside
      .getByLabel(/^Answer for /)
      .first()
      .inputValue(),
  ).toBe("");
  await page.getByRole("button", { name: "Undo" }).click();
  await until(async () => (await noteOf(cell)) === "");
});
