import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { sayRowIssue } from "../../../src/words/row-issues";
import { shortSet, today } from "../layouts/short";

const read = <T extends TableName>(table: T, ...cells: readonly (readonly unknown[])[]) =>
  understandTable<T>(table, cells, { today }).reading;
const said = (reading: ReturnType<typeof read>) =>
  reading.issues.map(({ cell, code, dropsRow }) => `${cell} ${code}${dropsRow ? ", row out" : ""}`);
const head = ["Date", "Athlete", "Exercise", "Set", "Load", "Speed", "Tool"];

test.each(["#REF!", "#NAME?", "#N/A", "#VALUE!", "#DIV/0!", "#NUM!", "#NULL!", "#NV", "#BEZUG!"])(
  "%s is nobody's name and no lift: the row is left out, and its cell named",
  (error) => {
    const reading = read(
      "Sets",
      head,
      ["2026-05-12", "Ilka", "squat", 1, 80, 0.6, "A"],
      ["2026-05-12", error, "squat", 1, 90, 0.6, "A"],
      ["2026-05-12", "Ilka", error, 1, 100, 0.6, "A"],
    );
    expect(reading.records.map(shortSet)).toEqual(["05-12 Ilka 1 80x? 0.6"]);
    expect(said(reading)).toEqual(["B3 cell-error, row out", "C4 cell-error, row out"]);
    expect(JSON.stringify(sayRowIssue(reading.issues[0]!))).toMatch(
      /The formula in B3 gives an error/,
    );
  },
);

test("under a merged name a formula's error is not the name above it, nor are the rows below it", () => {
  const row = (name: string, load: number) => ["2026-05-12", name, "squat", 1, load, 0.6, "A"];
  const reading = read("Sets", head, row("Ilka", 70), row("", 75), row("#N/A", 80), row("", 85));
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([70, 75]);
  expect(said(reading)).toEqual(["B4 cell-error, row out", "B5 needed-blank, row out"]);
});

test("an error where words may be left out leaves them out, and is said; “#N/A” says that there are none", () => {
  const row = (tool: string, set: number) => ["2026-05-12", "Ilka", "squat", set, 80, 0.6, tool];
  const reading = read("Sets", head, row("#REF!", 1), row("#N/A", 2), row("A", 3));
  expect(reading.records.map(({ tool }) => tool)).toEqual(["", "", "A"]);
  expect(said(reading)).toEqual(["G2 cell-error"]);
});

test("however many rows there are, none of them is an error's", () => {
  const rows = Array.from({ length: 600 }, (_, at) => [
    "2026-05-12",
    at === 500 ? "#REF!" : `Runner ${at}`,
    "squat",
    1,
    80,
    0.6,
    "A",
  ]);
  const reading = read("Sets", head, ...rows);
  expect(reading.records).toHaveLength(599);
  expect(said(reading)).toEqual(["B502 cell-error, row out"]);
});

test("an athlete, a race or whom it is for that a formula failed to give is none, least of all everybody", () => {
  expect(said(read("Athletes", ["Athlete", "Group"], ["#NAME?", "track"]))).toEqual([
    "A2 cell-error, row out",
  ]);
  const races = read(
    "Races",
    ["Date", "Race", "Who"],
    ["2026-05-12", "#REF!", "Ilka"],
    ["2026-05-13", "Mile", "#REF!"],
    ["2026-05-14", "Mile", '"'],
    ["2026-05-15", "Mile", ""],
    ["2026-05-16", "Mile", '"'],
  );
  expect(races.records.map(({ row, who }) => [row, who])).toEqual([
    [5, "all"],
    [6, "all"],
  ]);
  expect(said(races)).toEqual([
    "B2 cell-error, row out",
    "C3 cell-error, row out",
    "C4 needed-blank, row out",
  ]);
});

test.each([
  ["Jumps", ["Date", "Athlete", "Test", "Height"], ["2026-05-12", "Ilka", "#REF!", 30], "C2"],
  ["Jumps", ["Date", "Athlete", "Test", "Height"], ["2026-05-12", "#REF!", "CMJ", 30], "B2"],
  ["Diary", ["Date", "Athlete", "Sleep"], ["2026-05-12", "#REF!", 8], "B2"],
  ["Runs", ["Date", "Athlete", "Km"], ["2026-05-12", "#REF!", 8], "B2"],
  ["Availability", ["Athlete", "From", "May do"], ["#REF!", "2026-05-12", "out"], "A2"],
  ["Rules", ["Rule", "Value"], ["#REF!", 3], "A2"],
] as const)(
  "in the %s an error in place of needed words is said once",
  (table, heads, row, cell) => {
    expect(said(read<TableName>(table, heads, row))).toEqual([`${cell} cell-error, row out`]);
  },
);
