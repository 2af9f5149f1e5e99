import type { ColumnAnswer } from "../../../src/rows/header/column-answers";
import { understandTable } from "../../../src/rows/read-table";
import { notes, problems, shortJump, shortSet, today } from "./short";

// Invented rows of one tab that are sets, jumps, rides, sums and doubts side by side.

type Rows = readonly (readonly unknown[])[];
const sets = (cells: Rows, columns: readonly ColumnAnswer[] = []) =>
  understandTable("Sets", cells, { today, answers: { columns } }).reading;

const reps = [
  ["Date", "Athlete", "Exercise", "Set", "Load kg", "Rep 1", "Second", "Rep 3"],
  ["2026-05-05", "Ilka", "squat", 1, 60, 0.7, 0.69, 0.68],
];

test("a column the coach names as a repetition takes its place among the others", () => {
  expect(sets(reps).records.map(shortSet)).toEqual(["05-05 Ilka 1 60x? 0.7 0.68"]);
  expect(sets(reps, [{ column: 7, field: "rep 2" }]).records.map(shortSet)).toEqual([
    "05-05 Ilka 1 60x? 0.7 0.69 0.68",
  ]);
});

test("a unit said of one repetition's column leaves it where it stood", () => {
  const first = [
    reps[0]!.slice(0, 6).concat("Rep 2"),
    ["2026-05-05", "Ilka", "squat", 1, 60, 70, 0.6],
  ];
  expect(sets(first, [{ column: 6, unit: "cm/s" }]).records.map(shortSet)).toEqual([
    "05-05 Ilka 1 60x? 0.7 0.6",
  ]);
});

test("a column the coach says to leave alone is left alone", () => {
  expect(sets(reps, [{ column: 6, field: null }]).records.map(shortSet)).toEqual([
    "05-05 Ilka 1 60x? 0.68",
  ]);
});

test("in a grid each row may have its own lift; a row of nobody is reported, footnotes and means are not", () => {
  const grid = sets([
    ["Squad grid"],
    ["", "Lift", "5 May", "7 May"],
    ["Ilka", "back squat", "60x5 0.70", "62.5x5"],
    ["Nils", "front squat", "70x5", "as Tue"],
    ["", "", "80x5", ""],
    ["* shoulder watched"],
    ["Average", "", "65", "65"],
  ]);
  expect(grid.records.map((set) => [set.exercise, shortSet(set)])).toEqual([
    ["back squat", "05-05 Ilka 1 60x5 0.7"],
    ["back squat", "05-07 Ilka 1 62.5x5"],
    ["front squat", "05-05 Nils 1 70x5"],
    ["front squat", "05-07 Nils 1 70x5"],
  ]);
  expect(problems(grid)).toEqual(["A5 needed-blank: "]);
});

const log: Rows = [
  ["Date", "Athlete", "Exercise", "Sets x reps x kg", "Speed"],
  ["2026-05-05", "Ilka", "box jump", "5x15+5 o", ""],
  ["2026-05-05", "Ilka", "box jump", "4x15 x", ""],
  ["2026-05-05", "Ilka", "box jump", "40 cm", ""],
  ["2026-05-05", "Ilka", "squat", "3x5x85", "0.6 0.59 0.58"],
  ["2026-05-07", "Ilka", "bike 40 min", "", ""],
  ["2026-05-07", "Ilka", "as Fri", "", ""],
  ["Total", "", "", "30", ""],
];

test("a log of sets keeps its jumps and rides apart, and a sum is nobody's set", () => {
  const reading = sets(log);
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 85x5 0.6",
    "05-05 Ilka 2 85x5 0.59",
    "05-05 Ilka 3 85x5 0.58",
  ]);
  expect(notes(reading)).toEqual(["D6 Ilka: bike 40 min"]);
  // Friday of that week had no session to repeat.
  expect(problems(reading)).toEqual(["C7 nothing-to-repeat: as Fri"]);
});

test("the jumps of that log are attempts: cleared or missed where it is marked, open where it is not", () => {
  const { reading } = understandTable("Jumps", log, { today });
  expect(reading.records.map(shortJump)).toEqual([
    "05-05 Ilka 15 15 15 15 15 5 ✓",
    "05-05 Ilka 15 15 15 15 ✗",
    "05-05 Ilka 40 cm",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("under a lift's heading a blank load and a mark repeat the one above", () => {
  const reading = sets([
    ["Ilka"],
    ["Tue 5 May 2026"],
    ["Back squat", "kg", "Rep 1", "Rep 2"],
    ["Set 1", 60, 0.7, 0.69],
    ["Set 2", "", 0.68, 0.67],
    ["Set 3", '"', 0.66, 0.65],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 60x? 0.7 0.69",
    "05-05 Ilka 2 60x? 0.68 0.67",
    "05-05 Ilka 3 60x? 0.66 0.65",
  ]);
});

test("in an athlete's own tab a row whose day is none is reported, and the next does not inherit it", () => {
  const reading = sets([
    ["Ilka Brandmoor"],
    ["Date", "Exercise", "kg", "Reps"],
    ["2026-05-05", "Back squat", 60, 5],
    ["someday", "Back squat", 60, 5],
    ["32/13", "Back squat", 62.5, 5],
    ["2026-05-07", "Back squat", 65, 5],
  ]);
  expect(reading.records.map(({ day, loadKg }) => [day - today, loadKg])).toEqual([
    // 5 and 7 May are 42 and 40 days before 16 June.
    [-42, 60],
    [-40, 65],
  ]);
  expect(problems(reading)).toEqual(["A4 not-a-day: someday", "A5 not-a-day: 32/13"]);
});
