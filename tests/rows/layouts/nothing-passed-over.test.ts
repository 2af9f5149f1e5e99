import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { sayRowIssue } from "../../../src/words/row-issues";
import { notes, problems, shortJump, shortSet, today } from "./short";

// Cells that were once passed over without a word; athletes and figures are invented.

type Cells = readonly (readonly unknown[])[];
const read = <T extends TableName>(table: T, cells: Cells, more = {}) =>
  understandTable<T>(table, cells, { today, ...more });

/** Three columns under each of two dates, one row an athlete. */
const grid = (under: readonly string[], ...rows: Cells): Cells => [
  ["Squat 2026"],
  ["", "5/5", ...under.slice(1).map(() => ""), "28/5"],
  ["Athlete", ...under, ...under],
  ...rows,
];

test("a heading under a date that nobody knows is said once, at its cell, and asked about", () => {
  const { reading, questions } = read(
    "Sets",
    grid(["kg", "Feel", ""], ["Ilka", 80, "fine", 7, 85, "flat", ""]),
  );
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka work 80x?", "05-28 Ilka work 85x?"]);
  expect(problems(reading)).toEqual(["C3 heading-unknown: Feel", "D4 heading-unknown: 7"]);
  expect(sayRowIssue(reading.issues[0]!)).toEqual({
    found: "“Feel”",
    whyItMatters: "Nothing in this column is used: no heading says what it is.",
    whatToDo: "Give it a heading like “Notes”, or leave it alone under Set up.",
  });
  expect(questions).toEqual([
    {
      column: 3,
      heading: "Feel",
      about: "meaning",
      samples: ["fine"],
      guess: null,
      choices: [],
    },
    { column: 4, heading: "", about: "meaning", samples: ["7"], guess: null, choices: [] },
  ]);
});

test("a heading the coach leaves alone is left alone under every date, a column without one by its place", () => {
  const cells = grid(["kg", "Feel", ""], ["Ilka", 80, "fine", 7, 85, "flat", 6]);
  const columns = [3, 4, 7].map((column) => ({ column, field: null }));
  const { reading, questions } = read("Sets", cells, { answers: { columns } });
  expect([problems(reading), questions]).toEqual([[], []]);
  const answered = [
    { column: 4, field: null },
    { column: 3, dateOrder: "day first" as const },
  ];
  const other = { answers: { columns: answered } };
  expect(problems(read("Sets", cells, other).reading)).toEqual([
    "C3 heading-unknown: Feel",
    "G4 heading-unknown: 6",
  ]);
});

test("columns beside the dates are asked about; what holds for all of a row's days is read", () => {
  const { reading, questions } = read("Sets", [
    ["Squat, kg x sets x reps 2026"],
    ["Athlete", "Event", "bar (lb)", "Notes", "5/5", "7/5", "14/5", "21/5", "28/5", "PB"],
    ["Ilka", "mile", 45, "calm", "80x3x5", "", "", "", "", 90],
  ]);
  expect(reading.records.map(({ barKg, note }) => [barKg!.toFixed(2), note])).toEqual(
    Array(3).fill(["20.41", ""]),
  );
  expect([problems(reading), notes(reading)]).toEqual([[], ["D3 Ilka: calm"]]);
  expect(questions.map(({ heading, samples }) => [heading, samples])).toEqual([
    ["Event", ["mile"]],
    ["PB", ["90"]],
  ]);
});

test("a drop beside test days is each day's drop, a private mark beside a diary's dates keeps all private", () => {
  const jumps = read("Jumps", [
    ["Drop jump: contact ms"],
    ["Athlete", "Drop cm", "5/5/2026", "28/5/2026"],
    ["Ilka", 30, 182, 178],
  ]).reading;
  expect(jumps.records.map((jump) => [shortJump(jump), jump.dropCm])).toEqual([
    ["05-05 Ilka 0.182/?", 30],
    ["05-28 Ilka 0.178/?", 30],
  ]);
  const diary = read("Diary", [
    ["Soreness"],
    ["Athlete", "Private?", "5/5/2026", "28/5/2026"],
    ["Ilka", "y", 3, 4],
    ["Kofi", "", 2, 2],
  ]).reading;
  expect(diary.records.map((one) => [one.athlete, one.soreness, one.private])).toEqual([
    ["Ilka", 3, true],
    ["Ilka", 4, true],
    ["Kofi", 2, false],
    ["Kofi", 2, false],
  ]);
});

test("columns under a date that cannot be settled are said by the date alone", () => {
  const { reading, questions } = read(
    "Sets",
    [
      ["Squat"],
      ["", "31/31/2026", "", "5/5/2026", ""],
      ["Athlete", "kg", "Feel", "kg", "reps"],
      ["Ilka", 80, "fine", 85, 5],
    ],
    {},
  );
  expect(problems(reading)).toEqual(["B2 not-a-day: 31/31/2026"]);
  expect(questions).toEqual([]);
});

test("of two columns of one meaning under one date neither counts where they differ", () => {
  const { reading } = read(
    "Sets",
    grid(
      ["kg", "reps", "reps"],
      ["Ilka", 80, 5, 3, 85, 5, 5],
      ["Kofi", 60, "", 3, 65, 5, "-"],
      ["Wren", 40, "-", 4, 45, 5, ""],
    ),
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka work 80x?",
    "05-28 Ilka work 85x5",
    "05-05 Kofi work 60x3",
    "05-28 Kofi work 65x5",
    "05-05 Wren work 40x4",
    "05-28 Wren work 45x5",
  ]);
  expect(problems(reading)).toEqual(["D4 meaning-twice: 3"]);
  expect(sayRowIssue(reading.issues[0]!)).toEqual({
    found: "“3”",
    whyItMatters: "Neither it nor “5” is used, as they differ.",
    whatToDo: "Correct one of the two, or clear it.",
  });
});

test("equal figures in two units differ; a third says so too", () => {
  const { reading } = read("Runs", [
    ["Runs"],
    ["", "5/5/2026", "", "", "28/5/2026"],
    ["Athlete", "min", "km", "miles", "km"],
    ["Ilka", 45, 10, 10, ""],
  ]);
  expect(reading.records.map(({ minutes, km }) => [minutes, km])).toEqual([[45, null]]);
  expect(problems(reading)).toEqual(["D4 meaning-twice: 10"]);
  const three = read(
    "Sets",
    grid(["kg", "RIR", "reserve", "in reserve"], ["Ilka", 80, 2, 3, 3, 85, "", "", ""]),
  ).reading;
  expect(problems(three)).toEqual(["D4 meaning-twice: 3", "E4 meaning-twice: 3"]);
});

test("a diary that answers one question twice a day is asked which, a drop given twice is none", () => {
  const diary = read("Diary", [
    ["Diary"],
    ["", "5/5/2026", "", "28/5/2026"],
    ["Athlete", "sore", "soreness", "soreness"],
    ["Ilka", 3, 4, 2],
  ]).reading;
  expect(diary.records.map(({ soreness }) => soreness)).toEqual([null, 2]);
  expect(problems(diary)).toEqual(["C4 meaning-twice: 4"]);
  const jumps = read("Jumps", [
    ["Drop jump"],
    ["", "5/5/2026", "", "", "28/5/2026"],
    ["Athlete", "contact ms", "drop cm", "drop height cm", "contact ms"],
    ["Ilka", 182, 30, 40, 178],
  ]).reading;
  expect(jumps.records.map(({ dropCm }) => dropCm)).toEqual([null, null]);
  expect(problems(jumps)).toEqual(["D4 meaning-twice: 40"]);
});

test("two figures that can be no date do not make a row of sets a header of dates", () => {
  const { layout } = read("Sets", [
    ["Date", "Exercise", "Load", "Reps"],
    ["82/84", "squat", "80/85", 5],
  ]);
  expect(layout).not.toBe("dates across");
});

test("every lift of a row is read, though its heading says the order of load, sets and repetitions", () => {
  const { reading, questions } = read("Sets", [
    ["Date", "Athlete", "Squat kg x sets x reps", "Hip thrust kg x sets x reps", "RIR", "Zeal"],
    ["2026-05-12", "Ilka", "80x1x5", "95x1x3", 2, "high"],
  ]);
  expect(reading.records.map((set) => [set.exercise, shortSet(set), set.repsInReserve])).toEqual([
    ["squat", "05-12 Ilka 1 80x5", 2],
    ["hip thrust", "05-12 Ilka 1 95x3", 2],
  ]);
  expect(problems(reading)).toEqual([]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Zeal"]);
});

test("one test in two columns is two jumps; a column that belongs to no test is said", () => {
  const { reading } = read("Jumps", [
    ["Date", "Athlete", "CMJ cm", "CMJ (cm)", "Attempt", "Note"],
    ["2026-05-12", "Ilka", 41, 43, 2, "late"],
    ["2026-05-19", "Ilka", "", "", "", "knee"],
    ["some day", "Kofi", "sore", "", "", ""],
  ]);
  expect(reading.records.map(shortJump)).toEqual(["05-12 Ilka 41 cm", "05-12 Ilka 43 cm"]);
  expect(problems(reading)).toEqual(["E1 heading-unknown: Attempt", "A4 not-a-day: some day"]);
  expect(notes(reading)).toEqual(["F3 Ilka: knee", "C4 Kofi: sore"]);
  expect(reading.notes!.map(({ day }) => day)).toEqual([20592, null]);
});

test("in a log a missing load is a set without one, and sets and repetitions that are none are said", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "Load", "Sets", "Reps"],
    ["2026-05-12", "Ilka", "pull-up", "body", 2, 8],
    ["2026-05-12", "Ilka", "pull-up", "-", 2, 6],
    ["2026-05-12", "Ilka", "squat", 80, 2, "few"],
    ["2026-05-12", "Ilka", "squat", '"', 2, 4],
    ["2026-05-13", "Ilka", "squat", '"', "", ""],
    ["2026-05-12", "Ilka", "squat", "", "", ""],
  ]);
  expect(reading.records.map((set) => `${set.row} ${shortSet(set).slice(11)}`)).toEqual([
    "2 1 ?x8",
    "2 2 ?x8",
    "3 3 ?x6",
    "3 4 ?x6",
    "4 1 80x?",
    "4 2 80x?",
    "5 3 80x4",
    "5 4 80x4",
    "6 1 80x4",
    "6 2 80x4",
  ]);
  expect(problems(reading)).toEqual(["F4 not-a-number: few", "D2 not-a-number: body"]);
});

test("shorthand beside columns that say otherwise gives neither figure", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "kg x sets x reps", "Load", "Sets", "Reps"],
    ["2026-05-12", "Ilka", "squat", "80x2x5", 80, 2, 5],
    ["2026-05-13", "Ilka", "squat", "80x2x5", 85, "", ""],
    ["2026-05-14", "Ilka", "squat", "80x2x5", "heavy", "", 4],
    ["2026-05-15", "Ilka", "squat", "80x2x5", "", 4, ""],
  ]);
  expect(reading.records.map((set) => shortSet(set))).toEqual([
    "05-12 Ilka 1 80x5",
    "05-12 Ilka 2 80x5",
    "05-13 Ilka 1 ?x5",
    "05-13 Ilka 2 ?x5",
    "05-14 Ilka 1 80x?",
    "05-14 Ilka 2 80x?",
  ]);
  expect(problems(reading)).toEqual([
    "E3 meaning-twice: 85",
    "G4 meaning-twice: 4",
    "E4 not-a-number: heavy",
    "F5 meaning-twice: 4",
    "D3 load-blank: 80x2x5",
  ]);
});

test("a log's rows of no lift, and its jumps, keep the figures beside them as words", () => {
  const cells = [
    ["Date", "Athlete", "Exercise", "kg x sets x reps", "Speed", "RIR", "Set", "Zeal"],
    ["2026-05-12", "Ilka", "squat", "ride", 0.6, 2, "", ""],
    ["2026-05-12", "Ilka", "box jump", "5x15", 0.7, "", 3, ""],
    ["2026-05-13", "Ilka", "squat", "80x1x5", "", "", 4, "high"],
    ["no day", "Ilka", "squat", "ride", "", "", "", ""],
  ];
  const sets = read("Sets", cells);
  expect(notes(sets.reading)).toEqual([
    "D2 Ilka: squat; ride; Speed 0.6; RIR 2",
    "D5 Ilka: squat; ride",
  ]);
  expect(problems(sets.reading)).toEqual(["G1 heading-unknown: Set", "A5 not-a-day: no day"]);
  expect(sets.questions.map(({ heading }) => heading)).toEqual(["Set", "Zeal"]);
  const jumps = read("Jumps", cells);
  expect(jumps.reading.records.map(({ note }) => note)).toEqual(["Speed 0.7; Set 3"]);
  expect(jumps.questions).toEqual([]);
});

test("in blocks all words beside a set are its note, figures there are said, and repetitions agree", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor"],
    ["5 May"],
    ["SQUAT", "kg x sets x reps", "load", "reps", "m/s", "notes", "Feel", "Zeal"],
    ["", "", 80, 5, 0.6, "calm", "fine", 7],
    ["", "80x2x5", 85, 4, "", "", "", 8],
    ["", "80x1x5", 80, 5, "", "", "", ""],
  ]);
  expect(reading.records.map((set) => [shortSet(set), set.note])).toEqual([
    ["05-05 Ilka Brandmoor work 80x5 0.6", "calm; fine"],
    ["05-05 Ilka Brandmoor 1 ?x?", ""],
    ["05-05 Ilka Brandmoor 2 ?x?", ""],
    ["05-05 Ilka Brandmoor 3 80x5", ""],
  ]);
  expect(problems(reading)).toEqual([
    "H3 heading-unknown: Zeal",
    "C5 meaning-twice: 85",
    "D5 meaning-twice: 4",
    "B5 load-blank: 80x2x5",
  ]);
  expect(notes(reading)).toEqual(["G4 Ilka Brandmoor: fine"]);
});

test("a row of blocks without a readable day says that all of it is left out", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor"],
    ["Date", "SQUAT", "kg", "reps"],
    ["soon", 1, 80, 5],
  ]);
  expect(problems(reading)).toEqual(["A3 not-a-day: soon"]);
  expect(sayRowIssue(reading.issues[0]!).whyItMatters).toBe(
    "The whole row is left out of the figures.",
  );
});

test("repetitions listed in one cell stand where those in columns of their own are blank", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "Load", "Rep speeds", "Rep 1", "Rep 2"],
    ["2026-05-12", "Ilka", "squat", 80, "0.62 0.6", "", ""],
    ["2026-05-13", "Ilka", "squat", 80, "0.62 0.6", 0.62, 0.6],
    ["2026-05-14", "Ilka", "squat", 80, "0.62 0.6", 0.72, 0.7],
    ["2026-05-15", "Ilka", "squat", 80, "", 0.72, 0.7],
    ["2026-05-16", "Ilka", "squat", 80, 0.71, 0.72, 0.7],
  ]);
  expect(reading.records.map(({ repSpeeds }) => repSpeeds)).toEqual([
    [0.62, 0.6],
    [0.62, 0.6],
    [],
    [0.72, 0.7],
    [0.72, 0.7],
  ]);
  expect(problems(reading)).toEqual(["E4 speeds-twice: 0.62 0.6"]);
});

test("a rule, a lift or a test with a sign that is also a unit is no row of units", () => {
  const { reading } = read("Rules", [
    ["Rule", "Value"],
    ["Velocity loss cap", '"'],
  ]);
  expect(problems(reading)).toEqual(['B2 not-a-number: "']);
  const races = read("Races", [
    ["Date", "Race", "Distance"],
    ["", "Spring mile", "km"],
  ]).reading;
  expect(problems(races)).toEqual(["A2 needed-blank: ", "C2 not-a-number: km"]);
});

test("repetitions a side that differ are no repetitions a side, and a row of figures above dates is no title", () => {
  const sides = read("Sets", [
    ["Ilka Brandmoor"],
    ["5 May"],
    ["SPLIT SQUAT", "kg", "r1", "r2"],
    [1, 16, "6+6", "5+5"],
    [2, 16, "6+6", "6+5"],
    [3, 16, "6+6", "-"],
  ]).reading;
  expect(sides.records.map(shortSet)).toEqual([
    "05-05 Ilka Brandmoor work 16x6",
    "05-05 Ilka Brandmoor work 16x5",
    "05-05 Ilka Brandmoor 2 16x?",
    "05-05 Ilka Brandmoor work 16x6",
  ]);
  expect(problems(sides)).toEqual(["C5 not-a-number: 6+6", "D5 not-a-number: 6+5"]);
  const grid = read("Jumps", [
    ["2026-05-04", "Ilka", 42],
    ["Box jump", "5/5/2026", "28/5/2026"],
    ["Ilka", 41, 43],
  ]).reading;
  expect(problems(grid)).toEqual(["A1 row-unread: 2026-05-04"]);
  expect(grid.records).toHaveLength(2);
  const units = read("Sets", [
    ["Date", "Athlete", "Exercise", "Load"],
    ["soon", "", "", '"'],
    ["2026-05-12", "Ilka", "squat", 80],
  ]).reading;
  expect(problems(units)).toEqual(["A2 not-a-day: soon"]);
});

test.each<[readonly unknown[], readonly string[]]>([
  [["Ilka", 1, 80, 3, 0.71, "calm"], ["A1 row-unread: Ilka"]],
  [["Target", 85, 87.5], ["A1 row-unread: Target"]],
  [["Target", 87.5], ["A1 row-unread: Target"]],
  [["Weeks", 2, 1], ["A1 row-unread: Weeks"]],
  [["Target", 85], ["A1 row-unread: Target"]],
  [["Target", 2101], ["A1 row-unread: Target"]],
  [["Weeks", 19, "", 20, 22], []],
  [["Season", 2026], []],
  [["Back squat", "5x5"], []],
])(
  "of a row above the dates figures are told, years and counted weeks are a title: %j",
  (row, told) => {
    const grid = read("Sets", [
      row,
      ["Back squat", "5/5/2026", "28/5/2026"],
      ["Ilka", "85x5", "85x5"],
    ]).reading;
    expect([grid.records.length, problems(grid)]).toEqual([2, told]);
  },
);

test("races with a column nobody explains beside their runners are asked about it alone", () => {
  const { layout, questions } = read("Races", [
    ["Date", "Race", "Ilka", "Zeal"],
    ["2026-05-12", "R5", "✓", "high"],
  ]);
  expect(layout).toBe("runners across");
  expect(questions.map(({ heading }) => heading)).toEqual(["Zeal"]);
});

const plainRow = (head: readonly string[], again: string) =>
  head.map((heading) => {
    if (heading === "Date") return `2026-05-${again}`;
    if (/Athlete|Person/.test(heading)) return "Ilka";
    if (/Exercise|Movement name/.test(heading)) return "squat";
    return /Set|Reps/.test(heading) ? 3 : /Load|Iron/.test(heading) ? 80 : 0.6;
  });

test.each([
  [["Date", "Athlete", "Exercise", "Set", "Iron", "Speed"], "load"],
  [["Date", "Athlete", "Exercise", "Set", "Reps", "Iron", "Rep 1", "Rep 2"], "load"],
  [["Date", "Athlete", "Exercise", "Set", "Speed"], "load"],
  [["Date", "Person", "Exercise", "Set", "Reps", "Load", "Speed"], "athlete"],
  [["Date", "Athlete", "Movement name", "Set", "Load", "Speed"], "exercise"],
])("plain rows under %j lack one column: it is named, not every row", (head, field) => {
  const cells = [head, plainRow(head, "12"), plainRow(head, "13")];
  const { reading, layout } = read("Sets", cells);
  expect(layout).toBe("not recognised");
  expect(reading.records).toEqual([]);
  expect(reading.issues.map(({ code, facts }) => [code, facts.field])).toEqual([
    ["column-missing", field],
  ]);
});

test("once somebody says which column it is, the rows are read", () => {
  const head = ["Date", "Athlete", "Exercise", "Set", "Iron", "Speed"];
  const cells = [head, plainRow(head, "12"), plainRow(head, "13")];
  const answers = { columns: [{ column: 5, field: "load" }] };
  expect(read("Sets", cells, { answers }).reading.records.map(({ loadKg }) => loadKg)).toEqual([
    80, 80,
  ]);
});
