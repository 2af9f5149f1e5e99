import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Blocks one under another as coaches keep them; the athlete, the days and the figures are invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });
const session = (...rows: unknown[][]) => [
  ["Ilka Brandmoor", "", "", ""],
  ["5 May", "", "", ""],
  ...rows,
];

test("shorthand under a scheme's heading, alone in its row or with speeds beside it", () => {
  const { reading, layout } = read(
    "Sets",
    session(
      ["SQUAT", "kg x sets x reps", "m/s", "notes"],
      ["", "85x3x5", ".62 .60 .58", "calm"],
      ["", "90x1x5", "", ""],
      ["", "ride", "", ""],
    ),
  );
  expect(layout).toBe("blocks one under another");
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka Brandmoor 1 85x5 0.62",
    "05-05 Ilka Brandmoor 2 85x5 0.6",
    "05-05 Ilka Brandmoor 3 85x5 0.58",
    "05-05 Ilka Brandmoor 4 90x5",
  ]);
  expect(reading.records.map(({ note }) => note)).toEqual(["calm", "", "", ""]);
  expect(problems(reading)).toEqual([]);
  expect(notes(reading)).toEqual(["B6 Ilka Brandmoor: ride"]);
  expect(counts(reading)).toEqual([2, 0, 0, 4]);
});

test("shorthand whose order nobody says is asked about, also when it stands alone", () => {
  const cells = session(["SQUAT", "kg", "m/s", ""], ["", "80x3x5", "", ""], ["", '"', "", ""]);
  const { reading, tabQuestions } = read("Sets", cells);
  expect(problems(reading)).toEqual([
    "B4 scheme-order-unsettled: 80x3x5",
    'B5 scheme-order-unsettled: "',
  ]);
  expect(tabQuestions.map(({ about, samples }) => [about, samples])).toEqual([
    ["scheme order", ["80x3x5", '"']],
  ]);
  const answered = read("Sets", cells, { tab: { setsFirst: true } });
  expect(answered.reading.records.map(shortSet)).toEqual(
    [1, 2, 3, 4, 5, 6].map((set) => `05-05 Ilka Brandmoor ${set} 80x5`),
  );
  expect(answered.tabQuestions).toEqual([]);
});

test("speeds beside shorthand: doubtful, unread and too many are reported at their cell", () => {
  const { reading } = read(
    "Sets",
    session(
      ["SQUAT", "kg x sets x reps", "speeds per set", "notes"],
      ["", "85x3x5", ".62 .6? .58", ""],
      ["", "85x1x5", ".62 .60 .58 .57 .56", ""],
      ["", "85x2x5", ".62 fast", ""],
      ["", "85x1x5", "-", ""],
    ),
  );
  expect(problems(reading)).toEqual([
    "C4 unsure: .62 .6? .58",
    "C5 speeds-too-many: .62 .60 .58 .57 .56",
    "C6 not-a-number: .62 fast",
  ]);
  expect(reading.issues.map(({ facts }) => facts.piece ?? facts.speeds)).toEqual([
    ".6?",
    5,
    "fast",
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka Brandmoor 1 85x5 0.62",
    "05-05 Ilka Brandmoor 2 85x5",
    "05-05 Ilka Brandmoor 3 85x5 0.58",
    "05-05 Ilka Brandmoor 4 85x5",
    "05-05 Ilka Brandmoor 5 85x5 0.62",
    "05-05 Ilka Brandmoor 6 85x5",
    "05-05 Ilka Brandmoor 7 85x5",
  ]);
});

test("one repetition a column beside shorthand: places are kept, and several sets leave it open", () => {
  const { reading, tabQuestions } = read(
    "Sets",
    session(
      ["SQUAT", "kg", "r1", "r2", "r3"],
      ["", "85x3", ".62", "-", ".58"],
      ["", "80x3x3", ".66", ".65", ".64"],
    ),
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka Brandmoor 1 85x3 0.62 - 0.58",
    "05-05 Ilka Brandmoor 2 80x3",
    "05-05 Ilka Brandmoor 3 80x3",
    "05-05 Ilka Brandmoor 4 80x3",
  ]);
  expect(problems(reading)).toEqual(["C5 speeds-unsettled: .66"]);
  expect(tabQuestions.map(({ about }) => about)).toEqual(["speeds"]);
});

test("equal rows of shorthand under one heading are sets of their own, each lift numbered from one", () => {
  const { reading } = read(
    "Sets",
    session(["set", "kg", "m/s"], ["SQUAT", "85x5", ""], ["", "85x5", ""], ["BENCH", "40x5", ""]),
  );
  expect(reading.records.map(({ exercise, set }) => `${exercise} ${set}`)).toEqual([
    "SQUAT 1",
    "SQUAT 2",
    "BENCH 1",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("the day's line carries time and bar; of a doubtful bar no load counts, however it is written", () => {
  const { reading, tabQuestions } = read("Sets", [
    ["Ilka Brandmoor", "", "", ""],
    ["5 May 17:30", "their bar (15?)", "", ""],
    ["SQUAT", "kg", "m/s", ""],
    ["1", "80", ".6", ""],
    ["", "85x2x2", "", ""],
    ["6 May", "bar", "", ""],
    ["SQUAT", "kg", "m/s", ""],
    ["1", "80", "", ""],
    ["7 May", "bar 15", "17:45", ""],
    ["SQUAT", "kg", "m/s", "note"],
    ["1", "80", "", "quick"],
  ]);
  expect(problems(reading)).toEqual(["B2 bar-unsettled: their bar (15?)", "B6 bar-unsettled: bar"]);
  expect(reading.records.map(({ loadKg, barKg, minute }) => [loadKg, barKg, minute])).toEqual([
    [null, null, 17 * 60 + 30],
    [null, null, 17 * 60 + 30],
    [null, null, 17 * 60 + 30],
    [null, null, null],
    [80, 15, 17 * 60 + 45],
  ]);
  expect(reading.records[4]!.note).toBe("quick");
  expect(tabQuestions.map(({ about, said, guess }) => [about, said, guess])).toEqual([
    ["bar", "their bar (15?)", "15 kg"],
    ["bar", "bar", null],
  ]);
});

test("an answered bar holds for its day, or for the tab where it stands above all days", () => {
  const bars = new Map([
    ["their bar (15?)", 15],
    ["bar (20?)", 20],
  ]);
  const { reading, tabQuestions } = read(
    "Sets",
    [
      ["Ilka Brandmoor", "", "", ""],
      ["bar (20?)", "", "", ""],
      ["5 May", "their bar (15?)", "", ""],
      ["SQUAT", "kg", "m/s", ""],
      ["1", "80", "", ""],
      ["6 May", "", "", ""],
      ["SQUAT", "kg", "m/s", ""],
      ["1", "80", "", ""],
    ],
    { tab: { bars } },
  );
  expect(reading.records.map(({ loadKg, barKg }) => [loadKg, barKg])).toEqual([
    [80, 15],
    [80, 20],
  ]);
  expect([problems(reading), tabQuestions]).toEqual([[], []]);
});

test("athlete and lift as the coach said for the tab; a lift named on a line of its own", () => {
  const said = read(
    "Sets",
    [
      ["5 May", "", ""],
      ["set", "kg", "m/s"],
      ["1", 80, 0.6],
    ],
    {
      tab: { athlete: "Ilka", exercise: "squat" },
    },
  );
  expect(said.reading.records.map(({ athlete, exercise }) => [athlete, exercise])).toEqual([
    ["Ilka", "squat"],
  ]);
  const named = read("Sets", [
    ["Ilka Brandmoor", "", ""],
    ["bench press", "", ""],
    ["5 May", "", ""],
    ["set", "kg", "m/s"],
    ["1", 40, 0.6],
  ]);
  expect(named.reading.records.map(({ exercise }) => exercise)).toEqual(["bench press"]);
});

test("jumps among the sets: tries below their test, alone in a row too; nobody's and no day's are reported", () => {
  const { reading } = read("Jumps", [
    ["box jumps", "", "", ""],
    ["SQUAT", "kg", "m/s", ""],
    ["1", 80, 0.6, ""],
    ["SL box", "5x15+5", "o", ""],
    ["Ilka Brandmoor", "", "", ""],
    ["SL box", "5x15+5", "o", ""],
    ["5 May", "", "", ""],
    ["SQUAT", "kg", "m/s", ""],
    ["1", 80, 0.6, ""],
    ["SL box", "5x15+5", "xo", "straps"],
    ["", "sore shin", "", ""],
    ["CMJ", "41?", "", ""],
    ["", "41 cm", "good", ""],
    ["", "5x15+10", "", ""],
  ]);
  expect(reading.records.map(shortJump)).toEqual([
    "05-05 Ilka Brandmoor 15 15 15 15 15 5 ✗",
    "05-05 Ilka Brandmoor 15 15 15 15 15 5 ✓",
    "05-05 Ilka Brandmoor 41 cm",
    "05-05 Ilka Brandmoor 15 15 15 15 15 10 ✓",
  ]);
  expect(problems(reading)).toEqual([
    "A4 athlete-missing: SL box",
    "A6 day-missing: SL box",
    "B12 unsure: 41?",
  ]);
  expect(notes(reading)).toEqual([
    "A1 : box jumps",
    "D10 Ilka Brandmoor: straps",
    "B11 Ilka Brandmoor: sore shin",
    "C13 Ilka Brandmoor: good",
  ]);
});

test("a jump under a column of exercises is a jump and no lift, its tries below it too", () => {
  const block = [
    ["Ilka Brandmoor", "", "", "", ""],
    ["5 May", "", "", "", ""],
    ["Exercise", "Set", "kg", "Reps", "m/s"],
    ["back squat", 1, 80, 5, 0.6],
    ["", 2, 80, 5, 0.58],
    ["CMJ", 1, 42, "", ""],
    ["", 2, "43 cm", "", ""],
    ["box jump", 1, "5x15", "", ""],
    ["bench press", 1, 40, 5, 0.7],
    ["jump squat", 1, 30, 5, 1.2],
  ];
  expect(read("Sets", block).reading.records.map((one) => `${one.exercise} ${one.loadKg}`)).toEqual(
    ["back squat 80", "back squat 80", "bench press 40", "jump squat 30"],
  );
  const { reading } = read("Jumps", block);
  expect(reading.records.map(({ test }) => test)).toEqual(["CMJ", "CMJ", "box jump"]);
  expect(reading.records.map(shortJump)).toEqual([
    "05-05 Ilka Brandmoor 42 cm",
    "05-05 Ilka Brandmoor 43 cm",
    "05-05 Ilka Brandmoor 15 15 15 15 15 ✓",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("a jump under exercises without a column for loads is read from what stands beside its name", () => {
  const { reading } = read("Jumps", [
    ["Ilka Brandmoor", "", ""],
    ["5 May", "", ""],
    ["Exercise", "Reps", "m/s"],
    ["CMJ", "42 cm", ""],
    ["squat", 5, 0.6],
    ["CMJ", "43 cm", ""],
  ]);
  expect(reading.records.map(shortJump)).toEqual([
    "05-05 Ilka Brandmoor 42 cm",
    "05-05 Ilka Brandmoor 43 cm",
  ]);
});
