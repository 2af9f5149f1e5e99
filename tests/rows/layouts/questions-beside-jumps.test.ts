import { findTables } from "../../../src/rows/find-tables";
import { today } from "./short";

// A log of sets with columns of jumps is two tables; athletes, days and figures are invented.

const asked = (headings: readonly string[], ...figures: readonly unknown[]) => {
  const rows = [
    ["4 Nov 25", "Imke Rauvold"],
    ["4 Nov 25", "Nuria Fenn"],
    ["6 Nov 25", "Imke Rauvold"],
  ].map((row) => [...row, "Squat", 65, 5, ...figures]);
  const cells = [["Date", "Name", "Lift", "kg", "Reps", ...headings], ...rows];
  return findTables([{ name: "Gym log", cells }], { today }).map(({ table, understanding }) => [
    table,
    understanding.reading.records.length,
    understanding.questions.map(({ heading }) => heading),
  ]);
};

test("columns of sets are not asked about as jumps, nor jumps as sets", () => {
  expect(
    asked(["S1 m/s", "S2 m/s", "CMJ 1", "CMJ 2", "Quality"], 0.74, 0.72, 38.1, 37.9, "ok"),
  ).toEqual([
    ["Sets", 6, []],
    ["Jumps", 6, []],
  ]);
  expect(asked(["Speed", "RIR", "CMJ 1", "CMJ 2", "Box"], 0.74, 3, 38.1, 37.9, "15+10")).toEqual([
    ["Sets", 3, []],
    ["Jumps", 9, []],
  ]);
});

test("what neither of them reads is asked about", () => {
  expect(asked(["Speed", "CMJ 1", "CMJ 2", "Zone"], 0.74, 38.1, 37.9, 3)).toEqual([
    ["Sets", 3, ["Zone"]],
    ["Jumps", 6, ["Zone"]],
  ]);
});

test("before the order of days is said, that alone is asked; jumps not read at all are asked about", () => {
  const questions = (...days: readonly string[]) =>
    findTables(
      [
        {
          name: "Gym log",
          cells: [
            ["Date", "Name", "Lift", "Load", "Reps", "CMJ 1", "CMJ 2"],
            ...days.map((day) => [day, "Imke Rauvold", "Squat", 65, 5, "high", "higher"]),
          ],
        },
      ],
      { today },
    ).map(({ table, understanding }) => [
      table,
      understanding.questions.map(({ about, heading }) => `${about} ${heading}`),
    ]);
  expect(questions("4/11/25", "6/11/25")).toEqual([["Sets", ["date order Date"]]]);
  expect(questions("4 Nov 25", "6 Nov 25")).toEqual([["Sets", ["meaning CMJ 1", "meaning CMJ 2"]]]);
});
