import { dayFromIso } from "../../../src/coaching/calendar/day";
import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { notes, problems, shortSet, today } from "./short";

// Notes with their days, and rows that end before their table does; athletes and figures are invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });
const day = (iso: string) => dayFromIso(iso);
const days = (table: TableName, cells: readonly (readonly unknown[])[], more = {}) =>
  (read(table, cells, more).reading.notes ?? []).map((note) => [
    note.cell,
    note.day,
    note.span,
    note.words,
  ]);

test("a note belongs to the day it stands under, to its week, or to the whole tab", () => {
  expect(
    days("Sets", [
      ["Squat 2026", "", "", ""],
      ["", "5/5", "28/5", "notes"],
      ["Ilka", "ride", "85x1x5", "flat"],
    ]),
  ).toEqual([
    ["D3", day("2026-05-25"), "week", "flat"],
    ["B3", day("2026-05-05"), "day", "ride"],
  ]);
  expect(
    days("Runs", [
      ["Runs, min", "", ""],
      ["", "5/5/2026", "28/5/2026"],
      ["Ilka", "rest", "40 hilly"],
    ]),
  ).toEqual([
    ["B3", day("2026-05-05"), "day", "rest"],
    ["C3", day("2026-05-28"), "day", "hilly"],
  ]);
  expect(
    days("Jumps", [
      ["Box jump 2026", "", ""],
      ["", "5/5", "28/5"],
      ["Ilka", "40 tired", "sore"],
    ]),
  ).toEqual([
    ["B3", day("2026-05-05"), "day", "tired"],
    ["C3", day("2026-05-28"), "day", "sore"],
  ]);
  expect(
    days("Sets", [
      ["Ilka Brandmoor", "", "", ""],
      ["back by June", "", "", ""],
      ["5 May", "hall 2", "", ""],
      ["SQUAT", "kg", "r1", "r2"],
      [1, 80, 0.6, 0.59, "calm"],
      ["ride", "", "", ""],
    ]),
  ).toEqual([
    ["A2", null, "table", "back by June"],
    ["B3", day("2026-05-05"), "day", "hall 2"],
    ["E5", day("2026-05-05"), "day", "calm"],
    ["A6", day("2026-05-05"), "day", "ride"],
  ]);
  expect(
    days("Sets", [
      ["Date", "Athlete", "Exercise", "kg x sets x reps"],
      ["2026-05-12", "Ilka", "", "ride"],
    ]),
  ).toEqual([["D2", day("2026-05-12"), "day", "ride"]]);
});

test.each(["Sets", "Jumps", "Runs", "Diary"] as const)(
  "a grid of %s whose rows end early has nothing there",
  (table) => {
    const title = { Sets: "Squat", Jumps: "Box jump", Runs: "Runs, min", Diary: "Mood" }[table];
    const { reading } = read(table, [
      [title],
      ["", "5/5/2026", "13/5/2026", "notes"],
      ["Ilka", table === "Sets" ? "85x5" : 5],
      ["Kofi", table === "Sets" ? "85x5" : 5, "", ""],
    ]);
    expect(reading.records).toHaveLength(2);
    expect([problems(reading), notes(reading)]).toEqual([[], []]);
  },
);

test("columns of repetitions under a block's header are in the unit they name; sets may be numbered 1. or 2)", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor"],
    ["5 May"],
    ["SQUAT", "lb", "Rep 1 (cm/s)", "Rep 2 (cm/s)"],
    ["1.", 100, 60, 59],
    ["2)", 100, 58],
    ["set 3", 100, 57],
    ["Satz 4.", 100, 56],
  ]);
  expect(reading.records.map(({ set, exercise, repSpeeds }) => [set, exercise, repSpeeds])).toEqual(
    [
      [1, "SQUAT", [0.6, 0.59]],
      [2, "SQUAT", [0.58]],
      [3, "SQUAT", [0.57]],
      [4, "SQUAT", [0.56]],
    ],
  );
  expect(reading.records[0]!.loadKg).toBeCloseTo(45.359237, 9);
});

test("a lift missing in its own column, where no title names one, is reported in its row", () => {
  const { reading } = read("Sets", [
    ["Gym 2026"],
    ["", "Lift", "5/5", "28/5"],
    ["Ilka", "squat", "85x5", ""],
    ["Kofi", "", "85x5", ""],
  ]);
  expect(reading.records.map(({ athlete, exercise }) => [athlete, exercise])).toEqual([
    ["Ilka", "squat"],
  ]);
  expect(reading.issues.map(({ code, row }) => [code, row])).toEqual([["needed-blank", 4]]);
});

test("a height out of bounds in a column of its own is told with that column's heading", () => {
  const { reading } = read("Jumps", [
    ["Date", "Athlete", "Box jump (cm)", "Hop contact ms"],
    ["2026-05-12", "Ilka", 600, 9],
  ]);
  expect(reading.issues.map(({ cell, facts }) => [cell, facts.heading])).toEqual([
    ["C2", "Box jump (cm)"],
    ["D2", "Hop contact ms"],
  ]);
});

test("a footnote below a block is no title of the next", () => {
  const { reading } = read("Sets", [
    ["Back squat 2026"],
    ["", "5/5", "28/5"],
    ["Ilka", "85x5*", "85x5"],
    ["* front squat"],
    ["", "2/6", "13/6"],
    ["Ilka", "87.5x5", ""],
  ]);
  expect(reading.records.every(({ exercise }) => exercise === "back squat")).toBe(true);
  expect(problems(reading)).toContain("A5 exercise-missing: ");
});

test("one block that speaks of runs is enough for its tab", () => {
  const { layout, reading } = read("Runs", [
    ["Spring", "", "", ""],
    ["", "5/5/2026", "13/5/2026", "14/5/2026"],
    ["Ilka", "45 min easy", "8 km", "rest"],
    ["Autumn", "", "", ""],
    ["", "5/9/2026", "13/9/2026", "14/9/2026"],
    ["Ilka", "easy", "", ""],
  ]);
  expect(layout).toBe("dates across");
  expect(reading.records.map(({ kind, minutes, km }) => [kind, minutes, km])).toEqual([
    ["easy", 45, null],
    [null, null, 8],
    ["easy", null, null],
  ]);
});

test("hours of travel beside runners' marks are nobody's race", () => {
  const { reading } = read("Races", [
    ["Date", "Race", "Ilka", "Travel (h)"],
    ["2026-05-12", "Mile", "x", 1],
    ["2026-05-19", "Relay", "x", 1],
  ]);
  expect(reading.records.map(({ race, who }) => [race, who])).toEqual([
    ["Mile", "Ilka"],
    ["Relay", "Ilka"],
  ]);
});

test("the marker's load counts for its own lift and athlete, and after a warm-up that is not the last one", () => {
  const block = (name: string, date: string, ...rows: readonly (readonly unknown[])[]) => [
    [name],
    [date],
    ["SQUAT", "kg", "m/s", "note"],
    ...rows,
  ];
  const { reading } = read("Sets", [
    ...block("Ilka Brandmoor", "5 May", ["wu", 60, 0.9, "last w/u"], [1, 80, 0.6, ""]),
    ...block(
      "Ilka Brandmoor",
      "7 May",
      ["wu", 60, 0.91, ""],
      ["wu", 60, 0.9, ""],
      [1, 80, 0.6, ""],
    ),
    ...block("Kofi Anstruther", "7 May", ["wu", 60, 0.9, ""], [1, 80, 0.6, ""]),
  ]);
  expect(reading.records.map((set) => `${shortSet(set)} ${set.kind}`)).toEqual([
    "05-05 Ilka Brandmoor marker 60x? 0.9 marker",
    "05-05 Ilka Brandmoor 1 80x? 0.6 work",
    "05-07 Ilka Brandmoor warm-up 60x? 0.91 warm-up",
    "05-07 Ilka Brandmoor marker 60x? 0.9 marker",
    "05-07 Ilka Brandmoor 1 80x? 0.6 work",
    "05-07 Kofi Anstruther warm-up 60x? 0.9 warm-up",
    "05-07 Kofi Anstruther 1 80x? 0.6 work",
  ]);
});
