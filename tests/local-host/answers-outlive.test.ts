import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { SetUpView } from "../../src/actions/messages";
import { readXlsx } from "../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../src/local-host/files/xlsx/write-xlsx";
import { opened } from "./opened";

const bundleSource = readFileSync(join(__dirname, "../../dist/code.js"), "utf8");
const today = "2026-06-28";
const jump = (day: string, height: number) => [
  "Ilka Brandmoor",
  { value: day, format: "@" },
  "box jump",
  height,
];

const spring = {
  Spring: [
    ["Athlete", "Date", "Test", "Height (cm)"],
    jump("5/3/2026", 41),
    jump("3/4/2026", 42),
    jump("7/5/2026", 43),
  ],
};
type Host = Awaited<ReturnType<typeof opened>>;
const view = (host: Host) => host.run("setUpView", [{ today }]) as SetUpView;
/** The workbook with its one question, about the dates, answered. */
const answered = async () => {
  const host = await opened(spring, { bundleSource });
  const [question] = view(host).questions;
  expect(question).toMatchObject({ heading: "Date", about: "date order", column: 2 });
  const { tabId, heading, column } = question as { tabId: number; heading: string; column: number };
  host.run("answerColumn", [{ today, tabId, heading, column, dateOrder: "day first" }]);
  return host;
};
/** Saved to a file's bytes and opened again. */
const reopened = async (host: Host) => {
  const bytes = await writeXlsx(host.workbook(), null);
  if (!bytes.ok) throw new Error(bytes.refusal.code);
  const read = await readXlsx("spring", bytes.value);
  if (!read.ok) throw new Error(read.refusal.code);
  return opened({}, { ...read.value.workbook, bundleSource });
};
const standing = (host: Host) =>
  view(host).answered.map((answer) =>
    "column" in answer ? [answer.tab, answer.heading, answer.column, answer.said] : [],
  );

const changes: Readonly<Record<string, [(host: Host) => void, ...unknown[]]>> = {
  "an inserted column": [
    (host) => host.tab("Spring").insertColumnsAfter(1, 1),
    "Spring",
    "Date",
    3,
  ],
  "columns moved past it": [
    (host) => {
      const tab = host.tab("Spring");
      tab.moveColumns(tab.getRange("C:D"), 1);
    },
    "Spring",
    "Date",
    4,
  ],
  "its own move": [
    (host) => {
      const tab = host.tab("Spring");
      tab.moveColumns(tab.getRange("B:B"), 5);
    },
    "Spring",
    "Date",
    4,
  ],
  "a new heading": [
    (host) => host.tab("Spring").getRange("B1").setValue("Tag"),
    "Spring",
    "Tag",
    2,
  ],
  "a new tab name": [(host) => host.tab("Spring").setName("Frühling"), "Frühling", "Date", 2],
  "a tab before it": [(host) => host.spreadsheet().insertSheet("Kit", 0), "Spring", "Date", 2],
  "rows put in and taken out": [
    (host) => {
      host.tab("Spring").insertRowsAfter(4, 3);
      host.tab("Spring").deleteRows(5, 2);
    },
    "Spring",
    "Date",
    2,
  ],
};

test.each(Object.keys(changes))(
  "an answer about a column outlives %s, saving the file and opening it again",
  async (name) => {
    const [change, ...where] = changes[name]!;
    const expected = [...where, "day first"];
    const host = await answered();
    change(host);
    expect([view(host).questions, standing(host)]).toEqual([[], [expected]]);
    const again = await reopened(host);
    expect([view(again).questions, standing(again)]).toEqual([[], [expected]]);
    expect(view(again).tabs).toContainEqual(
      expect.objectContaining({ tab: expected[0], table: "Jumps", rows: 3 }),
    );
    // And the tag is alive in the file, not only its place.
    again.tab(String(expected[0])).insertColumnsAfter(1, 2);
    expect(standing(again)).toEqual([
      [expected[0], expected[1], Number(expected[2]) + 2, expected[3]],
    ]);
  },
  60_000,
);

test("undoing a move of columns takes the answer back with it", async () => {
  const host = await answered();
  const tab = host.tab("Spring");
  tab.moveColumns(tab.getRange("B:B"), 5);
  expect(standing(host)).toEqual([["Spring", "Date", 4, "day first"]]);
  host.undo();
  expect(standing(host)).toEqual([["Spring", "Date", 2, "day first"]]);
});

test("a column changed in another program is known by what stands in it, not by its old place", async () => {
  const host = await answered();
  const { tabs, ...kept } = host.workbook();
  // Another program knows nothing of our tags: it puts a column in before, and they stay behind.
  const cells = tabs[0]!.cells.map((row) => [{ value: "x" }, ...row]);
  const again = await opened({}, { ...kept, tabs: [{ ...tabs[0]!, cells }], bundleSource });
  expect(standing(again)).toEqual([["Spring", "Date", 3, "day first"]]);
  expect(view(again).questions.filter(({ about }) => about === "date order")).toEqual([]);
});

test("only a whole row or column takes a tag, as on the platform", async () => {
  const host = await opened(spring, { bundleSource });
  const tab = host.tab("Spring");
  expect(() => tab.getRange("B1:B3").addDeveloperMetadata("a", "b")).toThrow(
    "Developer metadata may only be added to",
  );
  tab.getRange("B:B").addDeveloperMetadata("a", "b");
  tab.getRange("2:2").addDeveloperMetadata("a", "c");
  const values = (type: "ROW" | "COLUMN") =>
    tab
      .createDeveloperMetadataFinder()
      .withKey("a")
      .withLocationType(type)
      .find()
      .map((tag) => tag.getValue());
  expect([values("COLUMN"), values("ROW")]).toEqual([["b"], ["c"]]);
  tab.insertColumnsAfter(1, 1);
  const [column] = tab.createDeveloperMetadataFinder().withValue("b").find();
  expect(column!.getLocation().getColumn()!.getColumn()).toBe(3);
});
