import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Whose row it is and what a block's title says, where they stand oddly; all invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });

test("names may stand behind the dates, or behind a column of notes", () => {
  const behind = read("Sets", [
    ["Squat 2026", "", ""],
    ["5/5", "28/5", ""],
    ["85x5", "86x5", "Ilka"],
  ]).reading;
  expect(behind.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5", "05-28 Ilka 1 86x5"]);
  const noted = read("Sets", [
    ["Squat 2026", "", "", ""],
    ["Notes", "", "5/5", "28/5"],
    ["sore", "Ilka", "85x5", "86x5"],
  ]).reading;
  expect(noted.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5", "05-28 Ilka 1 86x5"]);
  expect([notes(noted), problems(noted)]).toEqual([["A3 Ilka: sore"], []]);
});

test("what stands under a date that cannot be told is nobody's name", () => {
  const { reading } = read(
    "Runs",
    [
      ["Runs, min", "", ""],
      ["31/31/2026", "6/6/2026", ""],
      ["45 min", "47", "Ilka"],
    ],
    { said: true },
  );
  expect(reading.records.map(({ athlete, minutes }) => [athlete, minutes])).toEqual([["Ilka", 47]]);
  expect(problems(reading)).toEqual(["A2 not-a-day: 31/31/2026"]);
});

test("names are looked for in six columns; rows without one there are told", () => {
  const grid = (...before: string[]) =>
    read("Sets", [
      ["Squat 2026", ...before, "", ""],
      ["", ...before, "5/5", "28/5"],
      [...before, "Ilka", "85x5", "86x5"],
    ]).reading;
  expect(grid("", "", "", "", "").records.map(({ athlete }) => athlete)).toEqual(["Ilka", "Ilka"]);
  expect(problems(grid("", "", "", "", "", ""))).toEqual(["A3 needed-blank: "]);
});

test("athletes may go by numbers, also one of whom nothing is written, and Max may be the last", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", ""],
    [2026, "5/5", "28/5"],
    [12, "85x5", ""],
    [13, "", ""],
    ["Max", "", "80x5"],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 12 1 85x5", "05-28 Max 1 80x5"]);
  expect(problems(reading)).toEqual([]);
  expect(counts(reading)).toEqual([3, 0, 0, 2]);
});

test("two spaces within a name are one, also beside a note", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", ""],
    ["", "5/5", "28/5"],
    [" Kofi  A. ", "85x5", "ride"],
  ]);
  expect(notes(reading)).toEqual(["C3 Kofi A.: ride"]);
});

test.each([
  ["* hands on knees", "hands on knees"],
  [" *hands on knees", "hands on knees"],
  ["* hands\non knees", "hands\non knees"],
])("the footnote “%s” stands beside what it marks", (foot, words) => {
  const { reading } = read("Jumps", [
    ["Box jump 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "2x15+5*", ""],
    [foot, "", ""],
  ]);
  expect(reading.records.map((jump) => `${shortJump(jump)} ${jump.note}`)).toEqual([
    `05-05 Ilka 15 15 5 ✗ ${words}`,
  ]);
});

test("a block without a title is of the test that the tab is named for, the first as well as the next", () => {
  const tests = (...title: string[]) =>
    read(
      "Jumps",
      [
        ...title.map((words) => [words, "", ""]),
        ["", "5/5/2026", "12/5/2026"],
        ["Ilka", 31, 32],
        ["", "28/5/2026", "2/6/2026"],
        ["Ilka", 33, 34],
      ],
      { title: "Hop" },
    ).reading.records.map(({ test }) => test);
  expect(tests()).toEqual(["Hop", "Hop", "Hop", "Hop"]);
  expect(tests("Box jump")).toEqual(["Box jump", "Box jump", "Hop", "Hop"]);
});

test("titles in two cells are read apart", () => {
  const { reading } = read("Sets", [
    ["Squat, mean speed, lb", "Spring 2026", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "185x3 .61", ""],
  ]);
  expect(reading.records.map(({ loadKg, speedIs }) => [loadKg, speedIs])).toEqual([
    [185 * 0.45359237, "mean"],
  ]);
});

test("names headed below the dates, and a lift or a test beside them, belong to the header", () => {
  const grid = (second: string, ...row: unknown[]) => [
    ["Spring 2026", "", "", "", ""],
    ["", "", "5/5", "28/5", "Notes"],
    ["Athlete", second, "", "", ""],
    ["Ilka", ...row, "sore"],
  ];
  const sets = read("Sets", grid("Lift", "squat", "85x5", "86x5"));
  expect(sets.reading.records.map((set) => `${shortSet(set)} ${set.exercise}`)).toEqual([
    "05-05 Ilka 1 85x5 squat",
    "05-28 Ilka 1 86x5 squat",
  ]);
  const jumps = read("Jumps", grid("Test", "hop", 31, 32));
  expect(jumps.reading.records.map((jump) => `${shortJump(jump)} ${jump.test}`)).toEqual([
    "05-05 Ilka 31 cm hop",
    "05-28 Ilka 32 cm hop",
  ]);
  for (const { reading, questions } of [sets, jumps]) {
    expect([...problems(reading), ...questions]).toEqual([]);
    expect(notes(reading)).toEqual(["E4 Ilka: sore"]);
    expect(counts(reading)).toEqual([1, 0, 0, 3]);
  }
});

test("figures stand under the dates themselves where only notes are named beside them", () => {
  const grid = (...heads: string[]) =>
    read("Jumps", [
      ["Box jump (cm) 2026", "", "", "", ""],
      ["", "5/5", "", "28/5", ""],
      ["Athlete", ...heads],
      ["Ilka", 31, "tired", 32, ""],
    ]).reading;
  for (const heads of [
    ["", "notes", "", "notes"],
    ["", "notes", "", ""],
  ]) {
    const reading = grid(...heads);
    expect(reading.records.map(shortJump)).toEqual(["05-05 Ilka 31 cm", "05-28 Ilka 32 cm"]);
    expect([notes(reading), problems(reading)]).toEqual([["C4 Ilka: tired"], []]);
  }
  // Which column holds the figures, where the notes stand under the dates, nothing says.
  const notesFirst = grid("notes", "", "notes", "");
  expect(notesFirst.records).toEqual([]);
  expect(problems(notesFirst)).toEqual(["C4 heading-unknown: tired"]);
});

test("what stands beside the dates is read in the unit of its heading, in either row of the header", () => {
  const drops = (upper: string, lower: string) =>
    read("Jumps", [
      ["Drop jump 2026", "", "", ""],
      ["", upper, "5/5", "28/5"],
      ["Athlete", lower, "contact ms", "contact ms"],
      ["Ilka", 12, 182, 178],
    ]).reading.records.map(({ dropCm }) => dropCm);
  expect(drops("Drop (in)", "")).toEqual([30.48, 30.48]);
  expect(drops("", "Drop (in)")).toEqual([30.48, 30.48]);
});

test("a column of lifts or of tests beside the dates is not asked about, also where a title names one", () => {
  const asked = <T extends TableName>(table: T, head: string, ...row: unknown[]) =>
    read(table, [
      ["Squat and hop 2026", "", "", ""],
      ["Athlete", head, "5/5", "28/5"],
      ["Ilka", ...row],
    ]).questions;
  expect(asked("Sets", "Lift", "front squat", "85x5", "86x5")).toEqual([]);
  expect(asked("Jumps", "Test", "hop", 31, 32)).toEqual([]);
});

test("a header of dates with nobody below it lends the next block no title", () => {
  const { reading } = read(
    "Jumps",
    [
      ["", "5/5/2026", "12/5/2026"],
      ["", "28/5/2026", "2/6/2026"],
      ["Ilka", 33, 34],
    ],
    { title: "Hop" },
  );
  expect(reading.records.map(({ test }) => test)).toEqual(["Hop", "Hop"]);
});

test("a ticked box in the corner of a grid is no title", () => {
  const { reading } = read("Jumps", [
    ["Hop 2026", "", ""],
    [true, "5/5", "28/5"],
    ["Ilka", 31, 32],
  ]);
  expect(reading.records.map(({ test }) => test)).toEqual(["Hop 2026", "Hop 2026"]);
});

test("notes headed beside the names, below the dates, leave the figures where they are", () => {
  const { reading } = read("Jumps", [
    ["Hop 2026", "", "", ""],
    ["", "", "5/5", "28/5"],
    ["Athlete", "Notes", "", ""],
    ["Ilka", "sore", 31, 32],
  ]);
  expect(reading.records.map(shortJump)).toEqual(["05-05 Ilka 31 cm", "05-28 Ilka 32 cm"]);
  expect([notes(reading), problems(reading)]).toEqual([["B4 Ilka: sore"], []]);
});

test("an athlete's row is read, whatever is told of its cells", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "lots 5", ""],
  ]);
  expect(problems(reading)).toEqual(["B3 scheme-unread: lots 5"]);
  expect(counts(reading)).toEqual([1, 0, 0, 2]);
});
