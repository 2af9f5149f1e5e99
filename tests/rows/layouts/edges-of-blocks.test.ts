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
