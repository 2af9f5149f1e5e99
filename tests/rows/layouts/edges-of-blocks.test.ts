import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { notes, problems, shortJump, shortSet, today } from "./short";

// Words and figures that stand where a block hardly expects them; all invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });

test("a name under a jump test starts that athlete's block, also in the second column", () => {
  const { reading } = read("Jumps", [
    ["Ilka Brandmoor", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "kg", "m/s"],
    ["SL box", "5x15", "o"],
    ["", "Kofi Anstruther", ""],
    ["5 May", "", ""],
    ["SL box", "4x15", "o"],
  ]);
  expect(reading.records.map(shortJump)).toEqual([
    "05-05 Ilka Brandmoor 15 15 15 15 15 ✓",
    "05-05 Kofi Anstruther 15 15 15 15 ✓",
  ]);
});

test("sessions a week beside the day are a note and no gym", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", ""],
    ["5 May", "2 gym/ 3 runs", ""],
    ["SQUAT", "kg", "m/s"],
    [1, 80, 0.6],
  ]);
  expect(reading.records.map((set) => [shortSet(set), set.gym])).toEqual([
    ["05-05 Ilka Brandmoor 1 80x? 0.6", ""],
  ]);
  expect(notes(reading)).toEqual(["B2 Ilka Brandmoor: 2 gym/ 3 runs"]);
  expect(problems(reading)).toEqual([]);
});

test("words in two cells beside a jump are one note", () => {
  const { reading } = read("Jumps", [
    ["Ilka Brandmoor", "", "", "", ""],
    ["5 May", "", "", "", ""],
    ["SQUAT", "kg", "m/s", "", ""],
    ["SL box", "5x15", "o", "straps", "good"],
  ]);
  expect(reading.records.map(({ note }) => note)).toEqual(["straps; good"]);
  expect(notes(reading)).toEqual(["D4 Ilka Brandmoor: straps; good"]);
});

test("a club named above all days is nobody's gym", () => {
  const { reading } = read("Sets", [
    ["Quillbeck club log", "", "", ""],
    ["Ilka Brandmoor", "", "", ""],
    ["SQUAT", "kg", "m/s", "Date"],
    [1, 80, 0.6, "5 May"],
  ]);
  expect(reading.records.map((set) => [shortSet(set), set.gym])).toEqual([
    ["05-05 Ilka Brandmoor 1 80x? 0.6", ""],
  ]);
});

test("shorthand alone in a row counts only where loads stand; elsewhere it is a note", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", "", ""],
    ["5 May", "", "", ""],
    ["SQUAT", "kg", "m/s", "note"],
    [1, 80, 0.6, ""],
    ["", "", "", "85x5"],
    ["", "90x5", "", ""],
  ]);
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([80, 90]);
  expect(notes(reading)).toEqual(["D5 Ilka Brandmoor: 85x5"]);
});

test("a day far from all others is questioned at its own cell of the block", () => {
  const weekly = ["7 Apr", "14 Apr", "21 Apr", "28 Apr", "5 May", "12 May", "19 May", "26 May"];
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", "", ""],
    ["SQUAT", "kg", "m/s", "Date"],
    ...[...weekly, "2 June", "9 June", "16 June"].map((day) => [1, 80, 0.6, `${day} 2026`]),
    [1, 80, 0.6, "26 May 2024"],
  ]);
  expect(reading.issues.map(({ cell, code }) => [cell, code])).toEqual([["D14", "day-questioned"]]);
});

test("the last warm-up is the marker however it is shortened", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", "", ""],
    ["5 May", "", "", ""],
    ["SQUAT", "kg", "m/s", "note"],
    ["wu", 60, 0.9, "last wu"],
    [1, 80, 0.6, ""],
  ]);
  expect(reading.records.map(({ kind }) => kind)).toEqual(["marker", "work"]);
});

test("an answer about a bar holds where spaces stand around what is written of it", () => {
  const { reading } = read(
    "Sets",
    [
      ["Ilka Brandmoor", "", ""],
      ["5 May", " their bar (15?) ", ""],
      ["SQUAT", "kg", "m/s"],
      [1, 80, 0.6],
    ],
    { tab: { bars: new Map([["their bar (15?)", 15]]) } },
  );
  expect(reading.records.map(({ loadKg, barKg }) => [loadKg, barKg])).toEqual([[80, 15]]);
  expect(problems(reading)).toEqual([]);
});

test("a bar above the sets that hardly exists is told of their rows", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", ""],
    ["bar 99", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "kg", "m/s"],
    [1, 80, 0.6],
  ]);
  expect(reading.issues.map(({ cell, column, code }) => [cell, column, code])).toEqual([
    ["A5", 0, "implausible"],
  ]);
});
