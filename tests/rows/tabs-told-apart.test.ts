import { readAthletesArgument } from "../../src/rows/argument/athletes-argument";
import { readDayArgument } from "../../src/rows/argument/day-argument";
import { findTables } from "../../src/rows/find-tables";
import { IssueLog } from "../../src/rows/issue-log";
import { understandTable } from "../../src/rows/read-table";
import { problems, today } from "./layouts/short";

type Rows = readonly (readonly unknown[])[];
const tables = (name: string, cells: Rows) =>
  findTables([{ name, cells }], { today }).map(({ table, sureness }) => [
    table,
    Math.round(sureness * 1000) / 1000,
  ]);
const set = ["2026-05-12", "Ilka", "squat", 80];
const head = ["Date", "Athlete", "Exercise", "Load"];

test("a tab is the surer the more of its headings are known, and by its name", () => {
  // 0.35 for what is needed, 0.35 × the share of headings known, 0.15 for three more, 0.15 for the name;
  // little more than half of it where another table fits as well.
  expect(
    tables("Sheet1", [
      [...head, "Set", "Reps", "Note"],
      [...set, 1, 5, ""],
    ]),
  ).toEqual([["Sets", 0.85]]);
  expect(
    tables("My sets", [
      [...head, "Set", "Reps", "Note"],
      [...set, 1, 5, ""],
    ]),
  ).toEqual([["Sets", 1]]);
  expect(
    tables("Sheet1", [
      [...head, "Set"],
      [...set, 1],
    ]),
  ).toEqual([["Sets", 0.75]]);
  expect(
    tables("Sheet1", [
      [...head, "Weather", "Sky", "Moon", "Tide"],
      [...set, "a", "b", "c", "d"],
    ]),
  ).toEqual([["Sets", 0.289]]);
  expect(
    tables("", [
      ["Weather", "Sky"],
      ["rain", "grey"],
    ]),
  ).toEqual([]);
  expect(tables("", [])).toEqual([]);
  expect(tables("", [["", ""]])).toEqual([]);
});

test("a tab of one athlete is known by two further headings or more", () => {
  const of = (name: string, ...heads: readonly string[]) =>
    tables(name, [
      ["Date", ...heads],
      ["2026-05-12", ...heads.map(() => 5)],
    ]).map(([table]) => table);
  expect(of("Ilka Brandmoor", "Sleep", "Mood", "Stress")).toEqual(["Diary"]);
  expect(of("Ilka Brandmoor", "Sleep")).toEqual([]);
  expect(of("Ilka Brandmoor", "Minutes", "Km", "Exertion")).toEqual(["Runs"]);
  // A day is needed even of one athlete: without one the tab is asked about.
  expect(
    tables("Ilka Brandmoor", [
      ["Athlete", "Exercise", "Load", "Reps", "RIR"],
      ["Ilka", "squat", 80, 5, 2],
    ]),
  ).toEqual([["Sets", 0.5]]);
});

test("sets with jumps among them are both; a grid of numbers is one table", () => {
  const log = [
    ["Date", "Athlete", "Exercise", "kg x sets x reps"],
    ["2026-05-12", "Ilka", "squat", "85x3x5"],
    ["2026-05-12", "Ilka", "box jump", "5x15 o"],
  ];
  expect(tables("Log", log).map(([table]) => table)).toEqual(["Sets", "Jumps"]);
  expect(tables("Log", log.slice(0, 2)).map(([table]) => table)).toEqual(["Sets"]);
  const grid = (title: string, cell: unknown) => [
    [title, "", ""],
    ["", "12/5/2026", "13/5/2026"],
    ["Ilka", cell, cell],
  ];
  expect(tables("Spring", grid("Box jump", 40)).map(([table]) => table)).toEqual(["Jumps"]);
  expect(tables("Spring", grid("Squat", "85x1x5")).map(([table]) => table)).toEqual(["Sets"]);
  expect(tables("Spring", grid("Runs, min", 40)).map(([table]) => table)).toEqual(["Runs"]);
  expect(tables("Spring", grid("Mood", 4)).map(([table]) => table)).toEqual(["Diary"]);
});

test("a grid of which an answer would settle all is shown and asked about", () => {
  expect(
    tables("Gym", [
      ["", "12/5/2026", "13/5/2026"],
      ["Ilka", "85x3x5", "85x3x5"],
    ]),
  ).toEqual([["Sets", 0.5]]);
});

test("a range no layout fits: what it lacks is told, its rows are reported, its athlete offered", () => {
  const unknown = understandTable("Sets", [["Weather"], ["rain"], [""]], { today });
  expect([unknown.layout, unknown.headerRow]).toEqual(["not recognised", 0]);
  expect(unknown.reading.issues).toMatchObject([
    {
      code: "no-header",
      row: 1,
      column: 0,
      cell: "A1",
      found: "Weather",
      facts: { needed: "day, athlete, exercise, load" },
      dropsRow: true,
    },
  ]);
  const { rowsRead, rowsReported, rowsBlank, rowsHeading } = unknown.reading;
  expect([rowsRead, rowsReported, rowsBlank, rowsHeading]).toEqual([0, 2, 1, 0]);
  const lacking = understandTable(
    "Runs",
    [
      ["x", ""],
      ["Minutes", "Km"],
      [40, 8],
      [50, 10],
    ],
    { today, title: "Ilka" },
  );
  expect(lacking.reading.issues).toMatchObject([
    { code: "column-missing", row: 2, column: 0, facts: { field: "day" }, dropsRow: true },
    { code: "column-missing", row: 2, column: 0, facts: { field: "athlete" }, dropsRow: true },
  ]);
  expect([lacking.reading.rowsReported, lacking.reading.rowsHeading]).toEqual([2, 2]);
  expect(lacking.tabQuestions).toMatchObject([
    { about: "athlete", guess: "Ilka", samples: ["40 · 8", "50 · 10"] },
  ]);
  // The tab's name may be an athlete's, never a lift's.
  const lift = understandTable(
    "Sets",
    [
      ["Date", "Athlete", "Movement name", "Set", "Load", "Speed"],
      ["2026-05-12", "Ilka", "squat", 1, 80, 0.6],
    ],
    { today, title: "Ilka" },
  );
  expect(lift.layout).toBe("not recognised");
  expect(lift.tabQuestions).toMatchObject([{ about: "exercise", guess: null }]);
  expect(problems(understandTable("Sets", [], { today }).reading)).toEqual([]);
});

test("issues stand at the coach's own cells, from one; the whole row is column nought", () => {
  const log = new IssueLog("Sets", null, [["a"], ["b", "c"]]);
  log.addAtSource("not-a-day", 1, 1);
  log.add("needed-blank", 1, -1, "x", { heading: "y" }, true);
  expect(log.issues).toEqual([
    {
      table: "Sets",
      code: "not-a-day",
      row: 2,
      column: 2,
      cell: "B2",
      found: "c",
      facts: {},
      dropsRow: false,
    },
    {
      table: "Sets",
      code: "needed-blank",
      row: 2,
      column: 0,
      cell: "A2",
      found: "x",
      facts: { heading: "y" },
      dropsRow: true,
    },
  ]);
  expect([...log.dropped]).toEqual([1]);
  // What is found is what the coach wrote, not what was unfolded from it; past the rows there is nothing.
  log.add("not-a-day", 1, 0, "unfolded");
  log.add("not-a-day", 9, 0, "unfolded");
  log.addAtSource("not-a-day", 9, 0);
  expect(log.issues.slice(2).map(({ found }) => found)).toEqual(["b", "", ""]);
  const bare = new IssueLog("Sets");
  bare.addAtSource("not-a-day", 0, 0);
  expect(bare.issues[0]!.found).toBe("");
  const moved = new IssueLog("Sets", (row, column) => ({ row: row + 5, column: column + 2 }));
  moved.add("not-a-day", 1, 1, "x");
  expect([moved.issues[0]!.cell, moved.issues[0]!.found, moved.rowNumber(1)]).toEqual([
    "D7",
    "x",
    7,
  ]);
});

test("a formula's day is one cell; a range of several is none", () => {
  const found = (argument: unknown) => {
    const day = readDayArgument(argument);
    return day.ok ? day.value : day.refusal.code;
  };
  expect(found([["2026-06-16"]])).toBe(today);
  expect(found([["2026-06-16", "2026-06-16"]])).toBe("as-of-not-one-cell");
  expect(found([["2026-06-16"], ["2026-06-16"]])).toBe("as-of-not-one-cell");
  expect(found(["2026-06-16"])).toBe(today);
  expect(found("31/31/2026")).toBe("as-of-not-a-day");
  const ancient = new Date(2026, 0, 1);
  ancient.setFullYear(50);
  expect(found(ancient)).toBe("as-of-not-a-day");
});

test("a formula's athletes: boxes are blank, numbers are names, long ones are cut, a heading alone is nobody", () => {
  const names = (argument: unknown) =>
    readAthletesArgument(argument).asked.map(({ athlete }) => athlete);
  expect(names([["Ilka"], [true], [7], ["x".repeat(300)]])).toEqual([
    "Ilka",
    "",
    "7",
    "x".repeat(200),
  ]);
  expect(names([["Name"]])).toEqual(["Name"]);
  expect(names([["Name"], ["Ilka"]])).toEqual(["Ilka"]);
  expect(names([["Event"], ["Ilka"]])).toEqual(["Event", "Ilka"]);
  expect(names(["Ilka", "Kofi"])).toEqual(["Ilka", "Kofi"]);
  expect(
    names([
      ["Ilka", "a"],
      ["Kofi", "b"],
    ]),
  ).toEqual(["Ilka", "Kofi"]);
  expect(readAthletesArgument([["Athlete"], ["Ilka"]]).table).toBeNull();
  const late = (rows: number) => [
    ...Array.from({ length: rows }, () => ["x", ""]),
    ["Athlete", "Event"],
    ["Ilka", "mile"],
  ];
  expect(readAthletesArgument(late(9)).table?.records).toHaveLength(1);
  expect(readAthletesArgument(late(10)).table).toBeNull();
  expect(readAthletesArgument([["Athlete", "Event"]]).table).toBeNull();
});

test("days, athletes and one jump test are jumps; days and athletes with words nobody knows a diary in doubt", () => {
  const rows = (head: string, cell: unknown) => [
    ["Date", "Athlete", head],
    ["2026-05-12", "Ilka Brandmoor", cell],
    ["2026-05-19", "Ilka Brandmoor", cell],
  ];
  expect(tables("Testing", rows("CMJ", 38.5)).map(([table]) => table)).toEqual(["Jumps"]);
  const [[table, sureness] = []] = tables("Testing", rows("Vibe", 7));
  expect([table, Number(sureness) < 0.6]).toEqual(["Diary", true]);
});

test("“What” beside the lift is what was lifted, and no run", () => {
  const read = (what: unknown) => {
    const line = (on: string) => [on, "Ilka", "Squat", what, 0.6];
    const cells = [
      ["date", "who", "lift", "what", "speed"],
      line("12 May 2026"),
      line("14 May 2026"),
    ];
    const [found, ...others] = findTables([{ name: "Tab", cells }], { today });
    expect(others).toEqual([]);
    const { questions, tabQuestions } = found!.understanding;
    const asked = [
      ...questions.map(({ heading }) => heading),
      ...tabQuestions.map((one) => one.about),
    ];
    return [found!.table, found!.sureness < 0.6, ...asked];
  };
  expect(read("80x5x3")).toEqual(["Sets", false, "scheme order"]);
  expect(read("80 x 5")).toEqual(["Sets", false]);
});
