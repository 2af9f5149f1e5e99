import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Logs with one row for several sets, and grids with every column a coach may add; all invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });
const log = (...rows: readonly (readonly unknown[])[]) => [
  ["Date", "Athlete", "Exercise", "kg x sets x reps", "Speeds", "Note"],
  ...rows,
];

test("all that stands beside shorthand holds for each of its sets, its note for the first", () => {
  const { reading } = read("Sets", [
    [
      "Date",
      "Time",
      "Athlete",
      "Exercise",
      "Kind",
      "Sets x reps",
      "Load (lb)",
      "Speed is",
      "Tool",
      "Bar",
      "Gym",
      "OK",
      "RIR",
      "By",
      "Note",
    ],
    [
      "2026-05-12",
      "17:30",
      "Ilka",
      "squat",
      "wu",
      "2x5",
      100,
      "peak",
      "belt sensor",
      15,
      "north",
      "n",
      "2-3",
      "MO",
      "calm",
    ],
  ]);
  expect(reading.records).toMatchObject(
    ["calm", ""].map((note, at) => ({
      row: 2,
      minute: 1050,
      athlete: "Ilka",
      exercise: "squat",
      kind: "warm-up",
      set: at + 1,
      reps: 5,
      speedIs: "peak",
      tool: "belt sensor",
      barKg: 15,
      gym: "north",
      movedWell: false,
      repsInReserve: 2,
      by: "MO",
      note,
    })),
  );
  expect(reading.records[0]!.loadKg).toBeCloseTo(45.359237, 9);
});

test("the load's unit is as its heading says, also among the words of a scheme", () => {
  const load = (heading: string) =>
    read("Sets", [
      ["Date", "Athlete", "Exercise", heading],
      ["2026-05-12", "Ilka", "squat", "100x1x5"],
    ]).reading.records[0]!.loadKg;
  expect(load("lb x sets x reps")).toBeCloseTo(45.359237, 9);
  expect(load("lbs x sets x reps")).toBeCloseTo(45.359237, 9);
  expect(load("kg x sets x reps")).toBe(100);
});

test("a weekday is copied in the scheme or the exercise, a mark repeats the athlete's session before", () => {
  const { reading } = read(
    "Sets",
    log(
      ["2026-05-12", "Ilka", "squat", "85x2x5", "", ""],
      ["2026-05-12", "Kofi", "bench", "60x1x5", "", ""],
      ["2026-05-14", "Ilka", "wie Di", "", ".6 .59", "late"],
      ["2026-05-14", "Ilka", "front squat", "as Tue", "", ""],
      ["2026-05-15", "Kofi", "", "as Tue", "", ""],
      ["2026-05-15", "Ilka", "squat", '"', ".61", ""],
      ["2026-05-15", "Wren", "squat", '"', "", ""],
      ["2026-05-15", "Kofi A.", "squat", "as Tue", "", ""],
      ["2026-05-15", "Ilka", "squat", "as Sun", "", ""],
      ["soon", "Ilka", "as Tue", "", "", ""],
    ),
  );
  expect(reading.records.map((set) => [shortSet(set), set.exercise, set.note].join(" | "))).toEqual(
    [
      "05-12 Ilka 1 85x5 | squat | ",
      "05-12 Ilka 2 85x5 | squat | ",
      "05-12 Kofi 1 60x5 | bench | ",
      "05-14 Ilka 1 85x5 0.6 | squat | late",
      "05-14 Ilka 2 85x5 0.59 | squat | ",
      "05-14 Ilka 1 85x5 | front squat | ",
      "05-14 Ilka 2 85x5 | front squat | ",
      "05-15 Kofi 1 60x5 | bench | ",
      "05-15 Ilka 1 85x5 0.61 | squat | ",
      "05-15 Ilka 2 85x5 | squat | ",
      "05-15 Kofi A. 1 60x5 | squat | ",
    ],
  );
  expect(problems(reading)).toEqual([
    'D8 nothing-to-repeat: "',
    "D9 copied-from-near-name: as Tue",
    "D10 nothing-to-repeat: as Sun",
    "C11 nothing-to-repeat: as Tue",
  ]);
  expect(reading.issues[1]!.facts).toEqual({ from: "Kofi", earlierRow: 3 });
  expect(counts(reading)).toEqual([7, 3, 0, 1]);
});

test("a mark under nothing repeats nothing, also where the row counts its own sets", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "Load", "Sets", "Reps"],
    ["2026-05-12", "Ilka", "squat", 80, 2, 5],
    ["2026-05-12", "Kofi", "squat", '"', 3, 5],
    ["2026-05-14", "Ilka", "squat", '"', 1, 4],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 80x5",
    "05-12 Ilka 2 80x5",
    "05-14 Ilka 1 80x4",
  ]);
  expect(problems(reading)).toEqual(['D3 nothing-to-repeat: "']);
});

test.each([
  [[3, 4, 5, 3, 4, 5], "3 4 5 3 4 5"],
  [[2, 3, 1], "2 3 1"],
  [[1, 2, 3, 1, 2, 3], "numbers"],
  [[1, 1, 2, 1, 2, 3], "numbers"],
])("a column “Sets” with %p counts sets unless they are numbered from 1", (column, meant) => {
  const { reading, layout } = read("Sets", [
    ["Date", "Athlete", "Exercise", "Sets", "Reps", "Load (kg)"],
    ...column.map((sets, at) => [`2026-05-${12 + at}`, "Ilka", "squat", sets, 5, 60 + at]),
  ]);
  const rows = column.map((_, at) => reading.records.filter(({ loadKg }) => loadKg === 60 + at));
  expect(
    layout === "rows of several sets" ? rows.map((sets) => sets.length).join(" ") : "numbers",
  ).toBe(meant);
});

test("no lift: words are a note with the row's own, a speed or a missing name is reported", () => {
  const { reading } = read(
    "Sets",
    log(
      ["2026-05-12", "Ilka", "ride 40", "", "", " easy "],
      ["2026-05-12", "Ilka", "-", "sick day", "", ""],
      ["2026-05-12", "Ilka", "squat", "", ".6", ""],
      ["2026-05-12", "", "squat", "", "", ""],
      ["", "Ilka", "swim", "", "", ""],
      ["2026-05-12", "Ilka", "", "", "", "sore"],
      ["Average", "", "", 80, "", ""],
      ["Total", "total", "", 80, "", ""],
    ),
  );
  expect(notes(reading)).toEqual([
    "D2 Ilka: ride 40; easy",
    "D3 Ilka: sick day",
    "D4 Ilka: squat",
    "D5 : squat",
    "D6 Ilka: swim",
    "D7 Ilka: sore",
  ]);
  expect(problems(reading)).toEqual([
    "B5 needed-blank: ",
    "A6 needed-blank: ",
    "C7 needed-blank: ",
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-12 Ilka work ?x? 0.6"]);
  expect(counts(reading)).toEqual([3, 3, 0, 3]);
});

test("speeds in the cell, once more beside it or there alone; words of both; doubtful pieces", () => {
  const { reading } = read(
    "Sets",
    log(
      ["2026-05-12", "Ilka", "squat", "85x1x5 .62 (good)", ".62", ""],
      ["2026-05-13", "Ilka", "squat", "85x1x5 ok", 0.6, "own"],
      ["2026-05-14", "Ilka", "squat", "85x2x5", ".6 .58?", ""],
      ["2026-05-15", "Ilka", "squat", "85x2x5", ".6 fast", ""],
      ["2026-05-16", "Ilka", "squat", "85x2x5", "n/a", ""],
    ),
  );
  expect(reading.records.map((set) => [shortSet(set), set.note].join(" | "))).toEqual([
    "05-12 Ilka 1 85x5 0.62 | good",
    "05-13 Ilka 1 85x5 0.6 | own; ok",
    "05-14 Ilka 1 85x5 0.6 | ",
    "05-14 Ilka 2 85x5 | ",
    "05-15 Ilka 1 85x5 0.6 | ",
    "05-15 Ilka 2 85x5 | ",
    "05-16 Ilka 1 85x5 | ",
    "05-16 Ilka 2 85x5 | ",
  ]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["E4", "unsure", { piece: ".58?", heading: "Speeds" }],
    ["E5", "not-a-number", { piece: "fast", heading: "Speeds" }],
  ]);
});

test.each([
  [3, 5, "3x5"],
  ["12", 5, "12x5"],
  [13, 5, "1x5"],
  [0, 5, "1x5"],
  [2.5, 5, "1x5"],
  ["x", 5, "1x5"],
  ["", 5, "1x5"],
  [2, "", "2x?"],
  [2, 0, "2x?"],
  [2, 2.5, "2x?"],
])("a column of sets %p beside repetitions %p stands for %s", (sets, reps, done) => {
  const { reading, layout } = read("Sets", [
    ["Date", "Athlete", "Exercise", "Sets", "Reps", "Load (kg)"],
    ["2026-05-11", "Ilka", "squat", 5, 5, 60],
    ["2026-05-12", "Ilka", "squat", sets, reps, 65],
    ["2026-05-13", "Ilka", "squat", 5, 5, 60],
  ]);
  expect(layout).toBe("rows of several sets");
  const read12 = reading.records.filter(({ loadKg }) => loadKg === 65);
  expect(`${read12.length}x${read12[0]!.reps ?? "?"}`).toBe(done);
  const counted = [3, "12", 2, ""].includes(sets);
  expect(reading.issues.map(({ cell, code }) => `${cell} ${code}`)).toEqual([
    ...(counted ? [] : [sets === "x" ? "D3 not-a-number" : "D3 implausible"]),
    ...(reps === 5 || reps === "" ? [] : ["E3 implausible"]),
  ]);
});

test("jumps of a log: each try, open where no letter says, with the row's note; doubts in their cell", () => {
  const { reading } = read(
    "Jumps",
    log(
      ["2026-05-12", "Ilka", "box jump", "5x15 xo", "", "calm"],
      ["2026-05-12", "Ilka", "box jump", "4x15 o / 5x15 x", "", ""],
      ["2026-05-12", "Ilka", "box jump", "3x15 tired", "", ""],
      ["2026-05-12", "Ilka", "CMJ", 41, "", ""],
      ["2026-05-12", "Ilka", "CMJ", "42?", "", ""],
      ["2026-05-12", "Ilka", "squat", "85x2x5", "", ""],
      ["total", "", "", 41, "", ""],
    ),
  );
  expect(
    reading.records.map((jump) => [shortJump(jump), jump.test, jump.note].join(" | ")),
  ).toEqual([
    "05-12 Ilka 15 15 15 15 15 ✗ | box jump | calm",
    "05-12 Ilka 15 15 15 15 15 ✓ | box jump | calm",
    "05-12 Ilka 15 15 15 15 ✓ | box jump | ",
    "05-12 Ilka 15 15 15 15 15 ✗ | box jump | ",
    "05-12 Ilka 15 15 15 ? | box jump | ",
    "05-12 Ilka 41 cm | CMJ | ",
  ]);
  expect(problems(reading)).toEqual(["D6 unsure: 42?"]);
  expect(notes(reading)).toEqual(["D4 Ilka: tired"]);
  expect(counts(reading)).toEqual([5, 0, 0, 3]);
});

test("tests across keep what else stands in the row: time, drop, landing, tool and who wrote it", () => {
  const jumps = read("Jumps", [
    ["Date", "Time", "Athlete", "Drop height", "Landing height", "Drop jump contact ms", "Note"],
    ["2026-05-12", "17:30", "Ilka", 30, 15, 182, "calm"],
  ]).reading;
  expect(jumps.records).toMatchObject([
    {
      row: 2,
      athlete: "Ilka",
      test: "Drop jump",
      dropCm: 30,
      landingCm: 15,
      contactS: 0.182,
      note: "calm",
    },
  ]);
  const sets = read("Sets", [
    ["Date", "Time", "Athlete", "Kind", "Squat", "Tool", "Gym", "By", "Note"],
    ["2026-05-12", "17:30", "Ilka", "wu", "85x5", "belt sensor", "north", "MO", "calm"],
  ]).reading;
  expect(sets.records).toMatchObject([
    {
      minute: 1050,
      kind: "warm-up",
      exercise: "squat",
      tool: "belt sensor",
      gym: "north",
      by: "MO",
      note: "calm",
    },
  ]);
});

test("names of a grid are the first column of words, whatever stands before it or above it", () => {
  const { reading } = read(
    "Sets",
    [
      ["Squat 2026", "", "", ""],
      ["", "", "5/5", "28/5"],
      [1, "Ilka", "85x1x5", "87.5x1x5"],
      [2, "Kofi", "100x1x5", ""],
    ],
    { tab: { setsFirst: true } },
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 85x5",
    "05-28 Ilka 1 87.5x5",
    "05-05 Kofi 1 100x5",
  ]);
  const titled = read("Sets", [
    ["Front squat, mean of reps", "5/5/2026", "28/5/2026"],
    ["Ilka", "85x5 .6", ""],
  ]).reading;
  expect(titled.records).toMatchObject([
    { exercise: "front squat", setSpeed: 0.6, setSpeedIs: "mean of reps" },
  ]);
});

test("which way a tab lies: complete rows before grids, a log of shorthand before both", () => {
  const layout = (table: TableName, ...cells: readonly (readonly unknown[])[]) =>
    read(table, cells).layout;
  const head = ["Date", "Athlete", "Exercise", "Load"];
  const row = (load: unknown) => ["2026-05-12", "Ilka", "squat", load];
  expect(layout("Sets", head, row(85), row("85x5"))).toBe("rows of several sets");
  expect(layout("Sets", head, row(85), row("85x5"), row(85))).toBe("plain rows");
  expect(layout("Sets", head, row("85x3x5"), row(""))).toBe("rows of several sets");
  expect(layout("Sets", head, row("85 kg"), row(""))).toBe("plain rows");
  expect(layout("Sets", head, row(""), row(""))).toBe("plain rows");
  expect(
    layout("Jumps", ["Date", "Athlete", "Test", "Height"], ["2026-05-12", "Ilka", "hop", 40]),
  ).toBe("plain rows");
  expect(
    layout("Jumps", ["Date", "Athlete", "Test", "Note"], ["2026-05-12", "Ilka", "hop", "x"]),
  ).toBe("plain rows");
  expect(layout("Jumps", [...head, "Height"], ["2026-05-12", "Ilka", "hop", "85x3x5", 40])).toBe(
    "plain rows",
  );
  expect(layout("Sets", ["Weather", "Sky"], ["rain", "grey"])).toBe("not recognised");
  const late = [...Array(200).fill(row(85)), ...Array(300).fill(row("85x5"))];
  expect(layout("Sets", head, ...late)).toBe("plain rows");
  expect(layout("Sets", head, ...late.slice(100))).toBe("rows of several sets");
});
