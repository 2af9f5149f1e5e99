import { personName } from "../../../src/rows/layout/sections/above";
import { markMarkerSets, type PendingSet } from "../../../src/rows/layout/sections/marker-sets";
import { lineIn } from "../../../src/rows/layout/sections/section-line";
import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Lines of tabs that keep blocks one under another; athletes and figures are invented.

test.each([
  [["", "", ""], "data"],
  [["SQUAT", "kg", "Rep 1", "Rep 2"], "header"],
  [["Set", "kg"], "header"],
  [["kg", "x"], "data"],
  [["Set", "kg", 5], "data"],
  [["Rep 1", "Rep 2", "Set"], "header"],
  [["Rep 1", "Set", ""], "data"],
  [["5 May", "", "gym"], "day"],
  [["", "Tue 5 May", "bar 20", "17:30"], "day"],
  [["5 May", "a", "b", "c"], "data"],
  [["5 May", 80, ""], "data"],
  [[new Date(2026, 4, 5), "gym"], "day"],
  [["5 May", new Date(1899, 11, 30, 17, 30)], "day"],
  [[46_147, "", ""], "data"],
  [["AVG", 80, 81], "summary"],
  [["total", "", ""], "summary"],
  [["Ilka Brandmoor", "", ""], "words"],
  [["", "bench press", ""], "words"],
  [["Set 1", "", ""], "data"],
  [["Set 12", "", ""], "data"],
  [["kg", "RIR"], "header"],
  [["s2", "", ""], "data"],
  [["3", "", ""], "data"],
  [["Set 1 slow", "", ""], "words"],
  [["reset 1", "", ""], "words"],
  [["Ilka", "late", ""], "data"],
  [["Max", 80, 81], "summary"],
  [[80, "", ""], "data"],
  [[true, "", ""], "data"],
])("the line %j is %s", (line, is) => {
  expect(lineIn(line).is).toBe(is);
});

test("a header's first strange heading is the lift, its column the sets' numbers; others are as named", () => {
  const header = (...line: unknown[]) => {
    const said = lineIn(line);
    if (said.is !== "header") throw new Error(said.is);
    return [said.lift, Object.keys(said.columns).sort().join(" "), said.columns.set?.heading];
  };
  expect(header(" SQUAT ", "kg", "reps")).toEqual([0, "load reps set", "SQUAT"]);
  expect(header("SQUAT", "set", "kg")).toEqual([0, "load set", "set"]);
  expect(header("Name", "kg", "reps")).toEqual([null, "athlete load reps", undefined]);
  expect(header("Exercise", "kg", "reps")).toEqual([null, "exercise load reps", undefined]);
  expect(header("Note", "kg", "reps")).toEqual([null, "load note reps", undefined]);
  expect(header("kg", "reps", "SQUAT")).toEqual([null, "load reps", undefined]);
  expect(header("x", "Exercise", "kg", "reps")).toEqual([null, "exercise load reps", undefined]);
});

test("words of a line keep their column, a day its own", () => {
  expect(lineIn(["", " bench press "])).toEqual({
    is: "words",
    words: [{ text: "bench press", column: 1 }],
  });
  expect(lineIn(["", "5 May"])).toMatchObject({
    is: "day",
    column: 1,
    text: { month: 5, date: 5 },
  });
});

test.each([
  ["Ilka Brandmoor", "Ilka Brandmoor"],
  ["Ilka", "Ilka"],
  ["Ilka van der Brandmoor", "Ilka van der Brandmoor"],
  ["Ilka Brandmoor – squats", "Ilka Brandmoor"],
  ["Ilka Brandmoor (U18)", "Ilka Brandmoor"],
  ["Ilka: notes", "Ilka"],
  [" Name: Ilka Brandmoor ", "Ilka Brandmoor"],
  ["O’Neill-Ruhl J.", "O’Neill-Ruhl J."],
  ["Zoë Ångbrook", "Zoë Ångbrook"],
  ["Ilka  Brandmoor", "Ilka  Brandmoor"],
  ["Ilka  van der Brandmoor", "Ilka  van der Brandmoor"],
  ["Ilka (U18)\nBrandmoor", null],
  ["ilka", null],
  ["Ilka van der den Brandmoor", null],
  ["Ilka 2", null],
  ["Gym", null],
  ["Week Ahead", null],
  ["Sheet1", null],
  ["Tabelle", null],
  ["", null],
  ["Ilka b", null],
])("“%s” is the name %p", (text, name) => {
  expect(personName(text)).toBe(name);
});

test("the warm-up noted as last is the marker, and so is the last one at that load before work in other sessions", () => {
  const set = (
    day: string,
    kind: string | null,
    number: string | number,
    load: number,
    note = "",
    athlete = "Ilka",
  ): PendingSet => ({
    row: 0,
    writtenLoad: load,
    flat: {
      day: [day, 0],
      athlete: [athlete, 0],
      exercise: ["squat", 0],
      kind: kind === null ? undefined : [kind, 5],
      set: [number, 3],
      note: [note, 6],
    },
  });
  const sets = [
    set("05-05", null, "wu", 40),
    set("05-05", null, "W/U", 60, "last w/u"),
    set("05-05", null, 1, 80),
    set("05-07", null, "wu", 60),
    set("05-07", null, "wu", 60),
    set("05-07", null, 1, 80, "last warm bar"),
    set("05-09", "warm-up", 1, 60),
    set("05-09", "work", 2, 80),
    set("05-11", null, "wu", 50),
    set("05-11", null, 1, 80),
    set("05-12", null, "wu", 60),
    set("05-13", null, 1, 80),
    set("05-13", null, "wu", 60, "", "Kofi"),
    set("05-13", null, 1, 80, "", "Kofi"),
    set("05-15", null, "wu", 70, "marker"),
  ];
  markMarkerSets(sets);
  expect(sets.map(({ flat }) => flat.kind?.[0] ?? null)).toEqual([
    null,
    "marker",
    null,
    null,
    "marker",
    null,
    "marker",
    "work",
    null,
    null,
    null,
    null,
    null,
    null,
    "marker",
  ]);
});

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });
const head = ["SQUAT", "kg", "r1", "r2", "r3", "note"];

test("a tab of one athlete: time, place and bar beside the day, loads repeated, each side apart, words beside", () => {
  const { reading } = read(
    "Sets",
    [
      ["bar 20", "", "", "", "", ""],
      ["5 May 17:30", "school hall – bar 15 kg", "", "", "", ""],
      head,
      ["wu", 60, 0.9, 0.91, "", ""],
      [1, 80, 0.6, 0.59, "", "calm"],
      [2, '"', 0.58, 0.57, 0.56, ""],
      [3, "", 0.57, "", "", "", "stray words"],
      ["split squat", 16, "6+6", "5 + 5", "", ""],
      ["total", 160, "", "", "", ""],
      ["", "", "", "", "", ""],
      ["7 May", "18:00", "gym 2", "", "", ""],
      head,
      [1, 82.5, 0.6, "", "", ""],
      ["someday", "", "", "", "", ""],
      ["31/31", "", "", "", "", ""],
      head,
      [1, 85, 0.6, "", "", ""],
    ],
    { title: "Ilka Brandmoor" },
  );
  expect(
    reading.records.map((set) =>
      [shortSet(set), set.exercise, set.minute, set.gym, set.barKg, set.note].join(" | "),
    ),
  ).toEqual([
    "05-05 Ilka Brandmoor warm-up 60x? 0.9 0.91 | SQUAT | 1050 | school hall | 15 | ",
    "05-05 Ilka Brandmoor 1 80x? 0.6 0.59 | SQUAT | 1050 | school hall | 15 | calm",
    "05-05 Ilka Brandmoor 2 80x? 0.58 0.57 0.56 | SQUAT | 1050 | school hall | 15 | ",
    "05-05 Ilka Brandmoor 3 80x? 0.57 | SQUAT | 1050 | school hall | 15 | stray words",
    "05-05 Ilka Brandmoor work 16x6 | split squat | 1050 | school hall |  | ",
    "05-05 Ilka Brandmoor work 16x5 | split squat | 1050 | school hall |  | ",
    "05-07 Ilka Brandmoor 1 82.5x? 0.6 | SQUAT | 1080 | gym 2 | 15 | ",
  ]);
  expect(problems(reading)).toEqual(["A15 not-a-day: 31/31", "A17 day-missing: 1"]);
  expect(notes(reading)).toEqual([
    "A1 Ilka Brandmoor: bar 20",
    "B2 Ilka Brandmoor: school hall – bar 15 kg",
    "G7 Ilka Brandmoor: stray words",
    "C11 Ilka Brandmoor: gym 2",
    "A14 Ilka Brandmoor: someday",
  ]);
  expect(counts(reading)).toEqual([6, 2, 1, 8]);
});

test("athletes and lifts on lines of their own; a new name needs its own day; day and lift in the row", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", "", "", ""],
    ["5 May", "", "", "", ""],
    ["Exercise", "kg", "reps", "m/s", "notes"],
    ["squat", 80, 5, 0.6, ""],
    ["", 82.5, 5, 0.58, ""],
    ['"', 85, 5, 0.57, ""],
    ["Kofi Anstruther", "", "", "", ""],
    ["squat", 100, 5, 0.6, ""],
    ["Date", "Exercise", "kg", "reps", ""],
    ["7 May", "bench", 40, 5, ""],
    ["", "", 42.5, 5, ""],
    ['"', '"', 45, 5, ""],
    ["front squat", "", "", "", ""],
    ["", "", 50, 5, ""],
  ]);
  expect(reading.records.map((set) => `${shortSet(set)} ${set.exercise}`)).toEqual([
    "05-05 Ilka Brandmoor work 80x5 0.6 squat",
    "05-05 Ilka Brandmoor work 82.5x5 0.58 squat",
    "05-05 Ilka Brandmoor work 85x5 0.57 squat",
    "05-07 Kofi Anstruther work 40x5 bench",
    "05-07 Kofi Anstruther work 42.5x5 bench",
    "05-07 Kofi Anstruther work 45x5 bench",
    "05-07 Kofi Anstruther work 50x5 front squat",
  ]);
  expect(problems(reading)).toEqual(["A8 day-missing: squat"]);
});

test("nobody's rows, rows without a lift and rows under no load are reported in the row's first cell", () => {
  const nobody = read("Sets", [
    ["5 May", ""],
    ["set", "kg"],
    [1, 80],
  ]).reading;
  expect(problems(nobody)).toEqual(["A3 athlete-missing: 1"]);
  const noLift = read("Sets", [["Ilka"], ["5 May", ""], ["set", "kg"], [1, 80]]).reading;
  expect(problems(noLift)).toEqual(["A4 exercise-missing: 1"]);
  const noLoad = read("Sets", [
    ["Ilka"],
    ["5 May", "", ""],
    ["SQUAT", "reps", "m/s"],
    [1, 5, 0.6],
  ]).reading;
  expect(problems(noLoad)).toEqual(["A4 row-unread: 1"]);
  expect(counts(noLoad)).toEqual([0, 1, 0, 3]);
});

test("jumps: heights and stacks under their test, letters beside, words as notes, marks for none", () => {
  const { reading } = read("Jumps", [
    ["Ilka Brandmoor", "", "", ""],
    ["5 May", "", "", ""],
    ["SQUAT", "kg", "m/s", ""],
    [1, 80, 0.6, ""],
    ["box jump", "5x15", "O-", " straps "],
    ["", "4x15 x", "xo", ""],
    ["", 41, "-", "late"],
    ["", "5x15 o late", "n/a", ""],
    ["", true, "", ""],
    ["CMJ", "", "", ""],
    ["", "42", "", ""],
    ["bench press", "", "", ""],
    ["", 41, "", ""],
  ]);
  expect(
    reading.records.map((jump) => [jump.row, jump.test, shortJump(jump), jump.note].join(" | ")),
  ).toEqual([
    "5 | box jump | 05-05 Ilka Brandmoor 15 15 15 15 15 ✓ | straps",
    "6 | box jump | 05-05 Ilka Brandmoor 15 15 15 15 ✗ | ",
    "6 | box jump | 05-05 Ilka Brandmoor 15 15 15 15 ✓ | ",
    "7 | box jump | 05-05 Ilka Brandmoor 41 cm | late",
    "8 | box jump | 05-05 Ilka Brandmoor 15 15 15 15 15 ✓ | ",
    "11 | CMJ | 05-05 Ilka Brandmoor 42 cm | ",
  ]);
  expect(problems(reading)).toEqual(["B9 jump-unread: true"]);
  expect(notes(reading)).toEqual([
    "D5 Ilka Brandmoor: straps",
    "D7 Ilka Brandmoor: late",
    "B8 Ilka Brandmoor: late",
  ]);
  expect(reading.notes!.map(({ span }) => span)).toEqual(["day", "day", "day"]);
  expect(counts(reading)).toEqual([6, 0, 0, 7]);
});

test("a blank load repeats the one above for the same athlete, day and lift alone; a ditto mark always does", () => {
  const block = (...rows: readonly (readonly unknown[])[]) => {
    const { reading } = understandTable(
      "Sets",
      [["5 May 2026"], ["Name", "Exercise", "Set", "kg", "Reps"], ...rows],
      { today },
    );
    return [
      ...reading.records.map(({ athlete, exercise, loadKg }) => `${athlete} ${exercise} ${loadKg}`),
      ...problems(reading),
    ];
  };
  const squat = ["Ilka", "squat", 1, 80, 5];
  expect(block(squat, ["", "", 2, "", 5], ["Ilka", "squat", 3, "", 5])).toEqual([
    "Ilka squat 80",
    "Ilka squat 80",
    "Ilka squat 80",
  ]);
  expect(block(squat, ["", "pull-up", 1, "", 8], ["", "", 2, "", 8])).toEqual([
    "Ilka squat 80",
    "Ilka pull-up null",
    "Ilka pull-up null",
  ]);
  expect(block(squat, ["Kofi", "squat", 1, "", 5])).toEqual([
    "Ilka squat 80",
    "Kofi squat null",
    "D4 load-blank: ",
  ]);
  expect(block(squat, ["12 May 2026"], ["Ilka", "squat", 1, "", 5])).toEqual([
    "Ilka squat 80",
    "Ilka squat null",
    "D5 load-blank: ",
  ]);
  expect(block(squat, ["Kofi", "squat", 1, '"', 5])).toEqual(["Ilka squat 80", "Kofi squat 80"]);
});

/** Blocks of one athlete and day, as "exercise set load". */
const blockOf = (...rows: readonly (readonly unknown[])[]) => {
  const { reading } = understandTable("Sets", rows, { today });
  return [
    ...reading.records.map(({ athlete, exercise, set, loadKg }) =>
      [athlete, exercise, set, loadKg].join(" "),
    ),
    ...problems(reading),
  ];
};

test("where set numbers stand, words begin another lift, also when they hold a number; numbers as text do not", () => {
  const head = [["Ilka"], ["5 May 2026"], ["Set", "kg", "Reps"]];
  expect(
    blockOf(
      ...head,
      ["Squat", 80, 5],
      ["10", 80, 5],
      ["1-leg squat", 40, 5],
      ["Split squat 2", 30, 5],
    ),
  ).toEqual([
    "Ilka Squat  80",
    "Ilka Squat 10 80",
    "Ilka 1-leg squat  40",
    "Ilka Split squat 2  30",
  ]);
});

test("a jump among the sets is no lift: the next set is of the lift before it", () => {
  expect(
    blockOf(
      ["Ilka"],
      ["5 May 2026"],
      ["Set", "kg", "Reps"],
      ["Squat", 80, 5],
      ["Box jump", "5x15", ""],
      [2, 80, 5],
    ),
  ).toEqual(["Ilka Squat  80", "Ilka Squat 2 80"]);
});

test("with columns for name and lift, words among the set numbers and names are neither", () => {
  expect(
    blockOf(
      ["5 May 2026"],
      ["Name", "Exercise", "Set", "kg"],
      ["Ilka", "squat", 1, 80],
      ["", "", "top", 70],
    ),
  ).toContain("Ilka squat  70");
  expect(
    blockOf(["5 May 2026"], ["squat"], ["Name", "Set", "kg"], ["Ilka", 1, 80], ["Kofi", 1, 90]),
  ).toEqual(["Ilka squat 1 80", "Kofi squat 1 90"]);
});

test("a lift or a jump written as names are is no athlete", () => {
  const sets = [
    ["Set", "kg", "Reps"],
    [1, 80, 5],
  ];
  expect(blockOf(["Ilka"], ["5 May 2026"], ["Back Squat"], ...sets)).toEqual([
    "Ilka back squat 1 80",
  ]);
  expect(blockOf(["Ilka"], ["5 May 2026"], ["Pogo Hops"], ["Back Squat"], ...sets)).toEqual([
    "Ilka back squat 1 80",
  ]);
  const titled = understandTable("Sets", [["5 May 2026"], ...sets], { today, title: "Back Squat" });
  expect(problems(titled.reading)).toEqual(["A3 athlete-missing: 1"]);
});

test("all days under one another settle the order of day and month", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Ilka"],
      ["squat"],
      ["Date", "kg", "Reps"],
      ["4/5/2026", 80, 5],
      ["Kofi"],
      ["squat"],
      ["Date", "kg", "Reps"],
      ["13/5/2026", 90, 5],
    ],
    { today },
  );
  expect(reading.records.map(shortSet)).toEqual(["05-04 Ilka work 80x5", "05-13 Kofi work 90x5"]);
});

test("gym and bar beside a day hold together, also a bar of part of a kilogram", () => {
  const of = (...day: unknown[]) =>
    understandTable("Sets", [["Ilka"], day, ["squat"], ["Set", "kg", "Reps"], [1, 80, 5]], {
      today,
    }).reading.records.map(({ gym, barKg }) => [gym, barKg]);
  expect(of("5 May 2026", "school hall", "bar 17,5")).toEqual([["school hall", 17.5]]);
});

test("words about a bar above all days leave its loads in", () => {
  expect(
    blockOf(["our own bar"], ["Ilka"], ["5 May 2026"], ["squat"], ["Set", "kg"], [1, 80]),
  ).toEqual(["Ilka squat 1 80"]);
});

test("a header below begins without a load to repeat", () => {
  const head = ["Set", "kg", "Reps"];
  expect(blockOf(["Ilka"], ["5 May 2026"], ["squat"], head, [1, 80, 5], head, [2, "", 5])).toEqual([
    "Ilka squat 1 80",
    "Ilka squat 2 ",
    "B7 load-blank: ",
  ]);
});

test("a warm-up before a set that is labelled marker is a warm-up", () => {
  const set = (day: string, number: string | number, load: number, note = ""): PendingSet => ({
    row: 0,
    writtenLoad: load,
    flat: {
      day: [day, 0],
      athlete: ["Ilka", 0],
      exercise: ["squat", 0],
      set: [number, 3],
      note: [note, 6],
    },
  });
  const sets = [
    set("05-05", "wu", 60, "last w/u"),
    set("05-05", 1, 80),
    set("05-07", "wu", 60),
    set("05-07", "marker", 60),
    set("05-07", 1, 80),
  ];
  markMarkerSets(sets);
  expect(sets[2]!.flat.kind).toBeUndefined();
});

test("names, lifts and loads that read alike when run together are kept apart", () => {
  const set = (
    day: string,
    athlete: string,
    exercise: string,
    number: string | number,
    load: number,
    note = "",
  ): PendingSet => ({
    row: 0,
    writtenLoad: load,
    flat: {
      day: [day, 0],
      athlete: [athlete, 0],
      exercise: [exercise, 0],
      set: [number, 3],
      note: [note, 6],
    },
  });
  const sets = [
    set("05-05", "Ann", "abs", "wu", 60, "last w/u"),
    set("05-05", "Ann", "press 1", "wu", 60, "last w/u"),
    // Anna's bench is not Ann's session, and 160 of a press no 60 of "press 1".
    set("05-07", "Ann", "abs", "wu", 60),
    set("05-07", "Anna", "bs", 1, 80),
    set("05-07", "Ann", "press ", "wu", 160),
    set("05-07", "Ann", "press ", 1, 180),
  ];
  markMarkerSets(sets);
  expect(sets.map(({ flat }) => flat.kind?.[0] ?? null)).toEqual([
    "marker",
    "marker",
    null,
    null,
    null,
    null,
  ]);
});

test("work at the load of a marker set is work", () => {
  const set = (day: string, number: string | number, note = ""): PendingSet => ({
    row: 0,
    writtenLoad: 60,
    flat: {
      day: [day, 0],
      athlete: ["Ilka", 0],
      exercise: ["squat", 0],
      set: [number, 3],
      note: [note, 6],
    },
  });
  const sets = [set("05-05", "wu", "last w/u"), set("05-07", 1), set("05-07", 2)];
  markMarkerSets(sets);
  expect(sets.map(({ flat }) => flat.kind?.[0] ?? null)).toEqual(["marker", null, null]);
});

test("beside a jump single letters are attempts, words are words, and a height has its own attempt", () => {
  const jumps = (...row: unknown[]) => {
    const { reading } = understandTable(
      "Jumps",
      [["Ilka"], ["5 May 2026"], ["Set", "kg", "Rep 1"], ["squat", 80, ""], ["Box jump", ...row]],
      { today },
    );
    return [...reading.records.map(shortJump), ...notes(reading)];
  };
  expect(jumps("5x15", " xo ")).toEqual([
    "05-05 Ilka 15 15 15 15 15 ✗",
    "05-05 Ilka 15 15 15 15 15 ✓",
  ]);
  expect(jumps("5x15", "box")).toEqual(["05-05 Ilka 15 15 15 15 15 ✓", "C5 Ilka: box"]);
  expect(jumps("5x15", "ok")).toEqual(["05-05 Ilka 15 15 15 15 15 ✓", "C5 Ilka: ok"]);
  expect(jumps(46, "o")).toEqual(["05-05 Ilka 46 cm"]);
});

test("in a column without a meaning an unticked box is nothing, a tick is told, words are a note", () => {
  const row = (cell: unknown) => {
    const { reading } = understandTable(
      "Sets",
      [["Ilka"], ["5 May 2026"], ["squat"], ["Set", "kg", "Reps", "Xyz"], [1, 80, 5, cell]],
      { today },
    );
    return [reading.records[0]!.note, ...reading.issues.map(({ code }) => code)];
  };
  expect(row(false)).toEqual([""]);
  expect(row(" slow ")).toEqual(["slow"]);
  expect(row(true)).toHaveLength(2);
});

test("each block is read by its own heading: kilograms or pounds, mean or peak, m/s or cm/s", () => {
  const blocks = (...heads: readonly (readonly [string, string, unknown, unknown])[]) =>
    understandTable(
      "Sets",
      heads.flatMap(([load, speed, kg, fast], at) => [
        ["Ilka", "", ""],
        [`${5 + 2 * at} May 2026`, "", ""],
        ["squat", "", ""],
        ["Set", load, speed],
        [1, kg, fast],
      ]),
      { today },
    ).reading;
  const read = (reading: ReturnType<typeof blocks>) =>
    reading.records.map(
      ({ loadKg, setSpeed, repSpeeds, speedIs }) =>
        `${Math.round(loadKg ?? 0)} ${setSpeed ?? repSpeeds.join(" ")} ${speedIs}`,
    );
  const mixed = blocks(
    ["kg", "Mean speed", 80, 0.62],
    ["lb", "Mean speed", 176, 0.61],
    ["kg", "Peak speed", 80, 1.1],
    ["kg", "Mean speed (cm/s)", 80, "60 59"],
    ["kg", "Mean speed", 82.5, 0.6],
  );
  expect(read(mixed)).toEqual([
    "80 0.62 mean",
    "80 0.61 mean",
    "80 1.1 peak",
    "80 0.6 0.59 mean",
    "83 0.6 mean",
  ]);
  expect(problems(mixed)).toEqual([]);
  expect(counts(mixed)).toEqual([5, 0, 0, 20]);
  const slip = blocks(["kg", "Mean speed", 80, 0.62], ["lb", "Mean speed", 176, 9]);
  expect(problems(slip)).toEqual(["C10 implausible: 9"]);
});

test("each grid's title says what its speeds are", () => {
  const grid = (title: string, speed: string) => [
    [title, "", ""],
    ["Name", "5 May 2026", "7 May 2026"],
    ["Ilka", `85x3x3 ${speed}`, ""],
    ["Kofi", `95x3x3 ${speed}`, ""],
  ];
  const { records } = understandTable(
    "Sets",
    [...grid("Squat, mean of reps", ".62"), ...grid("Bench, best rep", ".72")],
    { today },
  ).reading;
  expect(
    records
      .filter(({ setSpeed }) => setSpeed !== null)
      .map(({ exercise, setSpeed, setSpeedIs }) => [exercise, setSpeed, setSpeedIs]),
  ).toEqual([
    ["squat", 0.62, "mean of reps"],
    ["squat", 0.62, "mean of reps"],
    ["bench", 0.72, "best rep"],
    ["bench", 0.72, "best rep"],
  ]);
});

test("blocks in two units are read however many rows they have", () => {
  const row = (at: number) => [1 + (at % 3), 5, 60];
  const cells = [
    ["Ilka", "", ""],
    ["2026-05-12", "", ""],
    ["Set", "Reps", "kg"],
    ...Array.from({ length: 140_000 }, (_, at) => row(at)),
    ["Set", "Reps", "lb"],
    row(0),
  ];
  const { reading } = understandTable("Sets", cells, { today, title: "Squat" });
  // Equal rows are said to be typed twice; none is lost for it.
  expect(reading.rowsRead + reading.rowsReported).toBe(140_001);
  expect(reading.records.at(-1)!.loadKg).toBeCloseTo(27.2155, 3);
});

test("a name behind its label is the name, in one cell or in two", () => {
  for (const label of [
    ["Athlete: Ilka Brandmoor", ""],
    ["Name:", "Ilka Brandmoor"],
    ["Sportler : Ilka Brandmoor", ""],
  ]) {
    const cells = [
      [...label, "", ""],
      ["Date", "Exercise", "kg", "reps"],
      [new Date(2026, 4, 5), "Squat", 80, 5],
      [...label.map((words) => words.replace("Ilka Brandmoor", "Kofi Anstruther")), "", ""],
      ["Date", "Exercise", "kg", "reps"],
      [new Date(2026, 4, 5), "Squat", 90, 5],
    ];
    const { records } = understandTable("Sets", cells, { title: "Gym" }).reading;
    expect(records.map(({ athlete, loadKg }) => `${athlete} ${loadKg}`)).toEqual([
      "Ilka Brandmoor 80",
      "Kofi Anstruther 90",
    ]);
  }
});

test("words alone below names in a column of their own are nobody's, and are told", () => {
  const read = (words: string) =>
    understandTable(
      "Sets",
      [
        ["Squat", "", "", ""],
        ["Date", "Name", "kg", "Reps"],
        ["2026-05-05", "Ilka", 80, 5],
        [words, "", "", ""],
        ["2026-05-12", "Kofi", 90, 5],
      ],
      { today },
    ).reading;
  const asked = read("ask Kofi about his calf");
  expect(problems(asked)).toEqual(["A4 words-alone: ask Kofi about his calf"]);
  expect(asked.notes ?? []).toEqual([]);
  expect(asked.records).toHaveLength(2);
  expect(problems(read("bar 15"))).toEqual([]);
});

test("a name beside the day, in a tab that names nobody, is the athlete of that session", () => {
  const read = (...after: unknown[][]) =>
    understandTable(
      "Sets",
      [
        ["12 May 2026", "Ilka", ""],
        ["Set", "kg", "Reps"],
        [1, 80, 5],
        ...after,
        ["Set", "kg", "Reps"],
        [1, 100, 5],
      ],
      { today, title: "Squat" },
    ).reading;
  expect(read(["12 May 2026", "Kofi", ""]).records.map(shortSet)).toEqual([
    "05-12 Ilka 1 80x5",
    "05-12 Kofi 1 100x5",
  ]);
  const nobody = read(["19 May 2026", "school hall", ""]);
  expect(nobody.records.map(shortSet)).toEqual(["05-12 Ilka 1 80x5"]);
  expect(problems(nobody)).toEqual(["A6 athlete-missing: 1"]);
});
