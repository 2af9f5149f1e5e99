import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { problems, shortSet, today } from "../layouts/short";

// A row whose day or name stands above is another row under another day or name.

type Row = readonly unknown[];
const read = <T extends TableName>(table: T, heads: Row, ...rows: readonly Row[]) =>
  understandTable<T>(table, [heads, ...rows], { today }).reading;
const heads = ["Date", "Athlete", "Exercise", "Set", "Load"];

test.each([
  ["merged cells", ""],
  ["ditto marks", '"'],
])("the same set under another day is another set, the day said by %s", (_, above) => {
  const reading = read(
    "Sets",
    heads,
    ["2026-05-12", "Ilka", "squat", 1, 80],
    [above, "Kofi", "squat", 1, 90],
    [above, "Lena", "squat", 1, 70],
    ["2026-05-14", "Ilka", "squat", 1, 80],
    [above, "Kofi", "squat", 1, 90],
    [above, "Lena", "squat", 1, 70],
  );
  expect(problems(reading)).toEqual([]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 80x?",
    "05-12 Kofi 1 90x?",
    "05-12 Lena 1 70x?",
    "05-14 Ilka 1 80x?",
    "05-14 Kofi 1 90x?",
    "05-14 Lena 1 70x?",
  ]);
});

test("the same set under another name and lift is another set", () => {
  const reading = read(
    "Sets",
    heads,
    ["2026-05-12", "Ilka", "squat", 1, 80],
    ["2026-05-12", "", "", 2, 80],
    ["2026-05-12", "", "", 3, 80],
    ["2026-05-12", "Kofi", "squat", 1, 80],
    ["2026-05-12", "", "", 2, 80],
    ["2026-05-12", "", "", 3, 80],
  );
  expect(problems(reading)).toEqual([]);
  expect(reading.records.map(({ athlete, set }) => `${athlete} ${set}`)).toEqual([
    "Ilka 1",
    "Ilka 2",
    "Ilka 3",
    "Kofi 1",
    "Kofi 2",
    "Kofi 3",
  ]);
});

test("a row typed twice is found where its day stands above, and where it is written out once", () => {
  const reading = read(
    "Sets",
    heads,
    ["2026-05-12", "Ilka", "squat", 1, 80],
    ["", "Ilka", "squat", 1, 80],
    ["", "Kofi", "squat", 1, 90],
    ["", "Kofi", "squat", 1, 90],
    ["", "Kofi", "squat", 2, 90],
    ["2026-05-12", "Kofi", "squat", 2, 90],
  );
  expect(reading.issues.map(({ code, row, facts }) => [code, row, facts.earlierRow])).toEqual([
    ["doubled-row", 3, 2],
    ["doubled-row", 5, 4],
    ["doubled-row", 7, 6],
  ]);
});

test("a mark under each repetition's speed repeats what stands above it", () => {
  const reading = read(
    "Sets",
    ["Date", "Athlete", "Exercise", "Load", "Rep 1", "Rep 2", "Rep 3"],
    ["2026-05-12", "Ilka", "squat", 80, 0.6, 0.6, 0.6],
    ["2026-05-12", "Ilka", "squat", 80, '"', 0.58, 0.57],
    ["2026-05-12", "Ilka", "squat", 80, 0.59, 0.59, 0.59],
    ["2026-05-12", "Ilka", "squat", 80, '"', 0.58, 0.57],
  );
  expect(problems(reading)).toEqual([]);
});

test("equal answers, runs, jumps and races of other days are not the same row", () => {
  const days = (table: TableName, heads: Row, one: Row, other: Row) =>
    problems(
      read(
        table,
        heads,
        ["2026-05-12", ...one],
        ['"', ...other],
        ["2026-05-13", ...one],
        ['"', ...other],
      ),
    );
  expect(days("Diary", ["Date", "Athlete", "Sleep"], ["Ilka", 8], ["Kofi", 7])).toEqual([]);
  expect(days("Runs", ["Date", "Athlete", "Km"], ["Ilka", 8], ["Kofi", 7])).toEqual([]);
  expect(days("Races", ["Date", "Race", "Who"], ["Mile", "Ilka"], ["Mile", "Kofi"])).toEqual([]);
  expect(
    days(
      "Jumps",
      ["Date", "Athlete", "Test", "Attempt", "Height"],
      ["Ilka", "hop", 1, 30],
      ["Kofi", "hop", 1, 31],
    ),
  ).toEqual([]);
  expect(
    problems(
      read(
        "Availability",
        ["Athlete", "From", "May do", "Until"],
        ["Ilka", "2026-05-12", "out", "2026-05-14"],
        ["Kofi", '"', "out", "2026-05-14"],
        ["Ilka", "2026-05-13", "out", "2026-05-14"],
        ["Kofi", '"', "out", "2026-05-14"],
      ),
    ),
  ).toEqual([]);
});
