import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { SetUpView } from "../../src/actions/messages";
import { opened } from "./opened";

const bundleSource = readFileSync(join(__dirname, "../../dist/code.js"), "utf8");
const today = "2026-06-28";
const jump = (day: string, height: number) => [
  "Ilka Brandmoor",
  { value: day, format: "@" },
  "box jump",
  height,
];

test("an answer kept with the workbook outlives an inserted column, a new tab name and closing the file", async () => {
  const host = await opened(
    {
      Spring: [
        ["Athlete", "Date", "Test", "Height (cm)"],
        jump("5/3/2026", 41),
        jump("3/4/2026", 42),
        jump("7/5/2026", 43),
      ],
    },
    { bundleSource },
  );
  const view = (of = host) => of.run("setUpView", [{ today }]) as SetUpView;
  const [question] = view().questions;
  expect(question).toMatchObject({ heading: "Date", about: "date order", column: 2 });
  const { tabId, heading, column } = question!;
  host.run("answerColumn", [{ today, tabId, heading, column, dateOrder: "day first" }]);
  host.tab("Spring").insertColumnsAfter(1, 1);
  host.tab("Spring").setName("Frühling");
  const moved = { tabId, tab: "Frühling", heading, column: 3, said: "day first" };
  expect(view().questions).toEqual([]);
  expect(view().answered).toEqual([moved]);
  expect(view().tabs[0]).toMatchObject({ tab: "Frühling", table: "Jumps", rows: 3 });
  const { tabs, ...kept } = host.workbook();
  const again = await opened({}, { tabs, ...kept, bundleSource });
  expect(view(again).questions).toEqual([]);
  expect(view(again).answered).toMatchObject([{ tab: "Frühling", said: "day first" }]);
}, 60_000);
