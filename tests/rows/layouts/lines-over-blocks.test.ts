import { understandTable } from "../../../src/rows/read-table";
import { sayRowIssue } from "../../../src/words/row-issues";
import { notes, problems, shortSet, today } from "./short";

// Lines and tab names over blocks of sets; athletes, days and figures are invented.

const day = new Date(2026, 4, 5);
const heads = ["Lift", "kg", "reps", "m/s"];
const read = (cells: readonly (readonly unknown[])[], title = "Gym") =>
  understandTable("Sets", cells, { today, title });

test.each(["Strength", "Tests", "Power", "Monday", "Juniors", "Lifting", "Main Lifts", "Data"])(
  "a tab called “%s” is nobody's: the athlete is asked for",
  (title) => {
    const { reading, tabQuestions } = read(
      [
        ["Date", ...heads],
        [day, "Squat", 80, 5, 0.6],
      ],
      title,
    );
    expect([reading.records, problems(reading)]).toEqual([[], ["A2 athlete-missing: 2026-05-05"]]);
    expect(tabQuestions.map(({ about }) => about)).toEqual(["athlete"]);
  },
);

test.each(["Ilka", "Ilka Brandmoor", "Jo Power", "Notes Meier"])(
  "a tab called “%s” is an athlete's",
  (title) => {
    const { reading } = read(
      [
        ["Date", ...heads],
        [day, "Squat", 80, 5, 0.6],
      ],
      title,
    );
    expect(reading.records.map(({ athlete }) => athlete)).toEqual([title]);
  },
);

test("a line that names a part of the session is no athlete, and a warm-up's sets are a warm-up", () => {
  const { reading } = read([
    ["Ilka", "", "", ""],
    ["Strength", "", "", ""],
    ["5 May", "", "", ""],
    heads,
    ["Warm-up", "", "", ""],
    ["Squat", 50, 5, 0.9],
    ["Main lift", "", "", ""],
    ["Squat", 80, 5, 0.6],
    ["12 May", "", "", ""],
    ["Warm-up", "", "", ""],
    ["Squat", "2x5 50", "", ""],
    ["Bram", "", "", ""],
    ["12 May", "", "", ""],
    ["Squat", 60, 5, 0.7],
  ]);
  expect(reading.records.map((set) => `${shortSet(set)} ${set.kind}`)).toEqual([
    "05-05 Ilka warm-up 50x5 0.9 warm-up",
    "05-05 Ilka work 80x5 0.6 work",
    "05-12 Ilka 1 50x5 warm-up",
    "05-12 Ilka 2 50x5 warm-up",
    "05-12 Bram work 60x5 0.7 work",
  ]);
  expect(notes(reading)).toEqual([
    "A2 Ilka: Strength",
    "A5 Ilka: Warm-up",
    "A7 Ilka: Main lift",
    "A10 Ilka: Warm-up",
  ]);
});

test("a new day ends a warm-up, as a new athlete does", () => {
  const kinds = (line: string) =>
    read([
      ["Ilka", "", "", ""],
      ["5 May", "", "", ""],
      heads,
      ["Warm-up", "", "", ""],
      ["Squat", 50, 5, 0.9],
      [line, "", "", ""],
      ["Squat", 60, 5, 0.8],
    ]).reading.records.map(({ kind }) => kind);
  expect([kinds("6 May"), kinds("calm"), kinds("Squat")]).toEqual([
    ["warm-up", "work"],
    ["warm-up", "work"],
    ["warm-up", "warm-up"],
  ]);
});

test.each<readonly [string, readonly (readonly unknown[])[], string, string]>([
  ["alone over a block", [["Week of 6 April"]], "A2", "Week of 6 April"],
  ["below the week's number", [["Week 1"], ["w/c 6 Apr"]], "A3", "w/c 6 Apr"],
  ["beside the week's number", [["Week 1", "w/c 6 Apr"]], "A2", "Week 1"],
])("a week %s is said to be no day, with its cell", (_, lines, cell, week) => {
  const { reading } = read([["Ilka"], ...lines, heads, ["Squat", 80, 5, 0.6]]);
  const row = lines.length + 3;
  expect(problems(reading)).toEqual([`A${row} day-missing: Squat`]);
  expect(Object.values(sayRowIssue(reading.issues[0]!))).toEqual([
    `${cell}, “${week}”, names a week, not a day`,
    "The whole row is left out of the figures.",
    "Put the day of the session above its rows, such as “7 April 2026”, or in a column.",
  ]);
  const dated = [["Ilka"], ...lines, ["7 April 2026"], heads, ["Squat", 80, 5, 0.6]];
  expect(read(dated).reading.records.map(shortSet)).toEqual(["04-07 Ilka work 80x5 0.6"]);
});
