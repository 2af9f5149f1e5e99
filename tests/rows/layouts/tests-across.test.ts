import { isoFromDay } from "../../../src/coaching/calendar/day";
import { triesOf } from "../../../src/rows/layout/wide/test-heading";
import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortJump, shortSet } from "./short";

// One column a test or a lift; athletes, dates and figures are invented.

test("lifts across in shorthand: unsettled schemes, notes, speeds that fit nothing are said", () => {
  const { reading, layout } = understandTable("Sets", [
    ["Date", "Athlete", "Squat", "Bench press", "Note"],
    ["2026-05-12", "Ilka Brandmoor", "3x5 65", "3x5x40 (slow)", "late"],
    ["", "", "", "", ""],
    ["2026-05-14", "Ilka Brandmoor", "65x3x5", "ride", ""],
    ["2026-05-19", "Ilka Brandmoor", "3x3x65 .66 .65 .64 .63", '"', ""],
    ["Average", "", "", "", ""],
    ["", "Kofi Anstruther", "", "", ""],
  ]);
  expect(layout).toBe("tests across");
  expect(problems(reading)).toEqual([
    "D2 scheme-order-unsettled: 3x5x40 (slow)",
    "C4 scheme-order-unsettled: 65x3x5",
    "C5 speeds-too-many: 3x3x65 .66 .65 .64 .63",
    'D5 scheme-unread: "',
    "A7 needed-blank: ",
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka Brandmoor 1 65x5",
    "05-12 Ilka Brandmoor 2 65x5",
    "05-12 Ilka Brandmoor 3 65x5",
    "05-19 Ilka Brandmoor 1 65x3",
    "05-19 Ilka Brandmoor 2 65x3",
    "05-19 Ilka Brandmoor 3 65x3",
  ]);
  expect(notes(reading)).toEqual(["D4 Ilka Brandmoor: ride"]);
});

test("jump tests across: doubtful and unread cells are said, contact beside its height", () => {
  const { reading, layout } = understandTable("Jumps", [
    ["Date", "Athlete", "Box jump (cm)", "Drop jump contact ms", "Drop jump height cm"],
    ["2026-05-12", "Ilka Brandmoor", 46, 182, 31],
    ["2026-05-14", "Ilka Brandmoor", "46?", "calf sore", ""],
    ["2026-05-19", "Ilka Brandmoor", "high up 3", "", 30],
    ["", "", "", "", ""],
    ["2026-05-21", "", "", "", ""],
    ["Mean", "", 46, 180, 30],
    ["2026-05-26", "Ilka Brandmoor", "", "", ""],
    ["2026-05-28", "Ilka Brandmoor", "", "", ""],
  ]);
  expect(layout).toBe("tests across");
  expect(problems(reading)).toEqual([
    "C3 unsure: 46?",
    "C4 jump-unread: high up 3",
    "B6 needed-blank: ",
  ]);
  expect(reading.records.map(shortJump)).toEqual([
    "05-12 Ilka Brandmoor 46 cm",
    "05-12 Ilka Brandmoor 0.182/?",
    "05-19 Ilka Brandmoor 30 cm",
  ]);
  expect(reading.records[1]).toMatchObject({ contactS: 0.182, heightCm: 31 });
  expect(notes(reading)).toEqual(["D3 Ilka Brandmoor: calf sore"]);
});

test("of several columns of heights none is named for a height out of bounds in another", () => {
  const { reading } = understandTable("Jumps", [
    ["Date", "Athlete", " Box jump ", "CMJ in", "Hop contact ms", "Hop flight s"],
    ["2026-05-12", "Ilka", 580, 500, 9000, 30],
  ]);
  expect(reading.issues.map(({ cell, facts }) => [cell, facts.heading])).toEqual([
    ["C2", "height"],
    ["D2", "height"],
    ["E2", "Hop contact ms"],
    ["F2", "Hop flight s"],
  ]);
  const alone = understandTable("Jumps", [
    ["Date", "Athlete", " Box jump "],
    ["2026-05-12", "Ilka", 580],
  ]).reading;
  expect(alone.issues.map(({ facts }) => facts.heading)).toEqual(["Box jump"]);
});

test("a jump's height and a box's plates are tests of their own; sand is no inch", () => {
  const { reading } = understandTable("Jumps", [
    ["Date", "Athlete", "Jump height", "Box", "Jump in sand"],
    ["2026-05-12", "Ilka", 31, "2x15 o", 29],
  ]);
  expect(reading.records.map((jump) => `${jump.test}: ${shortJump(jump)}`)).toEqual([
    "Jump: 05-12 Ilka 31 cm",
    "Box: 05-12 Ilka 15 15 ✓",
    "Jump in sand: 05-12 Ilka 29 cm",
  ]);
});

test("two heights and two tries on a stack of one test are two jumps", () => {
  const { reading } = understandTable("Jumps", [
    ["Date", "Athlete", "Box jump (cm)", "Box jump (cm)", "Box jump stack"],
    ["2026-05-12", "Ilka", 60, 61, "2x15 xo"],
  ]);
  expect(reading.records.map(({ heightCm, cleared }) => [heightCm, cleared])).toEqual([
    [60, false],
    [61, true],
  ]);
});

test("words alone are notes of their day, and what cannot be read is told without a mend", () => {
  const jumps = understandTable("Jumps", [
    ["Date", "Athlete", "Box jump (cm)", "Note"],
    ["2026-05-12", "Ilka", "", "  calf sore "],
    ["2026-05-14", "Ilka", "late", ""],
    ["2026-05-19", "Ilka", "-5", ""],
  ]).reading;
  expect(notes(jumps)).toEqual(["D2 Ilka: calf sore", "C3 Ilka: late"]);
  expect(counts(jumps)).toEqual([3, 0, 0, 1]);
  expect(jumps.issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["C4", "jump-unread", {}],
  ]);
  const sets = understandTable("Sets", [
    ["Date", "Athlete", "Squat"],
    ["2026-05-12", "Ilka", "ride"],
  ]).reading;
  expect(notes(sets)).toEqual(["C2 Ilka: ride"]);
  const spans = [...(jumps.notes ?? []), ...(sets.notes ?? [])].map(({ span }) => span);
  expect(spans).toEqual(["day", "day", "day"]);
});

test("a column that says something of one figure is told where it is filled, and left alone where not", () => {
  const told = (cleared: unknown) =>
    problems(
      understandTable("Jumps", [
        ["Date", "Athlete", "CMJ (cm)", "Hop (cm)", "Cleared"],
        ["2026-05-12", "Ilka", 41, 30, cleared],
        ["", "", "", "", false],
      ]).reading,
    );
  expect([told("yes"), told(true)]).toEqual(Array(2).fill(["E1 heading-unknown: Cleared"]));
  expect([told(""), told(false)]).toEqual([[], []]);
});

test("columns numbered from one on are tries of one test, each figure beside its own", () => {
  const read = (head: readonly string[], ...rows: readonly unknown[][]) =>
    understandTable("Jumps", [["Date", "Athlete", ...head], ...rows]).reading.records.map(
      ({ test, heightCm, contactS }) => `${test} ${contactS ?? "–"} ${heightCm ?? "–"}`,
    );
  const row = ["2026-05-12", "Ilka Brandmoor"];
  const cmj = ["CMJ – 36.9", "CMJ – 37.4", "CMJ – 37.5"];
  for (const head of [
    ["CMJ 1", "CMJ 2", "CMJ 3"],
    ["CMJ1 (cm)", "CMJ2 (cm)", "CMJ3 (cm)"],
    ["CMJ try 1", "CMJ try 2", "CMJ try 3"],
    ["CMJ #1", "CMJ #2", "CMJ #3"],
  ])
    expect(read(head, [...row, 36.9, 37.4, 37.5])).toEqual(cmj);
  expect(
    read(
      [
        "Drop jump contact 1 ms",
        "Drop jump height 1 cm",
        "Drop jump contact 2 ms",
        "Drop jump height 2 cm",
      ],
      [...row, 182, "", 190, 31],
    ),
  ).toEqual(["Drop jump 0.182 –", "Drop jump 0.19 31"]);
  // Heights of the box are no tries.
  expect(read(["Drop jump 30", "Drop jump 40"], [...row, 31, 33])).toEqual([
    "Drop jump 30 – 31",
    "Drop jump 40 – 33",
  ]);
  expect(read(["CMJ 1", "Box jump"], [...row, 36, 60])).toEqual(["CMJ 1 – 36", "Box jump – 60"]);
});

test.each([
  ["a second row that numbers them", [["", "", 1, 2, 3]]],
  ["nothing below it", []],
])("tries stand under one heading, merged over their columns, with %s", (_, second) => {
  const { reading, questions } = understandTable("Jumps", [
    ["Date", "Athlete", "CMJ", "", ""],
    ...second,
    ["2026-05-12", "Ilka Brandmoor", 36.9, 37.4, 37.5],
    ["2026-05-19", "Ilka Brandmoor", 36.1, "", 37],
  ]);
  expect(reading.records.map(({ test, heightCm }) => [test, heightCm])).toEqual([
    ["CMJ", 36.9],
    ["CMJ", 37.4],
    ["CMJ", 37.5],
    ["CMJ", 36.1],
    ["CMJ", 37],
  ]);
  expect([problems(reading), questions]).toEqual([[], []]);
});

test("a column without a heading that holds no heights is asked about", () => {
  const { reading, questions } = understandTable("Jumps", [
    ["Date", "Athlete", "CMJ", ""],
    ["2026-05-12", "Ilka Brandmoor", 36.9, 7],
    ["2026-05-19", "Ilka Brandmoor", 36.1, 180],
  ]);
  expect(reading.records.map(({ heightCm }) => heightCm)).toEqual([36.9, 36.1]);
  expect(questions.map(({ column }) => column)).toEqual([4]);
});

test("units in a row of their own, or in a second row of headings, hold for the tests above them", () => {
  const heights = (units: string) =>
    understandTable("Jumps", [
      ["Date", "Athlete", "Box jump", "CMJ", "Drop height", "Hop contact"],
      ["", "", units, units, units, "ms"],
      ["2026-05-12", "Ilka", 20, 16, 12, 182],
    ]).reading.records.map((jump) => `${jump.test}: ${shortJump(jump)} from ${jump.dropCm}`);
  expect(heights("in")).toEqual([
    "Box jump: 05-12 Ilka 50.8 cm from 30.48",
    "CMJ: 05-12 Ilka 40.64 cm from 30.48",
    "Hop: 05-12 Ilka 0.182/? from 30.48",
  ]);
  expect(heights("(cm)")[0]).toBe("Box jump: 05-12 Ilka 20 cm from 12");
});

test("what holds for a whole row is read in the unit of its heading, and told with it", () => {
  const sets = understandTable("Sets", [
    ["Date", "Athlete", "Bar (lb)", "Reps left", "Squat (kg)"],
    ["2026-05-12", "Ilka", 33, 2, "85x5"],
    ["2026-05-14", "Ilka", 33, 40, "85x5"],
  ]).reading;
  expect(sets.records.map(({ barKg, repsInReserve }) => [barKg, repsInReserve])).toEqual([
    [33 * 0.45359237, 2],
    [33 * 0.45359237, null],
  ]);
  expect(sets.issues.map(({ cell, facts }) => [cell, facts.heading])).toEqual([
    ["D3", "Reps left"],
  ]);
});

test("each lift's loads are in the unit of its own heading, or else in the one that the coach names", () => {
  const loads = (heading: string, more = {}) => {
    const { reading, questions } = understandTable(
      "Sets",
      [
        ["Date", "Athlete", heading, "Bench (kg)"],
        ["2026-05-12", "Ilka", "185x5", "60x5"],
        ["2026-05-14", "Ilka", "190x5", "60x5"],
      ],
      more,
    );
    return [
      ...reading.records.map(({ loadKg }) => loadKg),
      ...questions.map(({ column }) => column),
    ];
  };
  const pounds = [185 * 0.45359237, 60, 190 * 0.45359237, 60];
  expect(loads("Squat (lb)")).toEqual(pounds);
  expect(loads("Squat, lbs x reps")).toEqual(pounds);
  expect(loads("Squat", { answers: { columns: [{ column: 3, unit: "lb" }] } })).toEqual(pounds);
  expect(loads("Squat (kg)", { answers: { columns: [{ column: 3, unit: "lb" }] } })).toEqual([
    185, 60, 190, 60,
  ]);
});

test("the day order that the coach names, or that another row shows, holds for tests across too", () => {
  const days = (last: string, more = {}) => {
    const { reading, questions } = understandTable(
      "Jumps",
      [
        ["Date", "Athlete", "Box jump (cm)"],
        ["5/6/2026", "Ilka", 41],
        [last, "Kofi", ""],
      ],
      more,
    );
    return [...reading.records.map(({ day }) => isoFromDay(day)), ...questions];
  };
  expect(days("28/6/2026")).toEqual(["2026-06-05"]);
  expect(
    days("7/6/2026", { answers: { columns: [{ column: 1, dateOrder: "month first" }] } }),
  ).toEqual(["2026-05-06"]);
});

test("a name or a day under merged cells holds for the rows below it, an empty row is nobody's", () => {
  const rows = (...below: readonly (readonly unknown[])[]) => {
    const { reading } = understandTable("Jumps", [["Date", "Athlete", "Box jump (cm)"], ...below]);
    return [...reading.records.map(shortJump), ...problems(reading), counts(reading).join(" ")];
  };
  expect(
    rows(
      ["2026-05-12", "Ilka", 41],
      ["2026-05-14", "", 42],
      ["", "", ""],
      ["2026-05-12", "Kofi", 51],
      ["2026-05-14", "", 52],
    ),
  ).toEqual([
    "05-12 Ilka 41 cm",
    "05-14 Ilka 42 cm",
    "05-12 Kofi 51 cm",
    "05-14 Kofi 52 cm",
    "4 0 1 1",
  ]);
  expect(
    rows(
      ["2026-05-12", "Ilka", 41],
      ["", "Kofi", 51],
      ["2026-05-14", "Ilka", 42],
      ["", "Kofi", 52],
    ),
  ).toEqual([
    "05-12 Ilka 41 cm",
    "05-12 Kofi 51 cm",
    "05-14 Ilka 42 cm",
    "05-14 Kofi 52 cm",
    "4 0 0 1",
  ]);
});

test("the time of day beside a date counts where no column of times says it", () => {
  const minutes = (...time: readonly string[]) =>
    understandTable("Sets", [
      ["Date", "Athlete", "Squat", ...time.slice(0, 1)],
      ["2026-05-12 17:30", "Ilka", "85x5", ...time.slice(1)],
      [new Date(2026, 4, 14, 17, 45), "Ilka", "85x5", ...time.slice(1)],
      ["2026-05-16", "Ilka", "85x5", ...time.slice(1)],
    ]).reading.records.map(({ minute }) => minute);
  const evening = [17 * 60 + 30, 17 * 60 + 45, null];
  expect(minutes()).toEqual(evening);
  expect(minutes("Time", "")).toEqual(evening);
  expect(minutes("Time", "9:15")).toEqual(Array(3).fill(9 * 60 + 15));
});

test("a column that no lift uses lends its unit to none", () => {
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Load (lb)", "Squat"],
    ["2026-05-12", "Ilka", "", "85x5"],
  ]);
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([85]);
});

test("a day far from all others is questioned at its own cell", () => {
  const weekly = ["7 Apr", "14 Apr", "21 Apr", "28 Apr", "5 May", "12 May", "19 May", "26 May"];
  const { reading } = understandTable("Jumps", [
    ["Group", "Date", "Athlete", "Box jump (cm)"],
    ...[...weekly, "2 June", "9 June", "16 June"].map((day) => ["", `${day} 2026`, "Ilka", 41]),
    ["", "26 May 2024", "Ilka", 41],
  ]);
  expect(reading.issues.map(({ cell, code }) => [cell, code])).toEqual([["B13", "day-questioned"]]);
});

test("a formula's error for a name is told as such", () => {
  const { reading } = understandTable("Jumps", [
    ["Date", "Athlete", "Box jump (cm)"],
    ["2026-05-12", "#REF!", 41],
  ]);
  expect(problems(reading)).toEqual(["B2 cell-error: #REF!"]);
});

test("plates are told by the mass stamped on them, whatever unit stands in the heading", () => {
  const { reading } = understandTable("Jumps", [
    ["Date", "Athlete", "Box jump stack (cm)"],
    ["2026-05-12", "Ilka", 20],
    ["2026-05-14", "Ilka", "15"],
  ]);
  expect(reading.records.map(shortJump)).toEqual(["05-12 Ilka 20 ✓", "05-14 Ilka 15 ✓"]);
});

test("numbers from one on make tries of names; a first number missing makes none", () => {
  const tries = (...names: string[]) => [...triesOf(names)];
  expect(tries("CMJ 1", "cmj 2", "Hop")).toEqual([
    ["CMJ 1", { test: "CMJ", attempt: 0 }],
    ["cmj 2", { test: "CMJ", attempt: 1 }],
  ]);
  expect([tries("CMJ 2", "CMJ 3"), tries("CMJ 1"), tries("CMJ 1", "CMJ 3")]).toEqual([[], [], []]);
});

test("a row that numbers the tries is one where nothing else stands in it, as text too", () => {
  const read = (...rows: readonly (readonly unknown[])[]) => {
    const { reading } = understandTable("Jumps", [
      ["Date", "Athlete", "CMJ", ""],
      ...rows,
      ["2026-05-12", "Ilka", 36.9, 37.4],
      ["2026-05-19", "Ilka", 37.1, 2],
    ]);
    return [counts(reading).join(" "), ...problems(reading), ...reading.records.map(shortJump)];
  };
  const figures = [
    "05-12 Ilka 36.9 cm",
    "05-12 Ilka 37.4 cm",
    "05-19 Ilka 37.1 cm",
    "05-19 Ilka  ?",
  ];
  expect(read(["", "", 1, 2])).toEqual(["2 0 0 2", "D4 implausible: 2", ...figures]);
  expect(read(["", "", "1", "2"])).toEqual(["2 0 0 2", "D4 implausible: 2", ...figures]);
  expect(read(["", "", 1, ""]).slice(0, 2)).toEqual(["2 1 0 1", "A2 needed-blank: "]);
});

test("ten centimetres beside a jump's heading are another try; what stands beside a contact is asked about", () => {
  const read = (head: string, ...cells: unknown[]) => {
    const { reading, questions } = understandTable("Jumps", [
      ["Date", "Athlete", head, ""],
      ["2026-05-12", "Ilka", ...cells],
    ]);
    return [...reading.records.map(shortJump), ...questions.map(({ column }) => column)];
  };
  expect(read("Hop (cm)", 12, 10)).toEqual(["05-12 Ilka 12 cm", "05-12 Ilka 10 cm"]);
  expect(read("Hop contact ms", 182, 41)).toEqual(["05-12 Ilka 0.182/?", 4]);
});

test("a name in a row without figures holds for the merged rows below it", () => {
  const { reading } = understandTable("Jumps", [
    ["Date", "Athlete", "Box jump (cm)"],
    ["2026-05-12", "Ilka", 41],
    ["2026-05-12", "Kofi", ""],
    ["2026-05-14", "", 51],
  ]);
  expect(reading.records.map(shortJump)).toEqual(["05-12 Ilka 41 cm", "05-14 Kofi 51 cm"]);
});

test("a column of lifts beside a column of jumps is asked about by neither table", () => {
  const asked = (["Sets", "Jumps"] as const).map(
    (table) =>
      understandTable(table, [
        ["Date", "Athlete", "Box jump (cm)", "Squat"],
        ["2026-05-12", "Ilka", 41, "85x5"],
      ]).questions,
  );
  expect(asked).toEqual([[], []]);
});

test.each([
  [
    "the best of the tries before or behind its name",
    ["CMJ 1", "CMJ 2", "Best CMJ", "CMJ best"],
    [36, 37, 37, 37],
    ["CMJ 36 cm", "CMJ 37 cm"],
    [],
  ],
  [
    "a ratio of figures beside it",
    ["Drop jump contact ms", "Drop jump height cm", "RSI"],
    [182, 31, 1.7],
    ["Drop jump 0.182/?"],
    [],
  ],
  [
    "a best where no tries are numbered is a test",
    ["CMJ", "Hop best"],
    [36, 30],
    ["CMJ 36 cm", "Hop best 30 cm"],
    [],
  ],
  [
    "a height beside contacts of two tests",
    ["Drop jump contact ms", "Hop contact ms", "Jump height"],
    [182, 170, 31],
    ["Drop jump 0.182/?", "Hop 0.17/?", "Jump 31 cm"],
    [],
  ],
  [
    "what begins like a jump’s height",
    ["Jump rope cm", "Drop jump contact ms"],
    [31, 180],
    ["Jump rope 31 cm", "Drop jump 0.18/?"],
    [],
  ],
  [
    "a second try alone",
    ["Test", "Try 1", "Try 3"],
    ["CMJ", 36, 37],
    ["CMJ  ?"],
    ["Try 1", "Try 3"],
  ],
  ["one try alone", ["Test", "Try 1"], ["CMJ", 36], ["CMJ  ?"], ["Try 1"]],
  [
    "“Set 1”, “Set 2” of a test",
    ["Test", "Set 1", "Set 2"],
    ["CMJ", 36, 37],
    ["CMJ 36 cm", "CMJ 37 cm"],
    [],
  ],
])("columns of tests: %s", (_, heads, cells, jumps, asked) => {
  const { reading, questions } = understandTable("Jumps", [
    ["Date", "Athlete", ...heads],
    ["2026-05-12", "Ilka", ...cells],
  ]);
  expect(
    reading.records.map((jump) => `${jump.test} ${shortJump(jump).replace("05-12 Ilka ", "")}`),
  ).toEqual(jumps);
  expect(questions.map(({ heading }) => heading)).toEqual(asked);
});

test.each([
  [
    "names over their tries and figures",
    ["", "", " CMJ ", "", "Box jump", ""],
    ["Try 1", "Try 2", "Height", "Stack"],
    [36, 37, 60, "2x15"],
    ["CMJ 36 cm", "CMJ 37 cm", "Box jump 60 cm"],
  ],
  ["a number left of them", ["Week", 3, "CMJ", ""], ["Height", "Note"], [36, "ok"], ["CMJ 36 cm"]],
  ["a name at the very left", ["CMJ", "", "", ""], ["Height", "Note"], [36, "ok"], ["CMJ 36 cm"]],
])("tests named in a row above: %s", (_, above, heads, cells, jumps) => {
  const { reading } = understandTable("Jumps", [
    above,
    ["Date", "Athlete", ...heads],
    ["2026-05-12", "Ilka", ...cells],
  ]);
  expect(
    reading.records.map((jump) => `${jump.test} ${shortJump(jump).replace("05-12 Ilka ", "")}`),
  ).toEqual(jumps);
});

test.each([
  ["DJ30 CT (ms)", "DJ30 FT (ms)"],
  ["DJ30 GCT ms", "DJ30 FT ms"],
  ["DJ30 temps de contact (ms)", "DJ30 temps de vol (ms)"],
])("“%s” and “%s” are the times of one drop jump", (contact, flight) => {
  const { reading } = understandTable("Jumps", [
    ["Date", "Athlete", contact, flight],
    ["2026-05-12", "Kofi", 180, 500],
  ]);
  expect(reading.records.map((jump) => `${jump.test}: ${shortJump(jump)}`)).toEqual([
    "DJ30: 05-12 Kofi 0.18/0.5",
  ]);
  expect(reading.records[0]!.dropCm).toBe(30);
});
