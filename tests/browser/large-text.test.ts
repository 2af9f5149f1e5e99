import { tableNames } from "../../src/rows/table-name";
import { sampleCells } from "../actions/sample-club";
import { type BridgedSidebar, bridgedSidebar } from "./bridged-sidebar";

// A reader who asks for text twice the usual size, in the usual width of 300 px.
let sidebar: BridgedSidebar;
beforeAll(async () => {
  sidebar = await bridgedSidebar(
    Object.fromEntries(tableNames.map((name) => [name, sampleCells(name)])),
    "2026-06-28",
    { textPx: 32 },
  );
});
afterAll(() => sidebar.close());

const open = async (name: string | RegExp) => {
  await sidebar.page.getByRole("button", { name }).first().click();
  await sidebar.idle();
};

/** Words that run past the edge of the sidebar, or over others. */
const crowded = () =>
  sidebar.page.evaluate(() => {
    const walker = document.createTreeWalker(document.querySelector("main, body")!, 4);
    const range = document.createRange();
    const lines: { words: string; head: boolean; box: DOMRect }[] = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement!;
      if (parent.closest(".off, #pages, svg, select, script, style") !== null) continue;
      if (!parent.checkVisibility()) continue;
      range.selectNodeContents(node);
      const head = parent.closest(".head, .write") !== null;
      const words = node.nodeValue ?? "";
      for (const box of range.getClientRects()) lines.push({ words, head, box });
    }
    const past = lines.filter(({ box }) => box.right > 300.5 || box.left < 0);
    const over = lines.filter(({ head, box }, at) =>
      lines.some(
        (other, place) =>
          place > at &&
          other.head === head &&
          box.left < other.box.right - 2 &&
          other.box.left < box.right - 2 &&
          box.top < other.box.bottom - 6 &&
          other.box.top < box.bottom - 6,
      ),
    );
    return { past: past.map(({ words }) => words), over: over.map(({ words }) => words) };
  });

test("the text is as large as the reader asks", async () => {
  const size = await sidebar.page.evaluate(() => getComputedStyle(document.body).fontSize);
  expect(size).toBe("26px");
});

test.each([["Next week"], ["Tomas Reyerson"], ["Squad"], [/^Rows/], ["Set up"]])(
  "%s: every word keeps its own room",
  async (view) => {
    await open(view);
    expect(await crowded()).toEqual({ past: [], over: [] });
  },
);
