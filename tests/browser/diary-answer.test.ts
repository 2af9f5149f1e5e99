import type { Page } from "playwright-core";
import { type SamplePage, samplePage } from "./sample-page";
import { until, values } from "./served-page";

let sample: SamplePage;
let page: Page;

beforeAll(async () => {
  sample = await samplePage();
  page = sample.page;
});
afterAll(() => sample.close());

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
  // The sidebar still told of what was written: it says that this is from before.
  await inside.getByText("what is shown here is from before").waitFor();
  await inside.getByRole("button", { name: "Read again" }).click();
  await inside.getByText("Read again.", { exact: true }).waitFor({ timeout: 90_000 });
  expect(await inside.getByText("note: “=new shoes, no lunch”").count()).toBe(0);
});
