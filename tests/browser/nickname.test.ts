import { seriousFindings } from "./axe";
import { type BridgedSidebar, bridgedSidebar } from "./bridged-sidebar";

// Invented athletes; the first is called Teddy in the rows.
let sidebar: BridgedSidebar;
beforeAll(async () => {
  sidebar = await bridgedSidebar(
    {
      Athletes: [["Athlete"], ["Theodora Vance-Quarringtonfield"], ["Nils Quarrington"]],
      Sets: [
        ["Date", "Athlete", "Exercise", "Load (kg)"],
        ["2026-06-08", "Nils Quarrington", "back squat", 80],
        ["2026-06-08", "Teddy", "back squat", 60],
      ],
    },
    "2026-06-12",
  );
});
afterAll(() => sidebar.close());

test("a nickname is given its athlete by keys alone, and nothing is sent before the button", async () => {
  const { page } = sidebar;
  await page.getByRole("button", { name: /^Rows/ }).click();
  await sidebar.idle();
  const list = page.getByRole("combobox", { name: "Who is “Teddy”?" });
  expect(await list.inputValue()).toBe("");
  expect(await seriousFindings(page)).toEqual([]);
  const answers = () => sidebar.asked().filter(({ name }) => name === "answerName");
  await list.focus();
  await page.keyboard.press("ArrowDown");
  expect(await list.inputValue()).toBe("Theodora Vance-Quarringtonfield");
  expect(answers()).toEqual([]);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.getByText("4 of 4 rows read.").waitFor();
  await sidebar.idle();
  expect(answers().map(({ message }) => message)).toMatchObject([
    { written: "Teddy", athlete: "Theodora Vance-Quarringtonfield", same: true },
  ]);
  await page.getByRole("button", { name: "Take back" }).click();
  await sidebar.idle();
  expect(await list.inputValue()).toBe("");
});
