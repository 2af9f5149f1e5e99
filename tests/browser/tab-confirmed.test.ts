import { sampleCells } from "../actions/sample-club";
import { type BridgedSidebar, bridgedSidebar } from "./bridged-sidebar";

let sidebar: BridgedSidebar;
beforeAll(async () => {
  sidebar = await bridgedSidebar(
    {
      Athletes: sampleCells("Athletes"),
      Sets: sampleCells("Sets"),
      "Gym notes": [
        ["Name", "Phone", "Email", "Notes"],
        ["Ilka Brandmoor", "555", "ilka", "mornings"],
      ],
      "Jump log": [
        ["Measured", ...sampleCells("Jumps")[0]!.slice(1)],
        ...sampleCells("Jumps").slice(1, 20),
      ],
    },
    "2026-06-28",
  );
});
afterAll(() => sidebar.close());

const button = (name: string | RegExp) => sidebar.page.getByRole("button", { name });
const click = async (name: string | RegExp) => {
  await button(name).first().click();
  await sidebar.idle();
};

test("a tab in doubt is told under Rows, confirmed under Set up in one click, and told no more", async () => {
  const { page } = sidebar;
  await click(/^Rows/);
  const told = page.getByText("Looks like Jumps");
  expect(await told.count()).toBe(1);
  await click("Set up");
  await click("Yes, Jump log is Jumps");
  expect(await button("Yes, Jump log is Jumps").count()).toBe(0);
  expect(await page.getByText(/Jump log.*: you said so/).count()).toBe(1);
  await click(/^Rows/);
  expect(await told.count()).toBe(0);
  expect(await page.getByText("no column for “date”").count()).toBe(1);
});
