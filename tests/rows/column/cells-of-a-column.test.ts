import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { counts, problems, shortSet, today } from "../layouts/short";

// Single cells as coaches type them, column by column; athletes and figures are invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });
const squat = (...cells: unknown[]) => ["2026-05-12", "Ilka", "squat", ...cells];

test("marks for the cell above repeat it down every column, and are nothing where nothing stands above", () => {
  const { reading } = read("Sets", [
    [
      "Date",
      "Time",
      "Athlete",
      "Exercise",
      "Set",
      "Reps",
      "Load (kg)",
      "Speed (m/s)",
      "ok",
      "Kind",
    ],
    ["2026-05-12", '"', "Ilka", "squat", '"', '"', '"', '"', '"', '"'],
    ['"', "17:30", '"', '"', 2, 5, 80, 0.6, "n", "wu"],
    ['"', '"', '"', '"', 3, '"', '"', '"', '"', '"'],
  ]);
  expect(
    reading.records.map(({ minute, set, kind, reps, loadKg, setSpeed, movedWell }) => [
      minute,
      set,
      kind,
      reps,
      loadKg,
      setSpeed,
      movedWell,
    ]),
  ).toEqual([
    [null, null, "work", null, null, null, null],
    [1050, 2, "warm-up", 5, 80, 0.6, false],
    [1050, 3, "warm-up", 5, 80, 0.6, false],
  ]);
  expect(problems(reading)).toEqual([]);
});

test("times of day: half days and marks say no minute, a time that is none is reported, the row stays", () => {
  const { reading } = read("Sets", [
    ["Date", "Time", "Athlete", "Exercise", "Load (kg)"],
    ...["am", "PM", "n/a", "25:61", 0.5, 7, ""].map((time, at) => [
      "2026-05-12",
      time,
      "Ilka",
      "squat",
      80 + at,
    ]),
  ]);
  expect(reading.records.map(({ minute }) => minute)).toEqual([
    null,
    null,
    null,
    null,
    720,
    null,
    null,
  ]);
  expect(problems(reading)).toEqual(["B5 not-a-time: 25:61", "B7 not-a-time: 7"]);
});

test("a unit of something else, grouped thousands, pounds in a cell, words and doubts in a load", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "Load (kg)"],
    ...["80 m", "82,5", "100 lb", "heavy", "82.5?", "1250"].map((load) => squat(load)),
  ]);
  expect(reading.records.map(({ loadKg }) => loadKg && Math.round(loadKg * 100) / 100)).toEqual([
    null,
    82.5,
    45.36,
    null,
    null,
    null,
  ]);
  expect(problems(reading)).toEqual([
    "D2 wrong-unit: 80 m",
    "D5 not-a-number: heavy",
    "D6 unsure: 82.5?",
    "D7 implausible: 1250",
  ]);
});

test("an implausible repetition is left out of its list; a forgotten point is mended once it can be told apart", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "Load (kg)", "Speed"],
    squat(80, "0.62 62 0.60"),
    squat(82.5, "0.62 9.9 0.60"),
    squat(85, "0.62 62 62"),
    squat(87.5, "0,62/0,60 62"),
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka work 80x? 0.62 - 0.6",
    "05-12 Ilka work 82.5x? 0.62 - 0.6",
    "05-12 Ilka work 85x? 0.62 - -",
    "05-12 Ilka work 87.5x? 0.62 0.6 -",
  ]);
  expect(
    reading.issues.map(({ cell, code, facts }) => [cell, code, facts.piece, facts.mend]),
  ).toEqual([
    ["E2", "implausible", "62", "0.62 0.62 0.60"],
    ["E3", "implausible", "9.9", undefined],
    ["E4", "implausible", "62", "0.62 0.62 62"],
    ["E4", "implausible", "62", "0.62 0.62 62"],
    ["E5", "implausible", "62", "0,62/0,60 0,62"],
  ]);
});

test("loads without a unit that may be pounds are asked about, and none counts until then", () => {
  const cells = [
    ["Date", "Athlete", "Exercise", "Load", "Speed"],
    ...[185, 225, 245, 275, 315].map((load) => squat(load, 0.6)),
  ];
  const { reading, questions } = read("Sets", cells);
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([null, null, null, null, null]);
  expect(problems(reading)).toEqual(["D1 unit-unsettled: Load"]);
  expect(questions.map(({ about, column }) => [about, column])).toEqual([["unit", 4]]);
  const answered = read("Sets", cells, { answers: { columns: [{ column: 4, unit: "lb" }] } });
  expect(answered.reading.records[0]!.loadKg).toBeCloseTo(83.91, 2);
});

test("sleep as a number, a length, a time cell or a slip of ten", () => {
  const slept = (cell: unknown) => {
    const { reading } = read("Diary", [
      ["Date", "Athlete", "Sleep", "Mood"],
      ["2026-05-12", "Ilka", cell, "5/10"],
    ]);
    return [
      reading.records[0]!.sleepH,
      ...reading.issues.map(({ code, facts }) => [code, facts.mend]),
    ];
  };
  expect(slept("7,5 h")).toEqual([7.5]);
  expect(slept("7:30")).toEqual([7.5]);
  expect(slept(new Date(1899, 11, 30, 7, 30))).toEqual([7.5]);
  expect(slept(75)).toEqual([null, ["implausible", 7.5]]);
  expect(slept(190)).toEqual([null, ["implausible", undefined]]);
  expect(slept(true)).toEqual([null, ["not-a-number", undefined]]);
});

test("the header row the coach points at is the header, whatever stands above it", () => {
  const head = ["Date", "Athlete", "Exercise", "Load (kg)"];
  const cells = [["a", "b", "c", "d"], head, squat(80), head, squat(85)];
  expect(read("Sets", cells).headerRow).toBe(2);
  const said = read("Sets", cells, { answers: { headerRow: 4, columns: [] } });
  expect([said.headerRow, said.reading.records.map(({ loadKg }) => loadKg)]).toEqual([4, [85]]);
});

test("a repetition's column that the coach makes a note or leaves alone is no repetition", () => {
  const cells = [
    ["Date", "Athlete", "Exercise", "Load (kg)", "r1", "r2", "r3"],
    squat(80, 0.6, 0.59, 0.58),
  ];
  const { reading } = read("Sets", cells, {
    answers: {
      columns: [
        { column: 6, field: null },
        { column: 5, field: "note" },
      ],
    },
  });
  expect(reading.records.map(({ repSpeeds, note }) => [repSpeeds, note])).toEqual([
    [[0.58], "0.6"],
  ]);
});

test("a stack's column: letters say how it went, a bare number is one plate and no height", () => {
  const { reading, layout } = read("Jumps", [
    ["Date", "Athlete", "Box jump stack", "CMJ (cm)", "Drop jump contact", "Drop jump flight"],
    ["2026-05-12", "Ilka", "5x15+5 o", 41, 180, 0.5],
    ["2026-05-12", "Kofi", "5x15+5 xo / +10 x", "41?", "", ""],
    ["2026-05-13", "Kofi", "sore", "DNS", "", ""],
    ["", "Kofi", "", "", "", ""],
    ["2026-05-14", "Kofi", 10, "", "", ""],
  ]);
  expect(layout).toBe("tests across");
  expect(
    reading.records.map(({ test, stackKg, cleared, heightCm, contactS, flightS }) => [
      test,
      stackKg.join("+") || null,
      cleared,
      heightCm,
      contactS,
      flightS,
    ]),
  ).toEqual([
    ["Box jump", "15+15+15+15+15+5", true, null, null, null],
    ["CMJ", null, null, 41, null, null],
    ["Drop jump", null, null, null, 0.18, 0.5],
    ["Box jump", "15+15+15+15+15+5", false, null, null, null],
    ["Box jump", "15+15+15+15+15+5", true, null, null, null],
    ["Box jump", "15+15+15+15+15+5+10", false, null, null, null],
    ["Box jump", "10", true, null, null, null],
  ]);
  expect(problems(reading)).toEqual(["D3 unsure: 41?", "A5 needed-blank: "]);
  expect(counts(reading)).toEqual([4, 1, 0, 1]);
});

test("heights across in centimetres and inches, times in seconds and milliseconds: each column by its own heading", () => {
  const { reading } = read("Jumps", [
    ["Date", "Athlete", "CMJ (cm)", "Box jump (in)", "Drop jump contact ms", "Hop contact s"],
    ["2026-05-12", "Ilka", 41, 30, 180, 0.2],
    ["2026-05-13", "Ilka", 42, 31, 182, 0.21],
  ]);
  expect(
    reading.records.slice(0, 4).map(({ test, heightCm, contactS }) => [test, heightCm, contactS]),
  ).toEqual([
    ["CMJ", 41, null],
    ["Box jump", 76.2, null],
    ["Drop jump", null, 0.18],
    ["Hop", null, 0.2],
  ]);
  expect(problems(reading)).toEqual([]);
});
