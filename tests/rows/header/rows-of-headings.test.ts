import { findHeader, missingOf } from "../../../src/rows/header/find-header";
import type { TableName } from "../../../src/rows/table-name";

type Rows = readonly (readonly unknown[])[];
const find = (cells: Rows, table: TableName = "Sets", only: number | null = null) => {
  const found = findHeader(table, cells, cells.length, only);
  if (found === null) return null;
  const unit = (name: string) => found.fields[name]?.unit?.name;
  return { ...found, names: Object.keys(found.fields), unit };
};
const head = ["Date", "Athlete", "Exercise", "Load"];
const set = ["2026-05-12", "Ilka", "squat", 65];
const titles = (count: number): Rows => Array.from({ length: count }, () => ["Quillbeck"]);

test("a header is looked for in the first forty rows", () => {
  expect(find([...titles(39), head, set])).toMatchObject({ row: 39, first: 40, missing: [] });
  expect(find([...titles(40), head, set])).toBeNull();
  expect(find([head, head, set])!.row).toBe(0);
  expect(find([head, head, set], "Sets", 1)).toMatchObject({ row: 1, first: 2 });
  expect(find([head, set], "Sets", 1)).toBeNull();
  expect(find([["Date", "Athlete"], head, set], "Sets", 0)!.row).toBe(0);
});

test("the row that names more counts; figures and dates speak against a row, unknown headings a little", () => {
  expect(find([["Date", "Athlete"], head, set])!.row).toBe(1);
  expect(
    find([
      ["Date", "Exercise"],
      ["Date", "Note", 21, 22],
    ])!.row,
  ).toBe(0);
  const more = ["Date", "Athlete", "Exercise", "Set"];
  expect(
    find([
      ["Date", "Athlete", "Exercise"],
      [...more, 21],
    ])!.row,
  ).toBe(0);
  expect(
    find([
      ["Date", "Athlete", "Exercise"],
      [...more, 20],
    ])!.row,
  ).toBe(1);
  expect(
    find([
      ["Date", "Athlete", "Exercise"],
      [...more, new Date(2026, 4, 1)],
    ])!.row,
  ).toBe(0);
  expect(
    find([
      ["Date", "Athlete", "Exercise"],
      [...more, "21"],
    ])!.row,
  ).toBe(1);
  expect(
    find([
      ["Date", "Set"],
      ["Date", "Set", "Reps", "Weather", "Sky"],
    ])!.row,
  ).toBe(0);
  expect(
    find([
      ["Date", "Set"],
      ["Date", "Set", "Reps", "Weather"],
    ])!.row,
  ).toBe(1);
  expect(find([["Weather", "Sky"]])).toBeNull();
});

test("what is needed and named by no heading is said; a scheme holds the load", () => {
  expect(find([["Date", "Athlete"]])!.missing).toEqual(["exercise", "load"]);
  expect(find([["Date", "Athlete", "Lift", "kg x sets x reps"]])!.missing).toEqual([]);
  expect(missingOf("Plates", {})).toEqual(["mass", "thickness"]);
});

test("a header over two rows: numbers under “speeds”, parts under their title, units of the upper row", () => {
  const speeds = find([
    ["Date", "Athlete", "Exercise", "Load", "Rep speeds m/s", "", ""],
    ["", "", "", "", 1, " rep 2 ", "r3"],
    [...set, 0.6, 0.59, 0.58],
  ])!;
  expect(speeds).toMatchObject({ row: 0, first: 2 });
  expect(speeds.repColumns.map(({ index, unit }) => [index, unit?.name])).toEqual([
    [4, "m/s"],
    [5, "m/s"],
    [6, "m/s"],
  ]);
  const plain = find([
    ["Date", "Athlete", "Exercise", "Load", "Speed", "", ""],
    ["", "", "", "", 1, 2, 3],
    [...set, 0.6, 0.59, 0.58],
  ])!;
  expect(plain.repColumns.map(({ unit }) => unit)).toEqual([null, null, null]);
  const parts = find(
    [
      ["Date", "Athlete", "Test", "Jump", "", "Note"],
      ["", "", "", "height", "contact"],
      ["2026-05-12", "Ilka", "hop", 30, 0.2, ""],
    ],
    "Jumps",
  )!;
  expect(parts).toMatchObject({
    first: 2,
    names: ["day", "athlete", "test", "height", "contact", "note"],
  });
  expect(parts.line).toEqual(["Date", "Athlete", "Test", "height", "contact", "Note"]);
  const ragged = find([
    ["Date", "Athlete", "Exercise", "Load", "Speed"],
    ["", "", "", "", 1, 2, 3, ""],
  ])!;
  expect(ragged.line.slice(4)).toEqual(["rep 1", "rep 2", "rep 3", ""]);
});

test("words of both rows are one heading where the lower alone says nothing", () => {
  const both = find([
    ["Date", "Athlete", "Exercise", "Load", "Reps", "Moved"],
    ["", "", "", "", "done", "well"],
    [...set, 5, "y"],
  ])!;
  expect(both.line.slice(4)).toEqual(["Reps done", "Moved well"]);
  expect(both.names).toContain("movedWell");
});

test.each([
  ["a date below", new Date(2026, 4, 1)],
  ["a number past twenty below", 21],
  ["nought below", 0],
  ["a part of a number below", 1.5],
])("%s is a row of data, not of headings", (_, below) => {
  const top = ["Date", "Athlete", "Exercise", "Load", "Speed", "", ""];
  expect(find([top, ["", "", "", "", 1, 2, below]])!.first).toBe(1);
  expect(find([top, ["", "", "", "", 1, 2, 20]])!.first).toBe(2);
});

test("one word under a header makes no second row of it", () => {
  const top = ["Date", "Athlete", "Exercise", "Load", "Moved"];
  expect(find([top, ["", "", "", "", "well"]])!.first).toBe(1);
});

test("one heading more makes no second row of a header", () => {
  expect(
    find([
      [...head, ""],
      ["Date", "", "", "", "Reps"],
      [...set, 5],
    ])!.first,
  ).toBe(1);
});

test("a blank row under a header is blank, not a row of units", () => {
  expect(find([head, ["", "", "", ""], set])!.first).toBe(1);
});

test("units stand under the second column as under any other", () => {
  const plates = find(
    [
      ["Mass", "Thickness"],
      ["lb", "mm"],
      [45, 30],
    ],
    "Plates",
  )!;
  expect([plates.first, plates.unit("mass"), plates.unit("thickness")]).toEqual([2, "lb", "mm"]);
});

test("numbers under other titles are no repetitions", () => {
  const found = find([
    ["Date", "Athlete", "Exercise", "Load", "Week", ""],
    ["", "", "", "", 1, 2],
  ])!;
  expect([found.first, found.repColumns]).toEqual([1, []]);
});

test("a row of units gives them to columns that name none themselves", () => {
  const found = find([
    ["Date", "Athlete", "Exercise", "Load (lb)", "Speed", "Bar", "Rep 1"],
    ["", "", "", "kg", "[cm/s]", "(kg)", "cm/s"],
    [...set, 60, 20, 61],
  ])!;
  expect(found.first).toBe(2);
  expect(["load", "speed", "bar", "day"].map(found.unit)).toEqual(["lb", "cm/s", "kg", undefined]);
  expect(found.repColumns[0]!.unit?.name).toBe("cm/s");
});

test.each([
  ["units and a scale", ["", "", "h", "0-10", ""], 2],
  ["units and a scale of ten", ["", "", "h", "0 – 10", ""], 2],
  ["units and a scale of five", ["", "", "h", "1 – 5", ""], 2],
  ["units and a scale written close", ["", "", "h", "1-5", ""], 2],
  ["units and a scale of seven", ["", "", "h", "1-7", ""], 2],
  ["half of them units", ["", "", "x", "h", ""], 2],
  ["fewer than half", ["", "", "x", "h", "y"], 1],
  ["a number among them", ["", "", "h", "h", "8"], 1],
  ["a real number among them", ["", "", "h", "h", 8], 1],
  ["another scale", ["", "", "h", "h", "0-20"], 1],
  ["no unit", ["", "", "", "x", ""], 1],
  ["an athlete in it", ["", "Ilka", "h", "h", "h"], 1],
])("%s under a header: the first row of data", (_, row, first) => {
  const found = find(
    [["Date", "Athlete", "Sleep", "Mood", "Stress"], row, ["2026-05-12", "Ilka", 8, 4, 4]],
    "Diary",
  )!;
  expect(found.first).toBe(first);
});

test("weeks under a title of speeds are no repetitions", () => {
  const top = ["Date", "Athlete", "Exercise", "Load", "Speed", "", ""];
  expect(find([top, ["", "", "", "", "week 1", "week 2", "week 3"]])!.first).toBe(1);
  expect(find([top, ["", "", "", "", "1st", "2nd", "3rd"]])!.first).toBe(1);
});

test("an athlete whose event is a mile is an athlete", () => {
  expect(
    find(
      [
        ["Athlete", "Event"],
        ["Ilka", "mile"],
      ],
      "Athletes",
    )!.first,
  ).toBe(1);
});

test("units under the last row's end are none", () => {
  expect(findHeader("Sets", [head, ["", "", "", "kg"]], 1)!.first).toBe(1);
  expect(findHeader("Sets", [head, ["", "", "", "kg"]], 2)!.first).toBe(2);
});
