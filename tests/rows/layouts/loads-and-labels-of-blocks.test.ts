import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortSet, today } from "./short";

// What a block's headings and labels say of its loads and sets; athletes and figures are invented.

const understand = (cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable("Sets", [["Ilka"], ["5 May"], ...cells], { today, ...more });
const read = (...cells: readonly (readonly unknown[])[]) => understand(cells).reading;
/** "squat work 1 80x5" for a set. */
const shown = (...cells: readonly (readonly unknown[])[]) =>
  read(...cells).records.map(
    ({ exercise, kind, set, loadKg, reps }) =>
      `${exercise} ${kind} ${set ?? "-"} ${loadKg ?? "?"}x${reps ?? "?"}`,
  );

// The international pound is 0.45359237 kg exactly (NIST SP 811, appendix B).
const pound = 0.45359237;

test.each([
  ["lb x sets x reps", "100x1x5"],
  ["lbs x sets x reps", "100x1x5"],
])("loads in shorthand under “%s” are pounds", (heading, cell) => {
  const [set] = read(["SQUAT", heading, "m/s"], ["", cell]).records;
  expect(set!.loadKg).toBeCloseTo(100 * pound, 9);
});

const inDoubt = [
  ["SQUAT", "Load", "m/s"],
  ...[185, 195, 205, 225].map((load, at) => [at + 1, load, 0.6]),
];

test("the coach's answer about a unit holds for the blocks whose heading names none", () => {
  const asked = understand(inDoubt);
  expect(asked.questions).toMatchObject([{ column: 2, about: "unit", choices: ["kg", "lb"] }]);
  const answers = { columns: [{ column: 2, unit: "lb" }] };
  const answered = understand([...inDoubt, ["BENCH", "kg", "m/s"], [1, 40, 0.5]], { answers });
  expect(answered.questions).toEqual([]);
  expect(problems(answered.reading)).toEqual([]);
  expect(answered.reading.records.map(({ loadKg }) => Math.round(loadKg!))).toEqual(
    [185, 195, 205, 225].map((load) => Math.round(load * pound)).concat(40),
  );
});

test("a unit in doubt is told at the heading of its own block", () => {
  const { reading, questions } = understand([
    ["BENCH", "kg", "m/s"],
    [1, 40, 0.5],
    ["SQUAT", "m/s", "Load"],
    ["", "", ""],
    ...[185, 195, 205, 225].map((load, at) => [at + 1, 0.6, load]),
  ]);
  expect(problems(reading)).toEqual(["C5 unit-unsettled: Load"]);
  expect(questions).toMatchObject([{ column: 3, about: "unit" }]);
});

test("a unit in doubt is told where its figures stand, also in the first column or only further down", () => {
  const loads = [185, 195, 205, 225].map((load, at) => [load, at + 1, 0.6]);
  expect(problems(read(["Load", "Set", "m/s"], ["", "Squat", ""], ...loads))).toContain(
    "A3 unit-unsettled: Load",
  );
  // 110 is 1.1 m/s in cm/s and 0.11 m/s in mm/s.
  const speeds = [110, 112, 114, 116, 118].map((speed, at) => [at + 1, 80, speed]);
  expect(
    problems(read(["SQUAT", "kg", "reps"], [1, 80, 5], ["SQUAT", "kg", "Speed"], ...speeds)),
  ).toEqual(["C5 unit-unsettled: Speed"]);
});

test("where only shorthand is headed, a bare number there is the load and a mark repeats the sets above", () => {
  const block = [
    ["SQUAT", "kg x sets x reps", "m/s"],
    [1, 80, 0.6],
    ["", "85x1x5", 0.58],
    ["", '"', 0.57],
    ["", 90, ""],
  ];
  expect(problems(read(...block))).toEqual([]);
  expect(read(...block).records.map(shortSet)).toEqual([
    "05-05 Ilka 1 80x? 0.6",
    "05-05 Ilka 1 85x5 0.58",
    "05-05 Ilka 2 85x5 0.57",
    "05-05 Ilka work 90x?",
  ]);
});

test("shorthand beside a load that says no sets is told or a note, and the load counts", () => {
  const reading = read(
    ["SQUAT", "kg", "sets x reps"],
    [1, 80, 5],
    [2, 80, "3x"],
    [3, 80, '"'],
    [4, 80, "easy"],
    [5, 80, "-"],
    [6, 80, ""],
  );
  expect(reading.records.map(({ loadKg, note }) => `${loadKg} ${note}`)).toEqual([
    "80 ",
    "80 ",
    "80 ",
    "80 easy",
    "80 ",
    "80 ",
  ]);
  expect(problems(reading)).toEqual([
    "C4 scheme-unread: 5",
    "C5 scheme-unread: 3x",
    'C6 scheme-unread: "',
  ]);
  expect(notes(reading)).toEqual(["C7 Ilka: easy"]);
});

test("a warm-up in shorthand is none of the work sets, which are numbered from one", () => {
  expect(
    shown(
      ["SQUAT", "kg x sets x reps", "m/s"],
      ["wu", "40x2x5"],
      ["marker", "60x1x3"],
      ["", "80x2x5"],
      ["work", "85x1x5"],
    ),
  ).toEqual([
    "SQUAT warm-up - 40x5",
    "SQUAT warm-up - 40x5",
    "SQUAT marker - 60x3",
    "SQUAT work 1 80x5",
    "SQUAT work 2 80x5",
    "SQUAT work 3 85x5",
  ]);
});

test("sets in shorthand are numbered for each day and lift, also under one header", () => {
  const block = [
    ["Exercise", "kg x sets x reps", "m/s"],
    ["squat", "80x2x5"],
    ["bench", "40x1x5"],
    ["squat", "85x1x5"],
    ["7 May", ""],
    ["squat", "80x1x5"],
  ];
  expect(shown(...block)).toEqual([
    "squat work 1 80x5",
    "squat work 2 80x5",
    "bench work 1 40x5",
    "squat work 3 85x5",
    "squat work 1 80x5",
  ]);
});

test("a column “Sets” says how many sets a row stands for, each with the row's load and repetitions", () => {
  const block = [
    ["Exercise", "Sets", "Reps", "kg", "m/s", "note"],
    ["squat", 3, 5, 80, "0.62 0.60 0.58", "calm"],
    ["bench", 1, 8, 40, 0.5, ""],
    ["bench", "", 6, 40, 0.5, ""],
  ];
  expect(read(...block).records.map((set) => `${shortSet(set)} ${set.note}`)).toEqual([
    "05-05 Ilka 1 80x5 0.62 calm",
    "05-05 Ilka 2 80x5 0.6 ",
    "05-05 Ilka 3 80x5 0.58 ",
    "05-05 Ilka work 40x8 0.5 ",
    "05-05 Ilka work 40x6 0.5 ",
  ]);
  expect(problems(read(...block))).toEqual([]);
  expect(counts(read(...block))).toEqual([3, 0, 0, 3]);
});

test("“Sets” beside shorthand says the same or is told; a count that no session has is told", () => {
  const of = (sets: unknown, cell: string) => {
    const reading = read(["Exercise", "Sets", "kg x sets x reps", "m/s"], ["squat", sets, cell]);
    return [`${reading.records.length} sets`, ...problems(reading)];
  };
  expect(of(3, "80x3x5")).toEqual(["3 sets"]);
  expect(of(3, "80x5")).toEqual(["3 sets"]);
  expect(of(4, "80x3x5")).toEqual(["0 sets", "B4 meaning-twice: 4"]);
  expect(of(40, "80x3x5")).toEqual(["3 sets", "B4 implausible: 40"]);
});

test("“Sets” over 1, 2, 3 numbers the sets of its own block, whatever stands in the others", () => {
  const sets = shown(
    ["Exercise", "Sets", "Reps", "kg"],
    ["squat", 1, 5, 80],
    ["", 2, 5, 80],
    ["", 3, 5, 80],
    ["Exercise", "Sets", "Reps", "kg"],
    ...["bench", "row", "lunge", "press", "rdl"].map((lift) => [lift, 2, 8, 40]),
  );
  expect(sets.slice(0, 3)).toEqual(["squat work 1 80x5", "squat work 2 80x5", "squat work 3 80x5"]);
  expect(sets.slice(3, 5)).toEqual(["bench work 1 40x8", "bench work 2 40x8"]);
  expect(sets).toHaveLength(13);
  const after = shown(
    ["Exercise", "Set", "Reps", "kg"],
    ["squat", 1, 5, 80],
    ["Exercise", "Sets", "Reps", "kg"],
    ["bench", 2, 8, 40],
    ["row", 3, 8, 40],
  );
  // 1 stands above the header, and two lines are no numbers from one on.
  expect(after).toHaveLength(6);
  const last = shown(
    ["Exercise", "Sets", "Reps", "kg"],
    ["squat", 1, 5, 80],
    ["", 2, 5, 80],
    ["", 3, 5, 80],
  );
  expect(last).toHaveLength(3);
});

test("a mark beside another lift's name repeats the load above, a blank does not", () => {
  const head = ["Set", "kg", "Reps"];
  expect(shown(head, ["Squat", 80, 5], ["Front squat", '"', 5], ["", "", 4])).toEqual([
    "Squat work - 80x5",
    "Front squat work - 80x5",
    "Front squat work - ?x4",
  ]);
  expect(shown(head, ["Squat", 80, 5], ["Pull-up", "", 8])).toEqual([
    "Squat work - 80x5",
    "Pull-up work - ?x8",
  ]);
});

test.each([
  ["the same headings", "SQUAT", [1, 2]],
  ["another lift's", "Bench press", [1, 2]],
  ["another lift's, the sets labelled", "BENCH", ["wu", "1"]],
])(
  "each row with its day and name, a block a lift: %s further down, and no set's number is a load",
  (_, lift, labels) => {
    const block = (heading: string, loadKg: number) => [
      ["Date", "Athlete", heading, "kg", "reps"],
      ...labels.map((label) => ["2026-05-05", "Ilka", label, loadKg, 5]),
    ];
    const { reading } = understandTable("Sets", [...block("SQUAT", 80), ...block(lift, 40)], {
      today,
    });
    expect(reading.records.map(({ exercise, loadKg }) => [exercise, loadKg])).toEqual([
      ["SQUAT", 80],
      ["SQUAT", 80],
      [lift, 40],
      [lift, 40],
    ]);
    expect([problems(reading), counts(reading)]).toEqual([[], [4, 0, 0, 2]]);
  },
);
