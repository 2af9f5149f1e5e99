import { tableNames } from "../../src/rows/table-name";
import { sampleCells } from "../actions/sample-club";
import { type BridgedSidebar, bridgedSidebar } from "./bridged-sidebar";

/** Nights of 75 hours for 7.5: each is a cell to mend with one proposed value. */
const diary = sampleCells("Diary").map((row, at) =>
  [12, 24, 36, 48].includes(at) ? [row[0], row[1], 75, ...row.slice(3)] : row,
);
let sidebar: BridgedSidebar;
beforeAll(async () => {
  // No Plates tab: Set up makes one.
  const own = tableNames.filter((name) => name !== "Plates");
  const tabs = Object.fromEntries(own.map((name) => [name, sampleCells(name)]));
  sidebar = await bridgedSidebar({ ...tabs, Diary: diary }, "2026-06-28");
});
afterAll(() => sidebar.close());

const view = async (name: RegExp) => {
  await sidebar.page.getByRole("button", { name }).first().click();
  await sidebar.idle();
};

/** The sentence of what was done or went wrong, and whether all of it can be read where the window stands. */
async function told(): Promise<{ text: string; inSight: boolean }> {
  await sidebar.idle();
  return sidebar.page
    .locator("#sidebar .says")
    .first()
    .evaluate((one) => {
      const { top, bottom, left } = one.getBoundingClientRect();
      const seen = document.elementFromPoint(left + 12, (top + bottom) / 2);
      const inSight = top >= 0 && bottom <= innerHeight && one.contains(seen);
      return { text: one.textContent ?? "", inSight };
    });
}

const sizes = [
  ["a phone", { width: 375, height: 340 }],
  ["a laptop", { width: 300, height: 700 }],
] as const;

describe.each(sizes)("%s", (_, size) => {
  beforeAll(() => sidebar.page.setViewportSize(size));

  test.each([
    [/^Next week/, /^Write (?:\d+ rows|again)$/, /^\d+ .+ (?:new|the same)\.$/],
    [/^Next week/, /^Print charts of those who moved$/, /ready to print/],
    [/^Next week/, /^Take back$/, /^Taken back: \d+/],
    [/^Rows/, /^Write 7.5$/, /75 is now 7\.5/],
    [/^Squad/, /^Highlight the Squad tab$/, /Squad/],
    [/^Set up/, /^Set up tabs$/, /tab/],
  ])("%s, %s: what it did can be read where the button was pressed", async (where, name, says) => {
    await view(where);
    await sidebar.page.getByRole("button", { name }).last().click({ timeout: 120_000 });
    const { text, inSight } = await told();
    expect(text).toMatch(says);
    expect(inSight).toBe(true);
  });

  test("what went wrong can be read where the button was pressed", async () => {
    const { page } = sidebar;
    await view(/^Next week/);
    await page.evaluate(() => {
      const own = globalThis as unknown as { ask: unknown; kept: unknown };
      own.kept = own.ask;
      own.ask = async () => {
        throw new Error("Another coach is writing just now.");
      };
    });
    await page.getByRole("button", { name: /^Write (?:\d+ rows|again)$/ }).click();
    expect(await told()).toEqual({
      text: "Another coach is writing just now.Read again",
      inSight: true,
    });
    await page.evaluate(() => {
      const own = globalThis as unknown as { ask: unknown; kept: unknown };
      own.ask = own.kept;
    });
  });

  test.each([[/^Next week/], [/^Rows/], [/^Set up/]])(
    "%s: nothing reached by keyboard is hidden behind what stays in sight",
    async (where) => {
      await view(where);
      const { page } = sidebar;
      const hidden: string[] = [];
      for (const key of ["Tab", "Shift+Tab"]) {
        for (let presses = 0; presses < 30; presses++) {
          await page.keyboard.press(key);
          hidden.push(
            ...(await page.evaluate(() => {
              const one = document.activeElement!;
              if (one.closest("main") === null || one.tagName === "MAIN") return [];
              const { top, bottom, left, width } = one.getBoundingClientRect();
              const isSeen = (y: number) =>
                one.contains(document.elementFromPoint(left + width / 2, y));
              return isSeen(top + 3) && isSeen(bottom - 3) ? [] : [one.textContent ?? ""];
            })),
          );
        }
      }
      expect(hidden).toEqual([]);
    },
  );
});

test("another view is read from its beginning, however far the one before was scrolled", async () => {
  const { page } = sidebar;
  await view(/^Rows/);
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  expect(await page.evaluate(() => scrollY)).toBeGreaterThan(100);
  await view(/^Set up/);
  expect(await page.evaluate(() => scrollY)).toBe(0);
});
