import { findTables } from "../../../src/rows/find-tables";
import { tablesBeside } from "../../../src/rows/layout/tables-beside";
import { understandTable } from "../../../src/rows/read-table";
import { besideOf, optionsOf } from "../../../src/rows/understanding/of-all-beside";
import { counts, notes, problems, shortSet, today } from "./short";

// Which of several tables side by side are one, and how they are put together; athletes and figures are invented.

const day = new Date(2026, 4, 5);
const head = ["Date", "Athlete", "Lift", "kg", "reps", "Notes"];
const blank = ["", "", "", "", "", ""];
const beside = (left: readonly unknown[], right: readonly unknown[]) => [...left, "", ...right];

const sets = [
  beside(["Gym", "", "", "", "", ""], blank),
  beside(head, head),
  beside([day, "Ilka", "Squat", 80, 5, "calm"], [day, "Bram", "Bench", 40, 5, ""]),
  beside(blank, blank),
  beside([day, "Ilka", "Squat", 85, 5, ""], ["soon", "Bram", "Bench", 42, 5, "back"]),
  beside(blank, [day, "Bram", "Bench", "heavy", 5, "hip"]),
];

test("rows, blanks and headings of the range count once, notes of all are kept", () => {
  const { reading, columns } = understandTable("Sets", sets, { today });
  expect(reading.records.map((set) => `${set.row} ${shortSet(set)}`)).toEqual([
    "3 05-05 Ilka work 80x5",
    "3 05-05 Bram work 40x5",
    "5 05-05 Ilka work 85x5",
    "6 05-05 Bram work ?x5",
  ]);
  expect(problems(reading)).toEqual(["H5 not-a-day: soon", "K6 not-a-number: heavy"]);
  // Read, reported, blank, heading: the title's row and the headings' are no rows of data.
  expect(counts(reading)).toEqual([2, 1, 1, 2]);
  expect(columns.map(({ column }) => column)).toEqual([1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 12, 13]);
});

const grids = (left: string, right: string) => [
  ["Squat", "5 May", "12 May", "", "Squat", "5 May", "12 May"],
  ["Ilka", left, "", "", "Bram", right, ""],
];

test("a remark of each table is kept", () => {
  const cells = grids("felt heavy", "hip tight");
  const { reading } = understandTable("Sets", cells, { today });
  expect(notes(reading)).toEqual(["B2 Ilka: felt heavy", "F2 Bram: hip tight"]);
});

test("the same question of all of them is asked once, another of one of them besides", () => {
  const asked = (left: string, right: string) =>
    understandTable("Sets", grids(left, right), { today }).tabQuestions.map(
      ({ about, said }) => `${about} ${said}`,
    );
  expect(asked("80x3x5", "60x3x5")).toEqual(["scheme order "]);
  expect(asked("80x3x5", "60x5x5 .62 .6")).toEqual(["scheme order ", "speeds "]);
});

test("an answer is taken by the table in which its column stands, first and last column included", () => {
  const [left, right] = tablesBeside(sets);
  const answers = {
    headerRow: 2,
    columns: [1, 6, 7, 8, 13].map((column) => ({ column, field: null })),
  };
  const taken = (part: typeof left) =>
    optionsOf(part!, { answers, title: "Gym" }).answers!.columns.map(({ column }) => column);
  expect([taken(left), taken(right)]).toEqual([
    [1, 6, 7],
    [8, 13],
  ]);
  expect(optionsOf(right!, { answers, title: "Gym" })).toMatchObject({
    title: "Gym",
    answers: { headerRow: 2 },
  });
  expect(optionsOf(right!, { title: "Gym" })).toEqual({ title: "Gym" });
});

test("of those that lack as little, the ones with half as many known headings or more are the table", () => {
  const narrow = ["Date", "Athlete", "Lift", "kg", "x", "y"];
  const parts = tablesBeside([
    beside(["Date", "Athlete", "Lift", "kg", "reps", "m/s"], narrow),
    beside([day, "Ilka", "Squat", 80, 5, 0.6], [day, "Bram", "Bench", 40, "", ""]),
  ]);
  expect(besideOf("Sets", parts)).toEqual(parts);
  const bare = tablesBeside([
    [...head, "m/s", "RIR", "Bar", "Set", "Time", "", "Date", "Athlete", "Lift", "kg"],
    [day, "Ilka", "Squat", 80, 5, "", 0.6, 2, "", 1, "", "", day, "Bram", "Bench", 40],
  ]);
  expect(bare).toHaveLength(2);
  expect(besideOf("Sets", bare).map(({ from }) => from)).toEqual([0]);
});

test("a table that lacks a needed heading is not put to one that has them all", () => {
  const parts = tablesBeside([
    ["Date", "Athlete", "Lift", "kg", "", "Date", "Athlete", "Test", "cm"],
    [day, "Ilka", "Squat", 80, "", day, "Bram", "CMJ", 32],
  ]);
  expect(besideOf("Sets", parts).map(({ from }) => from)).toEqual([0]);
  expect(besideOf("Jumps", parts).map(({ from }) => from)).toEqual([5]);
});

test("a single one is as it is read alone", () => {
  const cells = sets.map((line) => line.slice(0, 6));
  const [found, ...others] = findTables([{ name: "Gym", cells }], { today });
  expect([found!.understanding, others]).toEqual([
    understandTable("Sets", cells, { today, title: "Gym" }),
    [],
  ]);
});

test("tables of one kind are as sure as the least sure of them", () => {
  const surenessOf = (cells: readonly (readonly unknown[])[]) =>
    findTables([{ name: "Page 3", cells }], { today }).map(({ sureness }) => sureness);
  const left = [
    ["Date", "Athlete", "Lift", "kg", "reps", "m/s"],
    [day, "Ilka", "Squat", 80, 5, 0.6],
  ];
  const right = [
    ["Date", "Athlete", "Lift", "kg", "colour", "shoes"],
    [day, "Bram", "Bench", 40, "red", "old"],
  ];
  const [sure, unsure] = [surenessOf(left)[0]!, surenessOf(right)[0]!];
  expect(unsure).toBeLessThan(sure);
  expect(surenessOf(left.map((line, at) => beside(line, right[at]!)))).toEqual([unsure]);
});

test("a row that one of the tables cannot use counts once, beside blank rows and titles of the other", () => {
  const head = ["Date", "Athlete", "Lift", "kg"];
  const cells = [
    ["Squat", "", "", "", "", "Gym", "", "", ""],
    [...head, "", ...head],
    ["2026-05-05", "Ilka", "Squat", 80, "", "soon", "Bram", "Squat", 60],
    ["", "", "", "", "", "", "", "", ""],
    ["2026-05-05", "", "", "", "", "soon", "Bram", "Squat", 60],
    ["Total", "", "", "", "", "soon", "Bram", "Squat", 60],
  ];
  const { reading } = understandTable("Sets", cells, { today });
  expect(counts(reading)).toEqual([0, 2, 1, 3]);
});
