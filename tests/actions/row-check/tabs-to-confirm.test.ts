import type { RowCheckView, SetUpView } from "../../../src/actions/messages";
import type { ReadWorkbook } from "../../../src/actions/read-workbook";
import { serveRequest } from "../../../src/actions/requests";
import { tabsToConfirm } from "../../../src/actions/row-check/tabs-to-confirm";
import { squadView } from "../../../src/actions/squad/squad-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { readTable } from "../../../src/rows/read-table";
import { memoryWorkbook } from "../memory-workbook";

const today = "2026-06-28";
const jumpRows = [
  [new Date(2026, 5, 2), "Ilka Brandmoor", "box jump", 42],
  [new Date(2026, 5, 9), "Ilka Brandmoor", "box jump", 43],
  [new Date(2026, 5, 16), "Ilka Brandmoor", "box jump", 42.5],
];
/** A log of jumps under a heading for the days that nobody knows. */
const book = (heading: string) =>
  memoryWorkbook({
    Athletes: [
      ["Athlete", "Group"],
      ["Ilka Brandmoor", "track"],
    ],
    "Jump log": [[heading, "Athlete", "Test", "Height (cm)"], ...jumpRows],
    Shopping: [
      ["Item", "Price"],
      ["chalk", 4],
    ],
  });
const ask = <Answer>(of: ReturnType<typeof book>, name: string, more: object = {}) =>
  serveRequest(of, name, { today, ...more }) as Answer;

test("a tab that lacks a single heading of a table is not passed over in silence", () => {
  const squad = book("Measured in the gym");
  const { problems, summary, leftAlone } = ask<RowCheckView>(squad, "rowCheck");
  expect(leftAlone).toEqual(["Shopping"]);
  const { id } = squad.tabNamed("Jump log");
  expect(problems).toEqual([
    {
      tab: "Jump log",
      tabId: id,
      cell: "A1",
      found: "no column for “date”",
      why: "None of its rows count yet.",
      toDo: "Looks like Jumps. Say under Set up whether it is, and which column is which.",
      kind: "table-to-confirm",
      mend: null,
      right: null,
    },
  ]);
  expect(summary).toBe("1 of 1 row read");
  expect(squadView(squad, dayFromIso(today)!).toCheck).toBe(1);
});

test("said to be that table, with its column named, its rows count and nothing is asked any more", () => {
  const squad = book("Measured in the gym");
  const { id } = squad.tabNamed("Jump log");
  ask(squad, "answerTable", { tabId: id, table: "Jumps" });
  const { questions } = ask<SetUpView>(squad, "setUpView");
  expect(questions.map(({ about }) => about)).toEqual(["meaning"]);
  expect(ask<RowCheckView>(squad, "rowCheck").waiting).toBe(
    "To answer under Set up: In Jump log, what is “Measured in the gym”?",
  );
  ask(squad, "answerColumn", {
    tabId: id,
    column: 1,
    heading: "Measured in the gym",
    field: "day",
  });
  const { problems, summary, waiting } = ask<RowCheckView>(squad, "rowCheck");
  expect([problems, summary, waiting]).toEqual([[], "4 of 4 rows read", ""]);
});

test("said to be no table, it is left alone", () => {
  const squad = book("Measured in the gym");
  ask(squad, "answerTable", { tabId: squad.tabNamed("Jump log").id, table: null });
  ask(squad, "answerTable", { tabId: squad.tabNamed("Shopping").id, table: null });
  const { problems, leftAlone } = ask<RowCheckView>(squad, "rowCheck");
  expect([problems, leftAlone]).toEqual([[], []]);
});

test("a tab that may be two tables is asked about once, with both", () => {
  const [tab] = book("Measured").tabs();
  const reading = readTable("Jumps", []);
  const open = (["Sets", "Jumps"] as const).map((table) => ({
    tab: tab!,
    table,
    sureness: 0.5,
    understanding: { headerRow: 3, reading },
  }));
  const asked = tabsToConfirm({ tabs: open } as unknown as ReadWorkbook);
  expect(asked.map(({ cell, toDo }) => [cell, toDo.split(".")[0]])).toEqual([
    ["A3", "Looks like Sets and Jumps"],
  ]);
});

test("tabs of our own are not told as left alone", () => {
  const squad = memoryWorkbook({
    "Next week": [["Athlete"]],
    Season: [["x"]],
    Kit: [["x"]],
    // The answer of ROW_CHECK in a tab of its own, and one that only begins like it.
    Check: [
      ["Sets"],
      ["Cell", "Found", "What to do", "Why it matters"],
      ["H8", "no load", "x", "y"],
    ],
    Cells: [
      ["Cell", "Found", "What to do"],
      ["H8", "no load", "x"],
    ],
  });
  expect(ask<RowCheckView>(squad, "rowCheck").leftAlone).toEqual(["Kit", "Cells"]);
});

test("a tab that is probably a table is asked about where its rows are looked for", () => {
  const squad = memoryWorkbook({
    Contacts: [
      ["Name", "Phone", "Email", "Notes"],
      ["Ilka Brandmoor", "555", "ilka", "mornings"],
    ],
  });
  const { problems } = ask<RowCheckView>(squad, "rowCheck");
  expect(problems.map(({ tab, cell, found, kind }) => [tab, cell, found, kind])).toEqual([
    ["Contacts", "A1", "a table?", "table-to-confirm"],
  ]);
});

test.each(["Session date", "Test date", "Date of test", "When"])(
  "days under “%s” are days",
  (heading) => {
    const { problems, summary } = ask<RowCheckView>(book(heading), "rowCheck");
    expect([problems, summary]).toEqual([[], "4 of 4 rows read"]);
  },
);

test("a tab said to be sets keeps the jumps that stand among them", () => {
  const squad = memoryWorkbook({
    Log: [
      ["Date", "Athlete", "Exercise", "kg x sets x reps"],
      [new Date(2026, 5, 2), "Ilka Brandmoor", "squat", "85x3x5"],
      [new Date(2026, 5, 2), "Ilka Brandmoor", "box jump", "5x15 o"],
    ],
  });
  const found = () =>
    ask<SetUpView>(squad, "setUpView").tabs.map(({ table, rows }) => [table, rows]);
  const before = found();
  ask(squad, "answerTable", { tabId: squad.tabNamed("Log").id, table: "Sets" });
  expect([before, found()]).toEqual([before, before]);
  expect(before.map(([table]) => table)).toEqual(["Sets", "Jumps"]);
});

test("a list of athletes called Squad is read where no other tab is one", () => {
  const names = [
    ["Name", "Group"],
    ["Ilka Brandmoor", "track"],
  ];
  const found = (tabs: Readonly<Record<string, unknown[][]>>) =>
    ask<SetUpView>(memoryWorkbook(tabs), "setUpView").tabs.map(({ tab, table }) => [tab, table]);
  expect(found({ Squad: names })).toEqual([["Squad", "Athletes"]]);
  expect(
    found({
      Squad: [
        ["Athlete", "Word"],
        ["Ilka Brandmoor", "holding"],
      ],
      Team: names,
    }),
  ).toEqual([
    ["Team", "Athletes"],
    ["Squad", null],
  ]);
  const squad = memoryWorkbook({ Squad: names });
  ask(squad, "answerTable", { tabId: squad.tabNamed("Squad").id, table: null });
  expect(ask<SetUpView>(squad, "setUpView").tabs.map(({ table }) => table)).toEqual([null]);
});
