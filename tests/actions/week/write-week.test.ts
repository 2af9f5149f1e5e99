import type { PlannedLine } from "../../../src/actions/week/plan-lines";
import { takeBackWeek, weekDifference } from "../../../src/actions/week/write-week";
import { writtenKept } from "../../../src/actions/week/written-before";
import { memoryWorkbook } from "../memory-workbook";
import { writeWeek } from "./write-alone";

// Invented lines of the invented club; only the writing is under test here.
const line = (athlete: string, session: number, loadKg: number, why = "Hold."): PlannedLine => ({
  athlete,
  session,
  day: session === 1 ? "2026-06-30" : "2026-07-02",
  cells: () => ({
    athlete,
    marker: 50,
    today: (cell) => ({ formula: `=${cell("marker")}&" kg"` }),
    day: { day: session === 1 ? "2026-06-30" : "2026-07-02" },
    sets: "3×5",
    load: loadKg,
    plates: "20+2.5",
    floor: 0.51,
    stack: "5x15",
    contacts: 60,
    assistance: "=split squat 2×6",
    why,
  }),
});
const monday = "2026-06-29";
const week = (lines: readonly PlannedLine[], athletes: readonly string[] | null = null) => ({
  monday,
  lines,
  unit: "kg" as const,
  athletes,
});
const two = [line("Tomas Reyerson", 1, 85), line("Priya Tellander", 1, 67.5)];
const three = [...two, line("Priya Tellander", 2, 67.5)];
const changed = [line("Tomas Reyerson", 1, 82.5, "Load held."), three[1]!, three[2]!];
const coachTab = {
  Sets: [
    ["Athlete", "Date"],
    ["Tomas Reyerson", "2026-06-25"],
  ],
};
const rowsOf = (book: ReturnType<typeof memoryWorkbook>) =>
  book.values(book.tabNamed("Next week").id).slice(4);
const [athleteAt, typedAt, loadAt, lineAt] = [0, 2, 6, 13];

test("a first writing makes the tab with cautions, headings and one line for each session", () => {
  const book = memoryWorkbook(coachTab);
  expect(writeWeek(book, week(three)).said).toBe("3 rows new.");
  const values = book.values(book.tabNamed("Next week").id);
  expect(values[0]![0]).toBe("Next week: 29 Jun to 5 Jul");
  expect(values[3]!.slice(0, 4)).toEqual(["Athlete", "Marker kg", "Type speed, m/s", "Lift today"]);
  expect(rowsOf(book).map((row) => [row[athleteAt], row[loadAt], row[lineAt]])).toEqual([
    ["Tomas Reyerson", 85, "2026-06-29 Tomas Reyerson 1"],
    ["Priya Tellander", 67.5, "2026-06-29 Priya Tellander 1"],
    ["Priya Tellander", 67.5, "2026-06-29 Priya Tellander 2"],
  ]);
  expect(book.formulas(book.tabNamed("Next week").id)[5]![3]).toBe('=B6&" kg"');
});

test("text that begins like a formula is written as text", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(two));
  const { id } = book.tabNamed("Next week");
  expect([book.values(id)[4]![11], book.formulas(id)[4]![11]]).toEqual(["=split squat 2×6", ""]);
});

test("all lines of a first writing go in with one write, after the headings", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  expect(book.calls.filter((call) => call === "write")).toHaveLength(2);
});

test("in a large squad changes that lie apart take few writes, and what the coach typed among them stays", () => {
  const names = Array.from({ length: 40 }, (_, i) => `Runner ${String.fromCharCode(65 + i)}`);
  const before = names.map((name) => line(name, 1, 85));
  const after = names.map((name, i) =>
    i % 2 === 0 ? line(name, 1, 82.5, "Load held.") : line(name, 1, 85),
  );
  const typed = (book: ReturnType<typeof memoryWorkbook>) => {
    book.type("Next week", 9, typedAt + 1, "0.79");
    book.type("Next week", 11, loadAt + 1, 60);
    book.type("Next week", 20, loadAt + 1, 62.5);
  };
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(before));
  typed(book);
  const calls = book.calls.length;
  expect(writeWeek(book, week(after)).said).toBe(
    "20 rows changed, 20 rows the same. Yours, kept: G11, G20.",
  );
  // Left of what is typed; right of it above, beside (both sides) and below each of the two loads.
  expect(book.calls.slice(calls).filter((call) => call === "write")).toHaveLength(8);
  const fresh = memoryWorkbook(coachTab);
  writeWeek(fresh, week(after));
  typed(fresh);
  expect(rowsOf(book)).toEqual(rowsOf(fresh));
  expect(book.formulas(book.tabNamed("Next week").id)).toEqual(
    fresh.formulas(fresh.tabNamed("Next week").id),
  );
});

test("writing the same week again writes nothing", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  const before = book.all();
  const calls = book.calls.length;
  expect(writeWeek(book, week(three)).said).toBe("3 rows the same.");
  expect(book.all()).toEqual(before);
  expect(book.calls.slice(calls)).not.toContain("write");
});

test("only the cells that differ are replaced, and a typed speed and the coach's own cells stay", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  book.type("Next week", 5, typedAt + 1, ".79 .80");
  book.type("Next week", 6, loadAt + 1, 60);
  book.type("Next week", 7, 17, "bring straps");
  const plan = [changed[0]!, line("Priya Tellander", 1, 70), three[2]!];
  expect(weekDifference(book, week(plan))).toMatchObject({
    changed: ["2026-06-29 Tomas Reyerson 1"],
    kept: ["G6"],
  });
  expect(writeWeek(book, week(plan)).said).toBe("1 row changed, 2 rows the same. Yours, kept: G6.");
  const rows = rowsOf(book);
  expect([rows[0]![loadAt], rows[0]![typedAt], rows[1]![loadAt], rows[2]![16]]).toEqual([
    82.5,
    ".79 .80",
    60,
    "bring straps",
  ]);
});

test("a coach's formula in one of our cells stays, whatever its value", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  book.type("Next week", 5, loadAt + 1, 85, "=80+5");
  writeWeek(book, week(changed));
  expect(book.formulas(book.tabNamed("Next week").id)[4]![loadAt]).toBe("=80+5");
});

test("lines are found again after the coach has sorted the rows and put in a column", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  book.insertColumn("Next week", 6);
  book.sortRows("Next week", 5, (row) => String(row[athleteAt]));
  // The formulas of moved rows are written anew for their own rows.
  expect(writeWeek(book, week(changed)).said).toBe("3 rows changed.");
  const rows = rowsOf(book);
  expect(rows.map((row) => [row[0], row[7]])).toEqual([
    ["Priya Tellander", 67.5],
    ["Priya Tellander", 67.5],
    ["Tomas Reyerson", 82.5],
  ]);
});

test("writing one athlete leaves every other line as it is", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  expect(writeWeek(book, week(changed, ["Tomas Reyerson"])).said).toBe("1 row changed.");
  expect(rowsOf(book)).toHaveLength(3);
});

/** The coach deletes what stands in a line's row. */
const deleteLine = (book: ReturnType<typeof memoryWorkbook>, name: string) => {
  const row = 5 + rowsOf(book).findIndex((cells) => cells[lineAt] === name);
  for (let column = 1; column <= 14; column++) book.type("Next week", row, column, "");
};
const linesIn = (book: ReturnType<typeof memoryWorkbook>) =>
  rowsOf(book).flatMap((row) => (row[lineAt] ? [String(row[lineAt])] : []));

test("a row the coach has deleted stays deleted and is named, until it is asked for again", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  const [tomas, priya, thursday] = linesIn(book);
  deleteLine(book, thursday!);
  const deleted = "Deleted in the tab, not written again: Priya Tellander, Thu 2 Jul.";
  const known = weekDifference(book, week(changed))!;
  expect(known.deleted.map(({ athlete, session }) => [athlete, session])).toEqual([
    ["Priya Tellander", 2],
  ]);
  expect(writeWeek(book, week(changed)).said).toBe(`1 row changed, 1 row the same. ${deleted}`);
  // Another athlete's line, another week: the deleted row is known all the while.
  expect(writeWeek(book, week(three, ["Tomas Reyerson"])).said).toBe("1 row changed.");
  writeWeek(book, { ...week(two), monday: "2026-07-06" });
  expect(writeWeek(book, week(three, ["Priya Tellander"])).said).toBe(`1 row the same. ${deleted}`);
  expect(linesIn(book).filter((name) => name.startsWith(monday))).toEqual([tomas, priya]);
  expect(writeWeek(book, { ...week(three), again: true }).said).toBe("1 row new, 2 rows the same.");
  expect(linesIn(book)).toContain(thursday);
  expect(writeWeek(book, week(three)).said).toBe("3 rows the same.");
});

test("a week that is gone from the tab altogether is written like a new one, one taken back afresh", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  for (const name of linesIn(book)) deleteLine(book, name);
  expect(writeWeek(book, week(three)).said).toBe("3 rows new.");
  deleteLine(book, linesIn(book)[0]!);
  takeBackWeek(book, monday);
  expect(writeWeek(book, week(three)).said).toBe("3 rows new.");
});

test("a row deleted is not lost sight of, nor written, where a writing fails at any one call", () => {
  const start = () => {
    const book = memoryWorkbook(coachTab);
    writeWeek(book, week(three));
    deleteLine(book, linesIn(book)[1]!);
    return book;
  };
  const more = [...changed, line("Oona Petrakell", 1, 62.5)];
  everyFailure(start, (book) => void writeWeek(book, week(more)));
  everyFailure(start, (book) => void writeWeek(book, { ...week(more), again: true }));
});

test("a line no longer planned is taken out unless the coach has typed in its row", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  book.type("Next week", 6, typedAt + 1, 0.8);
  const said = writeWeek(book, week([three[0]!])).said;
  expect(said).toBe("1 row taken out, 1 row the same. Yours, kept: C6.");
  expect(rowsOf(book).map((row) => row[athleteAt])).toEqual([
    "Tomas Reyerson",
    "Priya Tellander",
    "",
  ]);
});

test("taking back empties the lines of that week only, but for rows with something of the coach's", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  writeWeek(book, { ...week(two), monday: "2026-07-06" });
  book.type("Next week", 5, typedAt + 1, 0.8);
  expect(takeBackWeek(book, monday).said).toBe("Taken back: 2 rows. Yours, kept: C5.");
  expect(rowsOf(book).map((row) => row[lineAt])).toEqual([
    "2026-06-29 Tomas Reyerson 1",
    "",
    "",
    "2026-07-06 Tomas Reyerson 1",
    "2026-07-06 Priya Tellander 1",
  ]);
});

test("taking back where nothing was written says so", () => {
  expect(takeBackWeek(memoryWorkbook(coachTab), monday).said).toBe(
    "No row was taken back; the week is proposed afresh.",
  );
});

test("a tab of that name with other headings is refused by name, and nothing is written", () => {
  const book = memoryWorkbook({
    "Next week": [
      ["Mon", "Tue"],
      ["run", "gym"],
    ],
  });
  const before = book.all();
  expect(() => writeWeek(book, week(two))).toThrow(/has no heading “Athlete”.*Nothing was written/);
  expect(book.all()).toEqual(before);
});

test("a line that stands twice is refused with both rows, and nothing is written", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(two));
  book.type("Next week", 9, lineAt + 1, "2026-06-29 Tomas Reyerson 1");
  const before = book.all();
  expect(() => writeWeek(book, week(changed))).toThrow(/rows 5 and 9/);
  expect(book.all()).toEqual(before);
});

test("a plan with a line twice or a number that is none is our mistake and writes nothing", () => {
  const book = memoryWorkbook(coachTab);
  const before = book.all();
  expect(() => writeWeek(book, week([two[0]!, two[0]!]))).toThrow("planned twice");
  expect(() => writeWeek(book, week([line("Tomas Reyerson", 1, Number.NaN)]))).toThrow("number");
  expect(book.all()).toEqual(before);
});

/** Does a story to the end, then again with each call of it failing once and the step run again. */
function everyFailure(
  start: () => ReturnType<typeof memoryWorkbook>,
  act: (book: ReturnType<typeof memoryWorkbook>) => void,
): void {
  const whole = start();
  const from = whole.calls.length;
  act(whole);
  const calls = whole.calls.length - from;
  expect(calls).toBeGreaterThan(5);
  const expected = whole.all();
  for (let failing = 1; failing <= calls; failing++) {
    const book = start();
    book.failAt = book.calls.length + failing;
    expect(() => act(book)).toThrow("The platform failed");
    book.failAt = Number.POSITIVE_INFINITY;
    act(book);
    expect(book.all()).toEqual(expected);
    act(book);
    expect(book.all()).toEqual(expected);
  }
}

test("a first writing that fails at any one call is completed by writing again", () => {
  everyFailure(
    () => memoryWorkbook(coachTab),
    (book) => void writeWeek(book, week(three)),
  );
});

test("a changed week that fails at any one call is completed by writing again, typed speeds kept", () => {
  everyFailure(
    () => {
      const book = memoryWorkbook(coachTab);
      writeWeek(book, week(three));
      book.type("Next week", 5, typedAt + 1, ".79");
      book.type("Next week", 6, loadAt + 1, 60);
      return book;
    },
    (book) => void writeWeek(book, week([...changed, line("Oona Petrakell", 1, 62.5)])),
  );
});

test("a taking back that fails at any one call is completed by taking back again", () => {
  everyFailure(
    () => {
      const book = memoryWorkbook(coachTab);
      writeWeek(book, week(three));
      book.insertColumn("Next week", 6);
      return book;
    },
    (book) => void takeBackWeek(book, monday),
  );
});

test("a long week is remembered in parts the platform takes", () => {
  const book = memoryWorkbook(coachTab);
  const many = Array.from({ length: 60 }, (_, i) => line(`Runner ${i}`, 1, 50, "ü".repeat(200)));
  writeWeek(book, week(many));
  expect(writeWeek(book, week(many)).said).toBe("60 rows the same.");
});

/** The tab as a version without speed floor and assistance left it, with a coach's own notes beside it. */
function olderTab(): ReturnType<typeof memoryWorkbook> {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  const known = writtenKept.read(book).value;
  book.deleteColumn("Next week", 12);
  book.deleteColumn("Next week", 9);
  const without = Object.fromEntries(
    Object.entries(known).map(([name, { floor, assistance, ...columns }]) => [name, columns]),
  );
  book.alone(() => writtenKept.put(book, without));
  book.forget(["next week looks"]);
  book.type("Next week", 5, typedAt + 1, ".79 .80");
  book.type("Next week", 6, loadAt + 1, 60);
  book.type("Next week", 5, 14, "straps");
  return book;
}

test("a tab of an older version is given its new columns at the right end, the coach's cells kept", () => {
  const book = olderTab();
  const before = book.values(book.tabNamed("Next week").id).map((row) => [...row]);
  // The difference is shown before anything is done to the tab.
  expect(weekDifference(book, week(three))).toMatchObject({ kept: ["G6"] });
  expect(writeWeek(book, week(three)).said).toBe("3 rows changed. Yours, kept: G6.");
  const after = book.values(book.tabNamed("Next week").id);
  before.forEach((row, i) => {
    // Formulas are written for their own row; all else that stood there stands there still.
    row.forEach((cell, j) => {
      if (j !== 3) expect(after[i]![j]).toEqual(cell);
    });
  });
  expect(after[3]!.slice(14)).toEqual(["Speed floor", "Assistance"]);
  expect(after.slice(4).map((row) => row.slice(14))).toEqual(
    Array(3).fill([0.51, "=split squat 2×6"]),
  );
  expect(writeWeek(book, week(three)).said).toBe("3 rows the same. Yours, kept: G6.");
});

test("bringing an older tab up to date may fail at any one call and is completed by writing again", () => {
  everyFailure(olderTab, (book) => void writeWeek(book, week(three)));
});

test("a heading that was written here and is gone is the coach's doing: refused, not made anew", () => {
  const book = memoryWorkbook(coachTab);
  writeWeek(book, week(three));
  book.type("Next week", 4, 9, "Floor");
  const before = book.all();
  expect(() => writeWeek(book, week(three))).toThrow(
    /no heading “Speed floor”.*Nothing was written/,
  );
  expect(book.all()).toEqual(before);
});
