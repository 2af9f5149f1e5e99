import type { RowCheckView } from "../../../src/actions/messages";
import { serveRequest } from "../../../src/actions/requests";
import { kindCounts } from "../../../src/words/row-kinds";
import { memoryWorkbook } from "../memory-workbook";

const today = "2026-06-28";
const squad = [
  ["Athlete", "Group"],
  ["Ilka Brandmoor", "track"],
  ["Tomas Reyerson", "road"],
];
const jumpRow = (day: Date, athlete: string, height: unknown = 42) => [
  day,
  athlete,
  "box jump",
  height,
];
const jumpHead = ["Date", "Athlete", "Test", "Height (cm)"];
const tuesday = (week: number) => new Date(2026, 2, 3 + 7 * week);
const ask = <Answer>(book: ReturnType<typeof memoryWorkbook>, name: string, more: object = {}) =>
  serveRequest(book, name, { today, ...more }) as Answer;
const check = (book: ReturnType<typeof memoryWorkbook>) => ask<RowCheckView>(book, "rowCheck");

test("a workbook in which no row was found says so, one with a row does not", () => {
  expect(check(memoryWorkbook({ Sheet1: [] }))).toMatchObject({
    noRows: true,
    summary: "No rows found yet",
  });
  expect(check(memoryWorkbook({ Athletes: squad })).noRows).toBe(false);
});

test("an unknown name stands once over all tables, at its first cell, and counts among the kinds", () => {
  const book = memoryWorkbook({
    Athletes: squad,
    Jumps: [
      jumpHead,
      jumpRow(tuesday(0), "Ilka Brandmoor"),
      jumpRow(tuesday(1), "Tomas Reyersen"),
      jumpRow(tuesday(2), "Tomas Reyersen"),
    ],
    Diary: [
      ["Date", "Athlete", "Sleep (h)"],
      [tuesday(1), "Tomas Reyersen", 8],
    ],
  });
  const checked = check(book);
  const { names, summary } = checked;
  expect(names).toEqual([
    {
      name: "Tomas Reyersen",
      tab: "Jumps",
      tabId: book.tabNamed("Jumps").id,
      cell: "B3",
      rows: 3,
      near: ["Tomas Reyerson"],
      toDo: "Is this Tomas Reyerson? Say so under Rows in the sidebar, or correct the name in its cells.",
    },
  ]);
  expect(kindCounts(checked)).toEqual([{ kind: "name not among the athletes", count: 1 }]);
  expect(summary).toBe("6 of 6 rows read, 3 under a name that is not among the athletes");
  const said = ask<RowCheckView>(book, "answerName", {
    written: "Tomas Reyersen",
    athlete: "Tomas Reyerson",
    same: false,
  });
  expect(said.names.map(({ near, toDo }) => [near, toDo])).toEqual([
    [
      [],
      "Say here who this is, or that they are not in the squad; or correct the name, or add the athlete to the Athletes table.",
    ],
  ]);
  const yes = { written: "Tomas Reyersen", athlete: "Tomas Reyerson", same: true };
  expect(ask<RowCheckView>(book, "answerName", yes).names).toEqual([]);
});

test("without an Athletes table a near spelling is asked about, a plain name is not", () => {
  const book = memoryWorkbook({
    Jumps: [
      jumpHead,
      jumpRow(tuesday(0), "Ilka Brandmoor"),
      jumpRow(tuesday(1), "I. Brandmoor"),
      jumpRow(tuesday(1), "Tomas Reyerson"),
    ],
  });
  expect(check(book).names.map(({ name, cell, near }) => [name, cell, near])).toEqual([
    ["I. Brandmoor", "B3", ["Ilka Brandmoor"]],
  ]);
});

test("a day far from all others is shown though its row counts, and its mend is written as a day", () => {
  const rows = Array.from({ length: 14 }, (_, week) => jumpRow(tuesday(week), "Ilka Brandmoor"));
  const book = memoryWorkbook({
    Athletes: squad,
    Jumps: [jumpHead, ...rows, jumpRow(new Date(2026, 10, 5), "Tomas Reyerson")],
  });
  const checked = check(book);
  const { problems, summary } = checked;
  expect(kindCounts(checked)).toEqual([{ kind: "odd day", count: 1 }]);
  expect(summary).toBe("17 of 17 rows read");
  const [odd] = problems;
  expect(odd).toMatchObject({ tab: "Jumps", cell: "A16", found: "“2026-11-05”" });
  expect(odd!.mend).toBe("2026-05-11");
  const { tabId, cell, found, mend } = odd!;
  ask(book, "mendCell", { tabId, cell, found, mend });
  expect(book.values(odd!.tabId)[15]![0]).toEqual(new Date(2026, 4, 11));
});

test("a cell changed since it was listed is not written, though the same value is proposed for it still", () => {
  const head = ["Date", "Athlete", "Exercise", "Set", "Load (kg)", "Speed (m/s)"];
  const set = (week: number, speed: unknown) => [
    tuesday(week),
    "Ilka Brandmoor",
    "back squat",
    1,
    60,
    speed,
  ];
  const book = memoryWorkbook({
    Athletes: squad,
    Sets: [head, set(0, 0.64), set(1, 62), set(2, 0.63)],
  });
  const { problems } = check(book);
  const { tabId, cell, found, mend } = problems[0]!;
  expect([cell, found, mend]).toEqual(["F3", "“62”", "0.62"]);
  book.type("Sets", 3, 6, "62 ");
  const before = book.all();
  expect(check(book).problems[0]).toMatchObject({ cell, mend });
  expect(() => ask(book, "mendCell", { tabId, cell, found, mend })).toThrow(
    "F3 holds “62 ” now; “62” was listed. Nothing was written: check again.",
  );
  book.type("Sets", 3, 6, "");
  expect(() => ask(book, "mendCell", { tabId, cell, found, mend })).toThrow(
    "F3 is blank now; “62” was listed. Nothing was written: check again.",
  );
  book.type("Sets", 3, 6, 62);
  expect(book.all()).not.toEqual(before);
  ask(book, "mendCell", { tabId, cell, found, mend });
  expect(book.values(tabId)[2]![5]).toBe(0.62);
  // Its answer lost on the way, the sidebar may ask again: nothing is written twice.
  const mended = book.all();
  expect(ask(book, "mendCell", { tabId, cell, found, mend })).toMatchObject({
    said: "Sets F3 holds 0.62 already.",
  });
  expect(book.all()).toEqual(mended);
});

test("kinds are counted in plain words", () => {
  const book = memoryWorkbook({
    Athletes: squad,
    Jumps: [
      jumpHead,
      jumpRow(tuesday(0), "Ilka Brandmoor", "good"),
      jumpRow(tuesday(1), "Ilka Brandmoor", 4200),
      jumpRow(tuesday(2), "Ilka Brandmoor", 42),
    ],
  });
  expect(kindCounts(check(book))).toEqual([
    { kind: "figure hardly possible", count: 1 },
    { kind: "no number", count: 1 },
  ]);
});
