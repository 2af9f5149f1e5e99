import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Logs of shorthand and grids of dates at their edges; athletes and figures are invented.

const sets = (cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable("Sets", cells, { today, ...more });
const jumps = (cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable("Jumps", cells, { today, ...more });

test("load and speed in columns under each date: shorthand, words, marks and what cannot be read", () => {
  const { reading, tabQuestions } = sets([
    ["SQUAT 2026", "", "", "", "", ""],
    ["", "12/5", "", "28/5", "", ""],
    ["Athlete", "kg", "m/s", "kg", "m/s", "notes"],
    ["Ilka", "85x3x5", 0.6, "", 0.55, ""],
    ["Kofi", "5x5x85", ".6 .59 .58 .57 .56", 80, 0.7, "late"],
    ["Nora", "ride", "", "-", "", ""],
    ["Lena", "", "", "", "", ""],
    ["Mia", "80x3x3", ".66 .64", "", "", ""],
    ["Wren", true, "", new Date(2026, 4, 1), "", ""],
  ]);
  expect(problems(reading)).toEqual([
    "B4 scheme-order-unsettled: 85x3x5",
    "C5 speeds-unsettled: .6 .59 .58 .57 .56",
    "C8 speeds-unsettled: .66 .64",
    "B9 not-a-number: true",
    "D9 date-in-number: 2026-05-01",
    "A4 load-blank: ",
  ]);
  const first = reading.records.filter(({ set }) => set === null || set === 1);
  expect(first.map(shortSet)).toEqual([
    "05-28 Ilka work ?x? 0.55",
    "05-12 Kofi 1 85x5",
    "05-28 Kofi work 80x? 0.7",
    "05-12 Mia 1 80x3",
    "05-12 Wren work ?x?",
    "05-28 Wren work ?x?",
  ]);
  expect(notes(reading)).toEqual(["F5 Kofi: late", "B6 Nora: ride"]);
  expect(tabQuestions.map(({ about }) => about)).toEqual(["set speed", "scheme order", "speeds"]);
  // Lena's row is blank but for her name, so it reads as a heading.
  expect(counts(reading)).toEqual([5, 0, 0, 4]);
});

test("repetitions and speed under each date, no load anywhere: asked what the one speed is", () => {
  const grid = [
    ["SQUAT 2026", "", "", "", ""],
    ["", "12/5", "", "28/5", ""],
    ["Athlete", "reps", "m/s", "reps", "m/s"],
    ["Ilka", 5, 0.6, "", 0.55],
  ];
  const { reading, tabQuestions } = sets(grid);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka work ?x5 0.6",
    "05-28 Ilka work ?x? 0.55",
  ]);
  expect(tabQuestions.map(({ about, samples }) => [about, samples])).toEqual([
    ["set speed", ["0.6", "0.55"]],
  ]);
  const is = (more: object, title = "SQUAT 2026") =>
    sets([[title, "", "", "", ""], ...grid.slice(1)], more).reading.records.map(
      ({ setSpeedIs }) => setSpeedIs,
    );
  expect(is({ tab: { setSpeed: "best rep" } })).toEqual(["best rep", "best rep"]);
  expect(is({ tab: { setSpeed: "mean of reps" } })).toEqual(["mean of reps", "mean of reps"]);
  expect(is({}, "SQUAT, best rep")).toEqual(["best rep", "best rep"]);
  expect(is({}, "SQUAT, mean of set")).toEqual(["mean of reps", "mean of reps"]);
});

test("a weekday's sets are copied from earlier in that week, and from nowhere else", () => {
  const { reading } = sets([
    ["SQUAT, sets x reps x kg", "", "", ""],
    ["", "w/c 4 May", "", "w/c 11 May"],
    ["Athlete", "Mon", "Wed", "Mon"],
    ["Ilka", "2x5x80", "as Mon", "as Wed"],
    ["Kofi", '"', "as Fri", '"'],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-04 Ilka 1 80x5",
    "05-04 Ilka 2 80x5",
    "05-06 Ilka 1 80x5",
    "05-06 Ilka 2 80x5",
  ]);
  expect(problems(reading)).toEqual([
    "D4 nothing-to-repeat: as Wed",
    'B5 nothing-to-repeat: "',
    "C5 nothing-to-repeat: as Fri",
    'D5 nothing-to-repeat: "',
  ]);
});

const log = [
  ["Date", "Athlete", "Exercise", "Work done", "Notes"],
  ["2026-05-12", "Ilka", "box jump", "5x15+5 o straps", ""],
  ["2026-05-12", "Ilka", "box jump", "41 cm", "calm"],
  ["2026-05-12", "Ilka", "box jump", "x9?", ""],
  ["2026-05-12", "Ilka", "squat", "5x5x85", ""],
  ["2026-05-14", "Kofi", "squat", "3x5x90", ""],
  ["total", "", "", "1", ""],
];

test("jumps kept in a log of sets are found there, cleared or not, with their words", () => {
  const { reading, layout } = jumps(log);
  expect(layout).toBe("rows of several sets");
  expect(reading.records.map(shortJump)).toEqual([
    "05-12 Ilka 15 15 15 15 15 5 ✓",
    "05-12 Ilka 41 cm",
  ]);
  expect(reading.records.map(({ note }) => note)).toEqual(["", "calm"]);
  expect(notes(reading)).toEqual(["D2 Ilka: straps"]);
  expect(problems(reading)).toEqual(["D4 jump-unread: x9?"]);
  expect(counts(reading)).toEqual([3, 0, 0, 4]);
  const tables = findTables([{ name: "Gym", cells: log }], { today });
  expect(tables.map(({ table }) => table)).toEqual(["Sets", "Jumps"]);
});

test("rows of jumps whose figures stand in no column anybody knows are read as rows without a figure", () => {
  const { reading, layout } = jumps([
    ["Date", "Athlete", "Test"],
    ["2026-05-12", "Ilka", "box jump"],
  ]);
  expect([layout, problems(reading)]).toEqual(["plain rows", ["A2 no-figure: "]]);
});

test("a column of how many sets beside load and repetitions; a bad day is said once for all its sets", () => {
  const { reading } = sets([
    ["Date", "Athlete", "Exercise", "Load", "Sets", "Reps"],
    ["2026-05-12", "Ilka", "squat", 85, 5, 5],
    ["2026-05-12", "Ilka", "squat", "80x2x2", "", ""],
    ["2026-05-12", "Ilka", "squat", 80, 3, ""],
    ["someday", "Ilka", "squat", 80, 3, 5],
    ["max", "", "", 85, 5, ""],
    ["2026-05-12", "Ilka", "as Fri", "", 3, ""],
  ]);
  expect(reading.records.map(({ loadKg, reps }) => `${loadKg}x${reps}`)).toEqual([
    ...Array(5).fill("85x5"),
    ...Array(2).fill("80x2"),
    ...Array(3).fill("80xnull"),
  ]);
  expect(problems(reading)).toEqual(["C7 nothing-to-repeat: as Fri", "A5 not-a-day: someday"]);
  expect(counts(reading)).toEqual([3, 2, 0, 2]);
});

test("words beside a scheme, a ride, a mark for the row above and a row without an athlete", () => {
  const { reading } = sets([
    ["Date", "Athlete", "Exercise", "Scheme"],
    ["2026-05-12", "Ilka", "squat", "2x2x85 (tired)"],
    ["2026-05-14", "Kofi", "squat", '"'],
    ["2026-05-14", "Ilka", "squat", '"'],
    ["2026-05-14", "Kofi", "", "ride"],
    ["2026-05-14", "", "", ""],
  ]);
  expect(reading.records.map(({ day, note }) => [day, note])).toEqual([
    [20585, "tired"],
    [20585, ""],
    [20587, ""],
    [20587, ""],
  ]);
  expect(problems(reading)).toEqual(['D3 nothing-to-repeat: "', "B6 needed-blank: "]);
  expect(notes(reading)).toEqual(["D5 Kofi: ride"]);
});

test("jumps across dates: a test column where it is filled, a landing in the title, figures under each date", () => {
  const tests = jumps([
    ["Box jump (cm)", "", "", ""],
    ["Athlete", "Test", "12/5/2026", "14/5/2026"],
    ["Ilka", "CMJ", 41, "42 in"],
    ["Kofi", "", 43, "180/.49"],
  ]).reading;
  expect(tests.records.map(({ test, heightCm }) => [test, heightCm])).toEqual([
    ["CMJ", 41],
    ["CMJ", 106.68],
    ["Box jump", 43],
  ]);
  expect(problems(tests)).toEqual(["D4 jump-unread: 180/.49"]);
  const landing = jumps([
    ["drop jump 30 onto 40 cm: contact ms / flight s", "", ""],
    ["Athlete", "12/5/2026", "14/5/2026"],
    ["Ilka", "180/.49", "180/.49/3"],
  ]).reading;
  expect(
    landing.records.map(({ dropCm, landingCm, contactS, flightS }) => [
      dropCm,
      landingCm,
      contactS,
      flightS,
    ]),
  ).toEqual([[30, 40, 0.18, 0.49]]);
  expect(problems(landing)).toEqual(["C3 jump-unread: 180/.49/3"]);
});
