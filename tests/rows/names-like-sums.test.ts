import { understandTable } from "../../src/rows/read-table";
import type { TableName } from "../../src/rows/table-name";
import { counts, problems, shortJump, shortSet, today } from "./layouts/short";

// Max and Min are words of sums and first names; a runner of that name is not passed over.

type Row = readonly unknown[];
const read = <T extends TableName>(table: T, ...cells: readonly Row[]) =>
  understandTable<T>(table, cells, { today }).reading;

test("Max and Min stand in the list of athletes, a total below them does not", () => {
  const reading = read(
    "Athletes",
    ["Athlete", "Group"],
    ["Ilka", "A"],
    ["Max", "A"],
    ["min", "B"],
    ["Total", 3],
    ["Bestwert", 3],
    ["Summe: 3 Athleten", ""],
    ["Total athletes: 3", ""],
    ["Gesamt 3", ""],
    ["3 athletes", ""],
  );
  expect(reading.records.map(({ athlete }) => athlete)).toEqual(["Ilka", "Max", "min"]);
  expect(counts(reading)).toEqual([3, 0, 0, 7]);
});

test("Max lifts under another's day, and where a tab is of one lift", () => {
  const days = read(
    "Sets",
    ["Date", "Athlete", "Exercise", "Load"],
    ["2026-05-12", "Ilka", "squat", 80],
    ["", "Max", "squat", 90],
    ["Max", "", "", 90],
    ["", "Total", "", 170],
  );
  expect(days.records.map(shortSet)).toEqual(["05-12 Ilka work 80x?", "05-12 Max work 90x?"]);
  expect(counts(days)).toEqual([2, 0, 0, 3]);
  const oneLift = understandTable(
    "Sets",
    [
      ["Athlete", "Date", "Load", "Speed"],
      ["Max", "2026-05-12", 80, 0.62],
      ["Ilka", "2026-05-12", 80, 0.62],
      ["AVG", "", 80, 0.62],
    ],
    { today, title: "Back squat" },
  ).reading;
  expect(oneLift.records.map(({ athlete }) => athlete)).toEqual(["Max", "Ilka"]);
  expect(counts(oneLift)).toEqual([2, 0, 0, 2]);
});

test("a spell of Max without its first day is asked about, as anybody's", () => {
  const reading = read("Availability", ["Athlete", "From", "May do"], ["Max", "", "out"]);
  expect(problems(reading)).toEqual(["B2 needed-blank: "]);
});

test("Max alone on a line begins his own block", () => {
  const block = (name: string, load: number) => [
    [name, "", ""],
    ["2026-05-12", "", ""],
    ["Squat", "Load", "Reps"],
    [1, load, 5],
  ];
  const reading = read("Sets", ...block("Ilka", 80), ...block("Max", 90));
  expect(reading.records.map(shortSet)).toEqual(["05-12 Ilka 1 80x5", "05-12 Max 1 90x5"]);
});

test("in a grid of days Max stands among the athletes, and below them beside another sum he does not", () => {
  const reading = read(
    "Jumps",
    ["CMJ cm", "5 May 2026", "12 May 2026"],
    ["Ilka", 31, 32],
    ["Max", 35, 36],
    ["Kofi", 33, 34],
    ["AVG", 33, 34],
    ["Max", 35, 36],
    ["", "", ""],
    ["Max", 35, 36],
    ["Min", 31, 32],
  );
  expect(reading.records.map(shortJump)).toEqual([
    "05-05 Ilka 31 cm",
    "05-12 Ilka 32 cm",
    "05-05 Max 35 cm",
    "05-12 Max 36 cm",
    "05-05 Kofi 33 cm",
    "05-12 Kofi 34 cm",
  ]);
});

test("Max runs the races of a plan with dates across, a total of its runners does not", () => {
  const plan = [
    ["Athlete", "13 June", "20 June"],
    ["", "Club night", "State relays"],
    ["Ilka", "800", ""],
    ["Max", "x", "x"],
    ["Total", 2, 1],
  ];
  const { reading } = understandTable("Races", plan, { today, said: true });
  expect(reading.records.map(({ race, who }) => `${who}: ${race}`)).toEqual([
    "Ilka: Club night",
    "Max: Club night",
    "Max: State relays",
  ]);
  expect(counts(reading)).toEqual([2, 0, 0, 3]);
});

test("tests across the columns and sets in shorthand are read of Max too", () => {
  const tests = read(
    "Jumps",
    ["Athlete", "Date", "CMJ (cm)", "Drop jump (cm)"],
    ["Max", "2026-05-12", 35, 30],
    ["Ilka", "2026-05-12", 31, 28],
    ["AVG", "", 33, 29],
  );
  expect([...new Set(tests.records.map(({ athlete }) => athlete))]).toEqual(["Max", "Ilka"]);
  const shorthand = read(
    "Sets",
    ["Athlete", "Date", "Exercise", "Scheme"],
    ["Max", "2026-05-12", "squat", "2x5 @ 80"],
    ["total", "", "", "1"],
  );
  expect(shorthand.records.map(shortSet)).toEqual(["05-12 Max 1 80x5", "05-12 Max 2 80x5"]);
  const named = read(
    "Sets",
    ["Set", "Name", "Load", "Reps"],
    ["12 May 2026", "", "", ""],
    ["squat", "", "", ""],
    ["", "Max", 80, 5],
    ["", "AVG", 80, 5],
  );
  expect(named.records.map(shortSet)).toEqual(["05-12 Max work 80x5"]);
});

test("a sum beside the athlete's name is no lift, set, test or run", () => {
  const sets = read(
    "Sets",
    ["Date", "Athlete", "Exercise", "Set", "Load", "Kind"],
    [new Date(2026, 4, 12), "Ilka", "squat", 1, 80, ""],
    [new Date(2026, 4, 12), "Ilka", "Total", "", 160, ""],
    ["2026-05-12", "Ilka", "squat", "Ø", 80, ""],
    ["2026-05-12", "Ilka", "Tonnage", "", 160, ""],
    ["2026-05-12", "Ilka", "squat", 2, 80, "Volume"],
  );
  expect(sets.records.map(shortSet)).toEqual(["05-12 Ilka 1 80x?"]);
  expect(problems(sets)).toEqual(["F6 word-unknown: Volume"]);
  expect(counts(sets)).toEqual([1, 1, 0, 4]);
  const log = read(
    "Sets",
    ["Date", "Athlete", "Exercise", "Sets", "Load"],
    ["2026-05-12", "Ilka", "squat", 2, 80],
    ["2026-05-12", "Ilka", "Summe", 2, 160],
  );
  expect(log.records.map(({ set, loadKg }) => [set, loadKg])).toEqual([
    [1, 80],
    [2, 80],
  ]);
  const jumps = read(
    "Jumps",
    ["Date", "Athlete", "Test", "Height (cm)"],
    ["2026-05-12", "Ilka", "CMJ", 31],
    ["2026-05-12", "Ilka", "Mean", 31],
    ["2026-05-12", "Ilka", "Best", 31],
  );
  expect(jumps.records.map(({ test }) => test)).toEqual(["CMJ", "Best"]);
  const runs = read(
    "Runs",
    ["Date", "Athlete", "Type", "Minutes"],
    ["2026-05-12", "Ilka", "easy", 40],
    ["2026-05-17", "Ilka", "Total", 160],
  );
  expect(runs.records.map(({ minutes }) => minutes)).toEqual([40]);
});

test("rows of averages and sums are known in other languages", () => {
  const reading = read(
    "Sets",
    ["Date", "Athlete", "Exercise", "Load"],
    ["2026-05-12", "Ilka", "squat", 80],
    ["Moyenne", "", "", 80],
    ["Promedio", "", "", 80],
    ["Totale", "", "", 80],
  );
  expect([problems(reading), counts(reading)]).toEqual([[], [1, 0, 0, 4]]);
});
