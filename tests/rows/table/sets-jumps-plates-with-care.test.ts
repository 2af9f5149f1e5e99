import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { problems, shortSet, today } from "../layouts/short";
import { readSets } from "../readers";

type Row = readonly unknown[];
const read = <T extends TableName>(table: T, head: Row, ...rows: readonly Row[]) =>
  understandTable<T>(table, [head, ...rows], { today }).reading;
const sets = (head: Row, ...rows: readonly Row[]) =>
  read(
    "Sets",
    ["Date", "Athlete", "Exercise", ...head],
    ...rows.map((row) => ["2026-05-12", "Ilka", "squat", ...row]),
  );

test("a load in each hand is said of its own set, words beside a load go with the set's note", () => {
  const { records } = sets(
    ["Load (kg)", "Note"],
    ["16/hand", ""],
    [16, ""],
    ["85 (slipped)", "late"],
    ["85 (slipped)", ""],
    [85, "late"],
  );
  expect(records.map(({ loadPerHand, note }) => [loadPerHand, note])).toEqual([
    [true, ""],
    [undefined, ""],
    [undefined, "late; slipped"],
    [undefined, "slipped"],
    [undefined, "late"],
  ]);
});

test("one speed is the set's, or its only repetition's where that is said", () => {
  const one = (head: Row, row: Row) => {
    const { repSpeeds, setSpeed, setSpeedIs } = sets(head, row).records[0]!;
    return [repSpeeds, setSpeed, setSpeedIs];
  };
  expect(one(["Load", "Reps", "Speed"], [80, 5, 0.6])).toEqual([[], 0.6, "mean of reps"]);
  expect(one(["Load", "Reps", "Speed"], [80, 1, 0.6])).toEqual([[0.6], null, null]);
  expect(one(["Load", "Reps", "Rep speeds"], [80, 5, 0.6])).toEqual([[0.6], null, null]);
  expect(one(["Load", "Reps", "Best speed"], [80, 5, 0.6])).toEqual([[], 0.6, "best rep"]);
  expect(one(["Load", "Speed", "Rep 1", "Rep 2", "Rep 3"], [80, 0.6, 0.61, "", ""])).toEqual([
    [0.61],
    null,
    null,
  ]);
  expect(one(["Load", "Speed", "Rep 1", "Rep 2", "Rep 3"], [80, 0.6, "", 0.61, ""])).toEqual([
    [null, 0.61],
    null,
    null,
  ]);
  expect(one(["Load", "Speed", "Rep 1", "Rep 2"], [80, 0.6, "", ""])).toEqual([
    [],
    0.6,
    "mean of reps",
  ]);
  expect(one(["Load", "Speed"], [80, ""])).toEqual([[], null, null]);
});

test("mean or peak as its own column says, else the heading", () => {
  const is = (...cells: unknown[]) =>
    sets(
      ["Load", "Peak speed", "Mean or peak"],
      ...cells.map((cell) => [80, 1.6, cell]),
    ).records.map(({ speedIs }) => speedIs);
  expect(is("mean", "", "avg")).toEqual(["mean", "peak", "mean"]);
});

test("a set of an unknown kind is left out, and no load is missed where none of its lift stands", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Date", "Athlete", "Exercise", "Kind", "Load"],
      ["2026-05-12", "Ilka", "squat", "cool-down", 80],
      ["2026-05-12", "Ilka", "Squats", "", ""],
      ["2026-05-12", "Ilka", "hop", "", ""],
      ["2026-05-12", "Ilka", "squat", "", "-"],
      ["2026-05-12", "Ilka", "squats", "", 80],
    ],
    { today },
  );
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts.exercise])).toEqual([
    ["D2", "word-unknown", undefined],
    ["E3", "load-blank", "Squats"],
  ]);
  expect(reading.records.map(({ row }) => row)).toEqual([3, 4, 5, 6]);
});

test("the same row typed twice is told once, with what was wrong in it", () => {
  const { issues, records } = sets(["Set", "Load", "Reps"], [1, 80, 2.5], [1, 80, 2.5], [2, 80, 5]);
  expect(issues.map(({ cell, code, facts }) => [cell, code, facts.earlierRow])).toEqual([
    ["F2", "not-whole", undefined],
    ["A3", "doubled-row", 2],
  ]);
  expect(records.map(shortSet)).toEqual(["05-12 Ilka 1 80x?", "05-12 Ilka 2 80x5"]);
});

const jumps = (head: Row, ...rows: readonly Row[]) =>
  read(
    "Jumps",
    ["Date", "Athlete", "Test", ...head],
    ...rows.map((row) => ["2026-05-12", "Ilka", "hop", ...row]),
  );

test("a jump without a figure is told, unless words or a tick say what it was", () => {
  const told = (head: Row, row: Row) => problems(jumps(head, row));
  expect(told(["Height", "Cleared", "Note"], ["", "", ""])).toEqual(["D2 no-figure: "]);
  expect(told(["Stack", "Cleared", "Note"], ["", "", ""])).toEqual(["D2 no-figure: "]);
  expect(told(["Contact time", "Note"], ["", ""])).toEqual(["A2 no-figure: "]);
  expect(told(["Height", "Cleared", "Note"], ["", "y", ""])).toEqual([]);
  expect(told(["Height", "Cleared", "Note"], ["", "", "sore"])).toEqual([]);
  expect(told(["Height", "Flight time"], ["", 0.5])).toEqual([]);
  expect(told(["Height"], ["n/a"])).toEqual([]);
});

test("stacks of plain rows: none, one in doubt, and the words beside a height", () => {
  const { records, issues } = jumps(
    ["Height", "Stack", "Note"],
    ["", "5x15", ""],
    ["", "n/a", ""],
    ["", false, "x"],
    ["", "15x5", ""],
    ["", "box", ""],
    ["41 (late)", "", "calm"],
  );
  expect(records.map(({ stackKg, note }) => [stackKg.length, note])).toEqual([
    [5, ""],
    [0, ""],
    [0, "x"],
    [0, ""],
    [0, ""],
    [0, "calm; late"],
  ]);
  expect(issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["E5", "stack-count", { found: "15x5", count: 15 }],
    ["E6", "stack-unreadable", { found: "box" }],
  ]);
});

test("a jump typed twice: numbered or timed; without either two equal jumps are two", () => {
  expect(problems(jumps(["Height"], [40], [40]))).toEqual([]);
  expect(problems(jumps(["Attempt", "Height"], [1, 40], [1, 40]))).toEqual(["A3 doubled-row: "]);
  expect(problems(jumps(["Time", "Height"], ["17:30", 40], ["17:30", 40]))).toEqual([
    "A3 doubled-row: ",
  ]);
  expect(problems(jumps(["Attempt", "Height"], [0, 40], [201, 40], [1.5, 40]))).toEqual([
    "D2 implausible: 0",
    "D3 implausible: 201",
    "D4 not-whole: 1.5",
  ]);
});

test("plates: what is wrong drops its row, an unread number owned does not", () => {
  const reading = read(
    "Plates",
    ["Mass (kg)", "Thickness (cm)", "Owned"],
    ["-", 2, 1],
    [10, "-", 1],
    [15, 3, 501],
    [20, 3, 500],
    [25, "4?", 0],
    ["5?", 2, 0],
  );
  expect(reading.issues.map(({ cell, code, dropsRow }) => [cell, code, dropsRow])).toEqual([
    ["A2", "needed-blank", true],
    ["B3", "needed-blank", true],
    ["C4", "implausible", false],
    ["B6", "unsure", true],
    ["A7", "unsure", true],
  ]);
  expect(reading.records.map(({ massKg, owned }) => [massKg, owned])).toEqual([
    [15, null],
    [20, 500],
  ]);
  const twice = read("Plates", ["Mass (kg)", "Thickness (cm)"], [20, 3], [20, 3.1], [20, 3]);
  expect(twice.issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["A3", "plate-twice", { massKg: 20, earlierRow: 2 }],
    ["A4", "doubled-row", { massKg: 20, earlierRow: 2 }],
  ]);
});

test("a plate stamped in pounds keeps the figure stamped on it; kilograms are the figure", () => {
  const reading = read(
    "Plates",
    ["Mass", "Thickness (cm)"],
    ["45 lb", 4.5],
    [20, 4],
    ["2,5", 1.5],
    ["2,5 lb", 1.2],
  );
  expect(reading.records.map(({ massKg, stamped }) => [massKg.toFixed(2), stamped])).toEqual([
    ["20.41", 45],
    ["20.00", undefined],
    ["2.50", undefined],
    ["1.13", 2.5],
  ]);
});

test("a spell that ends before it starts is told with both days; a private mark of any sort keeps a row private", () => {
  const spell = read(
    "Availability",
    ["Athlete", "From", "Until", "May do", "Pain"],
    ["Ilka", "2026-05-12", "2026-05-11", "out", ""],
    ["Ilka", "2026-05-12", "2026-05-12", "out", 11],
  );
  expect(spell.issues.map(({ cell, code, facts }) => [cell, code, facts])).toMatchObject([
    ["C2", "ends-before-start", { from: "2026-05-12", until: "2026-05-11" }],
    ["E3", "implausible", { low: 0, high: 10 }],
  ]);
  expect(spell.issues.map(({ dropsRow }) => dropsRow)).toEqual([true, false]);
  expect(spell.records).toHaveLength(1);
  const diary = read(
    "Diary",
    ["Date", "Athlete", "Mood", "Private"],
    ...["y", "n", "", "x", "coach only", "n/a", 7].map((mark, at) => [
      `2026-05-1${at}`,
      "Ilka",
      4,
      mark,
    ]),
  );
  expect(diary.records.map((row) => row.private)).toEqual([
    true,
    false,
    false,
    true,
    true,
    false,
    true,
  ]);
  expect(
    read(
      "Diary",
      ["Date", "Athlete", "Mood"],
      ["2026-05-12", "Ilka", 101],
      ["2026-05-13", "Ilka", 100],
    ).records.map(({ mood, private: kept }) => [mood, kept]),
  ).toEqual([
    [null, false],
    [100, false],
  ]);
});

test("a drop written in plates is plates, and no figure that cannot be read", () => {
  const { records, issues } = read(
    "Jumps",
    ["Date", "Athlete", "Test", "Height (cm)", "Drop height"],
    ["2026-05-12", "Ilka", "drop jump", 31, "2x20+5"],
    ["2026-05-12", "Ilka", "drop jump", 30, 40],
  );
  expect(records.map(({ dropCm, dropStackKg }) => [dropCm, dropStackKg])).toEqual([
    [null, [20, 20, 5]],
    [40, undefined],
  ]);
  expect(issues).toEqual([]);
});

test("beside plainly numbered sets w1 and w2 are warm-ups; by themselves they are the work sets", () => {
  const kinds = (...sets: unknown[]) =>
    readSets([
      ["Date", "Athlete", "Lift", "Set", "kg"],
      ...sets.map((set) => ["2026-05-12", "Ilka", "Squat", set, 80]),
    ]).records.map(({ set, kind }) => set ?? kind);
  expect(kinds("w1", "W2", 1, "2")).toEqual(["warm-up", "warm-up", 1, 2]);
  expect(kinds("w1", "w2")).toEqual([1, 2]);
});

test("the athlete's own weight is no load to be missed, and what is added to it is the load", () => {
  const { records, issues } = readSets([
    ["Date", "Athlete", "Lift", "kg"],
    ...["BW", "bodyweight", "BW+10", "body weight + 7.5 kg"].map((load) => [
      "2026-05-12",
      "Ilka",
      "Pull-up",
      load,
    ]),
  ]);
  expect(records.map(({ loadKg }) => loadKg)).toEqual([null, null, 10, 7.5]);
  expect(issues).toEqual([]);
  // Somebody's initials stay what they are.
  const [athlete] = read(
    "Athletes",
    ["Athlete", "Under 18", "Supervisor"],
    ["Ada Thorne", "yes", "BW"],
  ).records;
  expect(athlete!.supervisor).toBe("BW");
});
