import type { Cells } from "../../src/rows/cells";
import { readTable } from "../../src/rows/read-table";
import type { TableName } from "../../src/rows/table-name";

const faults = (table: TableName, cells: Cells) =>
  readTable(table, cells).issues.map(({ cell, code, dropsRow }) => [cell, code, dropsRow]);

const sets = ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Rep speeds (m/s)", "RIR"];

test("of a set whose day cannot be read every other cell that cannot be used is told, too", () => {
  const rows = [
    sets,
    ["2026-05-04", "Ana Brandt", "squat", 1, 5, 80, "0.62 0.60", 2],
    ["tuesday", "Ana Brandt", "squat", 1, "two", 800, "0.59 fast 0.56", 99],
  ];
  expect(faults("Sets", rows)).toEqual([
    ["A3", "not-a-day", true],
    ["E3", "not-a-number", true],
    ["F3", "implausible", true],
    ["G3", "not-a-number", true],
    ["H3", "implausible", true],
  ]);
});

test("of a set of an unknown kind the load is looked at, and of one typed twice nothing is told again", () => {
  const kinds = [...sets, "Kind"];
  const good = ["2026-05-04", "Ana Brandt", "squat", 1, 5, "65,5.0", "0.62 0.60", 2, "work"];
  expect(faults("Sets", [kinds, [...good.slice(0, -1), "warmup?"]])).toEqual([
    ["I2", "word-unknown", true],
    ["F2", "not-a-number", true],
  ]);
  expect(faults("Sets", [kinds, good, good])).toEqual([
    ["F2", "not-a-number", false],
    ["A3", "doubled-row", true],
  ]);
});

test("a comment across a tab is one thing to tell, and a blank cell of a row given up is none", () => {
  expect(faults("Sets", [sets, ["Hall closed on Monday, see notice"]])).toEqual([
    ["A2", "words-alone", true],
  ]);
  expect(faults("Sets", [sets, ["soon", "Ana Brandt", "squat", "", "", "", "", ""]])).toEqual([
    ["A2", "not-a-day", true],
  ]);
});

test.each<[TableName, Cells, readonly string[]]>([
  [
    "Diary",
    [
      ["Date", "Athlete", "Sleep (h)", "Soreness", "Carbs in session"],
      ["31/6/2026", "Ana Brandt", "long", 400, "perhaps"],
    ],
    ["A2", "C2", "D2", "E2"],
  ],
  [
    "Jumps",
    [
      ["Date", "Athlete", "Test", "Height (cm)", "Contact (ms)"],
      ["2026-05-04", "Ana Brandt", "", "high", "short"],
    ],
    ["C2", "D2", "E2"],
  ],
  [
    "Runs",
    [
      ["Date", "Athlete", "Minutes", "Exertion", "km"],
      ["someday", "Ana Brandt", "long", 40, "far"],
    ],
    ["A2", "C2", "D2", "E2"],
  ],
  [
    "Races",
    [
      ["Date", "Race", "Distance", "Matters"],
      ["spring", "Harbour Mile", "far", "D"],
    ],
    ["A2", "C2", "D2"],
  ],
  [
    "Availability",
    [
      ["Athlete", "From", "Until", "May do", "Pain"],
      ["Ana Brandt", "soon", "later", "perhaps", 40],
    ],
    ["B2", "C2", "D2", "E2"],
  ],
  [
    "Athletes",
    [
      ["Athlete", "Experience", "Birth year", "Sessions a week"],
      ["", "some", "young", 99],
    ],
    ["A2", "B2", "C2", "D2"],
  ],
])("in %s every cell of a row given up is told", (table, cells, told) => {
  expect(faults(table, cells).map(([cell]) => cell)).toEqual(told);
});

test("rows under a merged name and lift are not given to the athlete above where their first row has a bad day", () => {
  const heading = ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)"];
  const { records } = readTable("Sets", [
    heading,
    ["2026-05-04", "Bo Lind", "squat", 1, 5, 100],
    ["2026-05-04", "", "", 2, 5, 100],
    ["soon", "Ana Brandt", "bench press", 1, 5, 40],
    ["2026-05-05", "", "", 2, 5, 40],
    ["2026-05-05", "", "", 3, 5, 40],
    ["2026-05-05", "Bo Lind", "squat", 1, 5, 100],
    ["2026-05-05", "", "", 2, 5, 100],
  ]);
  const whose = records.map((one) => "exercise" in one && [one.row, one.athlete, one.exercise]);
  expect(whose).toEqual([
    [2, "Bo Lind", "squat"],
    [3, "Bo Lind", "squat"],
    [5, "Ana Brandt", "bench press"],
    [6, "Ana Brandt", "bench press"],
    [7, "Bo Lind", "squat"],
    [8, "Bo Lind", "squat"],
  ]);
});

test("a name in the diary is carried on from a row with a bad day", () => {
  const { records } = readTable("Diary", [
    ["Date", "Athlete", "Sleep (h)"],
    ["2026-05-03", "Bo Lind", 7],
    ["2026-05-04", "", 7],
    ["soon", "Ana Brandt", 8],
    ["2026-05-05", "", 7],
    ["2026-05-06", "Bo Lind", 7],
    ["2026-05-07", "", 7],
  ]);
  const whose = records.map((one) => "athlete" in one && one.athlete);
  expect(whose).toEqual(["Bo Lind", "Bo Lind", "Ana Brandt", "Bo Lind", "Bo Lind"]);
});
