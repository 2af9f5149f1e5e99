import { sampleCells } from "../actions/sample-club";
import { type BridgedSidebar, bridgedSidebar } from "./bridged-sidebar";
import { until } from "./served-page";

// A gym with one pair of each plate and none of 2.5 kg: no load from 92.5 to 95 kg can be built.
const plates = [
  ["Mass (kg)", "Thickness (cm)", "Number owned"],
  ...[20, 10, 5, 1.25].map((mass) => [mass, 3, 2]),
];
/** Nights of 75 hours for 7.5: each is a cell to mend with one proposed value. */
const diary = sampleCells("Diary").map((row, at) =>
  at > 0 && at % 12 === 0 && at < 37 ? [row[0], row[1], 75, ...row.slice(3)] : row,
);
let sidebar: BridgedSidebar;
beforeAll(async () => {
  const own = ["Athletes", "Sets", "Races", "Availability"] as const;
  const tabs = Object.fromEntries(own.map((name) => [name, sampleCells(name)]));
  sidebar = await bridgedSidebar({ ...tabs, Plates: plates, Diary: diary }, "2026-06-28");
});
afterAll(() => sidebar.close());

const field = (name: string) =>
  sidebar.page.getByRole(
    name === "Block" ? "combobox" : name === "Contacts" ? "spinbutton" : "textbox",
    { name },
  );
const button = (name: string | RegExp) => sidebar.page.getByRole("button", { name });

test("what is being typed stays while a late answer is drawn, and what was typed until it is answered", async () => {
  const { page, hold, release, idle } = sidebar;
  hold();
  await button(/^Kofi Anstruther/).click();
  await field("Stack").fill("5x15+5");
  release();
  // The athlete's pictures have come and are drawn around the field.
  await page.getByRole("heading", { name: "Load and speed" }).waitFor();
  expect(await field("Stack").inputValue()).toBe("5x15+5");
  hold();
  await page.keyboard.press("Enter");
  await field("Block").selectOption("5×3");
  expect([await field("Stack").inputValue(), await field("Block").inputValue()]).toEqual([
    "5x15+5",
    "5×3",
  ]);
  release();
  await idle();
  expect([await field("Stack").inputValue(), await field("Block").inputValue()]).toEqual([
    "5×15+5",
    "5×3",
  ]);
});

test.each([
  ["Stack", "the big box", "Write the plates from the bottom up as 5x15+5. Nothing was changed."],
  ["Contacts", "500", "Contacts are a whole number from 0 to 120. Nothing was changed."],
  ["Contacts", "", "Contacts are a whole number from 0 to 120. Nothing was changed."],
])(
  "%s: what cannot be right is said beside the field, and nothing is stuck",
  async (name, typed, why) => {
    const { page, idle } = sidebar;
    const before = await field(name).inputValue();
    await field(name).fill(typed);
    await page.keyboard.press("Tab");
    await page.getByText(why).waitFor();
    expect(await field(name).getAttribute("aria-invalid")).toBe("true");
    await field(name).fill(before);
    await page.keyboard.press("Tab");
    await idle();
    expect(await page.getByRole("alert").count()).toBe(0);
  },
);

test("the load steps over what no plates make, and quick presses all count", async () => {
  const { page, hold, release, idle } = sidebar;
  const load = async () => Number(await page.locator(".stepper output").textContent());
  const heavier = button("One plate step heavier");
  hold();
  const first = await load();
  for (let presses = 0; presses < 3; presses++) await heavier.click();
  expect(await load()).toBe(first + 7.5);
  release();
  await idle();
  // 20 + 10 + 5 + 1.25 kg a side are all this gym has.
  const most = 92.5;
  for (let presses = 0; presses < 40 && (await load()) < most; presses++) {
    await heavier.click();
    await idle();
  }
  expect(await load()).toBe(most);
  await button("One plate step lighter").click();
  await idle();
  expect(await load()).toBe(90);
});

test("after a mend the list stays where it is, and the focus goes on to the next cell", async () => {
  const { page, hold, release, idle } = sidebar;
  await button(/^Rows/).click();
  await idle();
  const entries = page.locator("main > .list > li");
  const count = await entries.count();
  const mend = page.getByRole("button", { name: "Write 7.5" }).nth(1);
  const follows = await mend.evaluate((one) => one.closest("li")!.nextElementSibling!.textContent);
  hold();
  await mend.click();
  release();
  await page.getByText(/75 is now 7\.5\. Undo takes it back\./).waitFor();
  expect(await entries.count()).toBeGreaterThanOrEqual(count - 1);
  await until(async () => (await entries.count()) === count - 1);
  const held = await page.evaluate(() => {
    const entry = document.activeElement?.closest("li");
    return { tag: document.activeElement?.tagName, entry: entry?.textContent };
  });
  expect(held).toEqual({ tag: "BUTTON", entry: follows });
});

test("a sidebar left open over midnight reads as of the new day at the next press", async () => {
  const { page, idle, asked } = sidebar;
  const own = asked().at(-1)!.message.today as string;
  await page.clock.setFixedTime(new Date(Date.parse(own) + 36 * 3_600_000));
  await button(/^Squad/).click();
  await idle();
  const days = asked()
    .filter(({ name }) => name === "squadView")
    .map(({ message }) => message.today);
  expect(days.length).toBeGreaterThan(0);
  expect(days.every((day) => String(day) > own)).toBe(true);
});
