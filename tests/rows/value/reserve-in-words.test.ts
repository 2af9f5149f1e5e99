import { noSense } from "../../../src/rows/layout/shorthand/scheme-order";
import { setCell } from "../../../src/rows/layout/shorthand/set-cell";
import { understandTable } from "../../../src/rows/read-table";
import { reserveInWords } from "../../../src/rows/value/reserve-in-words";

test.each([
  ["RPE 8", 2],
  ["rpe8,5", 1.5],
  ["felt ok, RPE: 7-8", 2],
  ["@RPE 10", 0],
  ["RIR 2", 2],
  ["moved well, rir=2-3", 2],
  ["RIR 0", 0],
  ["RPE 15", null],
  ["RPE 8-15", null],
  ["RPE 8,8,9", null],
  ["RPE 8/10", 2],
  ["RPE 8/9", null],
  ["session RPE 9", null],
  ["aiming for RPE 8", null],
  ["target: RPE 8", null],
  ["planned RIR 3", null],
  ["fairy 8", null],
  ["", null],
])("beside a set %p leaves %p in reserve", (words, left) => {
  expect(reserveInWords(words)).toBe(left);
});

test.each([
  ["3x3 @ 80kg RPE 8", "RPE 8"],
  ["80x3x3 (RIR 2)", "RIR 2"],
  ["80x3x3 @RPE 8 slept badly", "slept badly; RPE 8"],
])("a cell of sets with what they left is a cell of sets: %p", (cell, note) => {
  expect(setCell(cell, noSense)).toMatchObject({
    is: "sets",
    groups: [{ load: 80, reps: 3, sets: 3 }],
    note,
  });
});

test("what was left is read from the words beside a set, but from its own column first", () => {
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Set", "Load", "RIR", "Note"],
    ["2026-05-05", "Ilka Brandmoor", "back squat", 1, 60, "", "RPE 9"],
    ["2026-05-05", "Ilka Brandmoor", "back squat", 2, 60, 3, "RPE 9"],
    ["2026-05-05", "Ilka Brandmoor", "back squat", 3, 60, "", "RPE went up"],
  ]);
  expect(reading.records.map(({ repsInReserve }) => repsInReserve)).toEqual([1, 3, null]);
});
