import type { RowCheckView, SetUpView, SquadView, WeekView } from "../../src/actions/messages";
import { requests, serveRequest } from "../../src/actions/requests";
import { tableNames } from "../../src/rows/table-name";
import { memoryWorkbook } from "./memory-workbook";
import { sampleClub } from "./sample-club";

// Whole sample workbooks are judged.

const today = "2026-06-28";
const club = () => sampleClub();
const ask = <Answer>(book: ReturnType<typeof club>, name: string, message: unknown) =>
  serveRequest(book, name, message) as Answer;

test("every answer is plain data: it comes back the same from JSON", () => {
  const book = club();
  for (const [name, message] of [
    ["squadView", { today }],
    ["athleteView", { today, athlete: "Tomas Reyerson" }],
    ["rowCheck", { today }],
    ["setUpView", { today }],
    ["weekView", { today, monday: null, changes: [] }],
  ] as const) {
    const answer = ask(book, name, message);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  }
});

test("looking changes nothing in the workbook, and reads each tab once", () => {
  const book = club();
  const before = book.all();
  for (const name of ["squadView", "rowCheck", "setUpView"]) {
    const from = book.calls.length;
    ask(book, name, { today });
    expect(book.calls.slice(from).filter((call) => call === "values")).toHaveLength(
      tableNames.length,
    );
  }
  ask(book, "weekView", { today, monday: null, changes: [] });
  expect(book.all()).toEqual(before);
});

test.each([
  ["squadView", {}],
  ["squadView", { today: "2026-02-30" }],
  ["squadView", { today, more: 1 }],
  ["goToCell", { tabId: 100, cell: "A0" }],
  ["goToCell", { tabId: 100, cell: "=A1" }],
  ["mendCell", { today, tabId: -1, cell: "A1", found: "“62”", mend: "1" }],
  ["answerTable", { today, tabId: 100, table: "Secrets" }],
  ["writeWeek", { today, monday: "soon", changes: [], athletes: null }],
  ["squadView", null],
])("%s with %j is refused before anything is read", (name, message) => {
  const book = club();
  expect(() => ask(book, name, message)).toThrow("The sidebar sent");
  expect(book.calls).toEqual([]);
});

test.each(["toString", "constructor", "__proto__", "onOpen", "compute", ""])(
  "“%s” is no request, whatever else it is",
  (name) => {
    expect(() => ask(club(), name, {})).toThrow("may not ask for");
    expect(Object.keys(requests)).not.toContain(name);
  },
);

test("a proposed value is written into its one cell, and only while the problem stands there", () => {
  const book = club();
  const { problems } = ask<RowCheckView>(book, "rowCheck", { today });
  const { tabId, tab, cell, found, mend } = problems.find((one) => one.mend !== null)!;
  const cells = () =>
    (book.all() as { tabs: { cells: unknown[][] }[] }).tabs
      .flatMap((one) => one.cells.flat())
      .map((one) => JSON.stringify(one));
  const before = cells();
  const { said } = ask<{ said: string }>(book, "mendCell", { today, tabId, cell, found, mend });
  expect(said).toContain(`${tab} ${cell}`);
  const after = cells();
  expect(after).toHaveLength(before.length);
  const changed = after.filter((one, at) => one !== before[at]);
  expect(changed).toHaveLength(1);
  expect(ask(book, "mendCell", { today, tabId, cell, found, mend })).toMatchObject({
    said: `${tab} ${cell} holds ${mend} already.`,
  });
  expect(cells()).toEqual(after);
});

test("an answer about a tab outlives its new name, and can be changed", () => {
  const book = club();
  const { id } = book.tabNamed("Runs");
  ask(book, "answerTable", { today, tabId: id, table: null });
  book.rename("Runs", "Road");
  const tabOf = () =>
    ask<SetUpView>(book, "setUpView", { today }).tabs.find(({ tabId }) => tabId === id);
  expect(tabOf()).toMatchObject({ tab: "Road", table: null, found: "said" });
  ask(book, "answerTable", { today, tabId: id, table: "Runs" });
  expect(tabOf()).toMatchObject({ table: "Runs", found: "said" });
});

test("a spelling counts as an athlete only after a yes, a no ends the question, and both can be changed", () => {
  const book = club();
  const asked = () => ask<RowCheckView>(book, "rowCheck", { today }).names;
  const [one] = asked();
  const [athlete] = one!.near;
  ask(book, "answerName", { today, written: one!.name, athlete, same: false });
  expect(asked().find(({ name }) => name === one!.name)?.near).not.toContain(athlete);
  ask(book, "answerName", { today, written: one!.name, athlete, same: true });
  expect(asked().map(({ name }) => name)).not.toContain(one!.name);
  ask(book, "forgetName", { today, written: one!.name });
  expect(asked().map(({ name }) => name)).toContain(one!.name);
});

test("highlighting twice is highlighting once, and the coach's own rule stays first", () => {
  const book = memoryWorkbook({
    Squad: [
      ["Athlete", "Word"],
      ["Tomas Reyerson", "slipping"],
    ],
  });
  const own = { range: "A1:A9", formula: '=A1="injured"', colour: "#000000" };
  book.coachMark("Squad", own);
  serveRequest(book, "highlightSquad", {});
  const once = book.marks("Squad");
  serveRequest(book, "highlightSquad", {});
  expect(book.marks("Squad")).toEqual(once);
  expect(once[0]).toEqual(own);
  expect(once.length).toBeGreaterThan(2);
});

test("the squad shows every athlete once, those who fell first", () => {
  const { lines } = ask<SquadView>(club(), "squadView", { today });
  expect(new Set(lines.map(({ athlete }) => athlete)).size).toBe(12);
  const dresses = lines.map(({ dress }) => dress);
  expect(dresses.lastIndexOf("low")).toBeLessThan(dresses.indexOf("plain"));
  expect(lines.find(({ athlete }) => athlete === "Tomas Reyerson")).toMatchObject({
    word: "slipping",
  });
});

test("the proposed week, written, stands in the tab as shown, and a changed load is what is written", () => {
  const book = club();
  const changes = [{ athlete: "Tomas Reyerson", loadKg: 75 }];
  const view = ask<WeekView>(book, "weekView", { today, monday: null, changes });
  const sessions = view.lines.flatMap((line) =>
    line.sessions.map((session) => [line.athlete, session.loadKg]),
  );
  const message = { today, monday: view.monday, changes, athletes: null };
  ask(book, "writeWeek", message);
  const rows = book.values(book.tabNamed("Next week").id).slice(4);
  expect(rows.map((row) => [row[0], row[6]]).sort()).toEqual(sessions.sort());
  expect(rows.find((row) => row[0] === "Tomas Reyerson")?.[6]).toBe(75);
  const before = book.all();
  ask(book, "writeWeek", message);
  expect(book.all()).toEqual(before);
  expect(view.rowsToWrite).toBe(rows.length);
});
