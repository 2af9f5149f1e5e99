import { sampleCells } from "../actions/sample-club";
import { type BridgedSidebar, bridgedSidebar } from "./bridged-sidebar";

// A large club of long names and of two of one first name, in a gym of small plates alone: the sample's
// rows under other names. Invented.
const others = [
  "Maximiliana-Theodora Featherstonehaugh-Cholmondeley",
  "Bartholomew Oluwaseun Whittington-Smythe",
  "Tom Featherstone-Hollingworth",
  "Tom Jessamy",
];
const athletes = sampleCells("Athletes");
const first = athletes.slice(1).map(([name]) => String(name));
const named = new Map(first.map((name, at) => [name, others[at] ?? name]));
const copies = ["", "the younger", "the elder"];
/** Every row of a table once for each copy of the club, under names of its own. */
function crowd(name: "Athletes" | "Sets" | "Jumps"): unknown[][] {
  const [head = [], ...rows] = sampleCells(name);
  const at = head.indexOf("Athlete");
  const renamed = (cell: unknown, copy: string) =>
    copy === "" ? (named.get(String(cell)) ?? cell) : `${cell} ${copy}`;
  const all = copies.flatMap((copy) =>
    rows.map((row) => row.map((cell, column) => (column === at ? renamed(cell, copy) : cell))),
  );
  return [head, ...all];
}
let sidebar: BridgedSidebar;
beforeAll(async () => {
  const plates = [["Mass (kg)", "Thickness (cm)", "Number owned"]].concat(
    [5, 2.5, 1.25].map((mass) => [mass, 2, 20] as unknown as string[]),
  );
  sidebar = await bridgedSidebar(
    {
      Athletes: crowd("Athletes"),
      Sets: crowd("Sets"),
      Jumps: crowd("Jumps"),
      Races: sampleCells("Races"),
      Plates: plates,
    },
    "2026-06-28",
  );
  await sidebar.page.evaluate(() => {
    window.print = () => {};
  });
});
afterAll(() => sidebar.close());

test("a long name in the week's list pushes nothing past the edge", async () => {
  const past = await sidebar.page.evaluate(() =>
    [...document.querySelectorAll("main .row span")]
      .filter((one) => one.getBoundingClientRect().right > 300)
      .map(({ textContent }) => textContent),
  );
  expect(past).toEqual([]);
});

test.each([
  "Print cards",
  "Print rack plan",
  "Print page for the head coach",
  "Print charts of those who moved",
])(
  "%s: nothing leaves its column or the paper, however long the names and many the plates",
  async (name) => {
    const { page, idle } = sidebar;
    await page.emulateMedia({ media: null });
    await page.getByRole("button", { name, exact: true }).click();
    await idle();
    await page
      .getByText(/ready to print/)
      .first()
      .waitFor();
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: 900, height: 1200 });
    const over = await page.evaluate(() =>
      [...document.querySelectorAll("#pages .page")].flatMap((sheet) => {
        const edge = sheet.getBoundingClientRect().right;
        const range = document.createRange();
        const beyond = (part: Element) => {
          range.selectNodeContents(part);
          return range.getBoundingClientRect().right;
        };
        const cells = [...sheet.querySelectorAll("td, th:not(:has(.off))")].filter(
          (cell) => beyond(cell) > cell.getBoundingClientRect().right + 1,
        );
        const parts = [...sheet.querySelectorAll(":not(.off)")].filter(
          (part) => part.getBoundingClientRect().right > edge - 8,
        );
        return [...cells, ...parts].map((one) => one.textContent);
      }),
    );
    await page.setViewportSize({ width: 300, height: 800 });
    await page.emulateMedia({ media: null });
    expect(over).toEqual([]);
  },
);

test("a sheet that runs on to another keeps its margin there", async () => {
  const [sheet] = await sidebar.page.evaluate(() =>
    [...document.querySelectorAll("#pages .page")].map((one) => {
      const { boxDecorationBreak, paddingTop } = getComputedStyle(one);
      return { boxDecorationBreak, wide: Number.parseFloat(paddingTop) > 20 };
    }),
  );
  expect(sheet).toEqual({ boxDecorationBreak: "clone", wide: true });
});
