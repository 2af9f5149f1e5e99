import type { Cells } from "../../src/rows/cells";
import { jumpCell } from "../../src/rows/layout/wide/jump-cell";
import { jumpTitle } from "../../src/rows/layout/wide/jump-title";
import * as rows from "./readers";

const issues = (reading: { issues: readonly { code: string; cell: string }[] }) =>
  reading.issues.map(({ code, cell }) => `${cell} ${code}`);
const days = (count: number) =>
  Array.from({ length: count }, (_, i) => `2026-05-${String(i + 3).padStart(2, "0")}`);

test("numbers of sets and repetitions: whole, in bounds, a range at its lower end, ditto marks", () => {
  const cells = [3, "2-3", '"', 2.5, 99, "3?", "many", "n/a", false, new Date(2026, 4, 1), "3/10"];
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Load", "RIR"],
    ...cells.map((cell, i) => [days(11)[i], "Ilka Brandmoor", "squat", 1, 65, cell]),
  ] as Cells);
  expect(issues(reading)).toEqual([
    "F6 implausible",
    "F7 unsure",
    "F8 not-a-number",
    "F11 date-in-number",
  ]);
  expect(reading.records.map(({ repsInReserve }) => repsInReserve)).toEqual([
    3,
    2,
    2,
    2.5,
    null,
    null,
    null,
    null,
    null,
    null,
    3,
  ]);
  const numbers = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Reps", "Load"],
    ["2026-05-12", "Ilka Brandmoor", "squat", 1, 2.5, 65],
    ["2026-05-12", "Ilka Brandmoor", "squat", 2, 5, 65],
  ]);
  expect(issues(numbers)).toEqual(["E2 not-whole"]);
});

test("a ditto mark with nothing above it repeats nothing", () => {
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Load", "Moved well", "Kind"],
    ["2026-05-12", "Ilka Brandmoor", "squat", 1, '"', '"', '"'],
    ["2026-05-12", "Ilka Brandmoor", "squat", 2, 65, "yes", "work"],
    ["2026-05-12", "Ilka Brandmoor", "squat", 3, '"', '"', '"'],
    ["2026-05-12", "Ilka Brandmoor", "squat", 4, '"', "perhaps", '"'],
  ]);
  expect(issues(reading)).toEqual(["F5 not-yes-or-no"]);
  expect(reading.records.map(({ loadKg, movedWell }) => [loadKg, movedWell])).toEqual([
    [null, null],
    [65, true],
    [65, true],
    [65, null],
  ]);
});

test("days: what is no day is said, with the day it would be where a number was typed", () => {
  const cells = [
    "2026-05-12",
    '"',
    46_154,
    12,
    true,
    new Date(1875, 0, 1),
    "2199-01-01",
    "30/02/2026",
    "soon",
    "13/5/2026",
    "5/13/2026",
    "4/5/2026",
  ];
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Load"],
    ...cells.map((cell, i) => [cell, "Ilka Brandmoor", "squat", i + 1, 65]),
  ] as Cells);
  expect(issues(reading)).toEqual([
    "A4 day-is-number",
    "A5 not-a-day",
    "A6 not-a-day",
    "A7 day-implausible",
    "A8 day-implausible",
    "A9 not-a-day",
    "A10 not-a-day",
    "A13 date-order-unsettled",
  ]);
  expect(reading.issues[0]!.facts.mend).toBe("2026-05-12");
  expect(reading.records).toHaveLength(4);
});

test("rows of single repetitions: gaps are gaps, notes are joined, poor movement stays", () => {
  const rep = (
    set: number,
    number: number | "",
    speed: number | "",
    moved: string,
    note: string,
  ) => ["2026-05-12", "Ilka Brandmoor", "squat", set, number, 65, speed, moved, note];
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Rep", "Load", "Speed", "Moved well", "Note"],
    rep(1, 1, 0.66, "yes", "calm"),
    rep(1, 2, 0.65, "no", ""),
    rep(1, 4, 0.6, "yes", "slow"),
    rep(2, 2, 0.64, "", ""),
    rep(2, 3, 0.62, "yes", "deep"),
    rep(3, 1, "", "", ""),
  ]);
  expect(
    reading.records.map(({ set, reps, repSpeeds, movedWell, note }) => ({
      set,
      reps,
      repSpeeds,
      movedWell,
      note,
    })),
  ).toEqual([
    { set: 1, reps: 4, repSpeeds: [0.66, 0.65, null, 0.6], movedWell: false, note: "calm; slow" },
    { set: 2, reps: 3, repSpeeds: [null, 0.64, 0.62], movedWell: true, note: "deep" },
    { set: 3, reps: 1, repSpeeds: [null], movedWell: null, note: "" },
  ]);
});

test("speeds in a list: each doubtful, unread or impossible piece is reported by itself", () => {
  const cells = ["0.62 0.60? 0.58", "0.62 6.0 0.58", "0.62 fast 0.58", "0.62 61 0.58", "0.62"];
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Load", "Speeds"],
    ...cells.map((cell, i) => ["2026-05-12", "Ilka Brandmoor", "squat", i + 1, 65, cell]),
  ] as Cells);
  expect(issues(reading)).toEqual([
    "F2 unsure",
    "F3 implausible",
    "F4 not-a-number",
    "F5 implausible",
  ]);
  expect(reading.issues.map(({ facts }) => [facts.mendPiece, facts.mend])).toEqual([
    [undefined, undefined],
    [0.6, "0.62 0.6 0.58"],
    [undefined, undefined],
    [0.61, "0.62 0.61 0.58"],
  ]);
  expect(reading.records.map(({ repSpeeds }) => repSpeeds)).toEqual([
    [0.62, null, 0.58],
    [0.62, null, 0.58],
    [0.62, null, 0.58],
    [0.62, null, 0.58],
    [0.62],
  ]);
});

test.each([
  [
    "5x15+5 o / +10 x",
    [
      ["5x15+5", true],
      ["5x15+5+10", false],
    ],
  ],
  [
    "5x15 xo",
    [
      ["5x15", false],
      ["5x15", true],
    ],
  ],
  ["5x15+10*", [["5x15+10", false]]],
  [
    "4x15 o / 5x15 xx",
    [
      ["4x15", true],
      ["5x15", false],
      ["5x15", false],
    ],
  ],
])("“%s” on a stack is each attempt", (cell, attempts) => {
  expect(jumpCell(cell, ["stack"]).attempts.map(({ stack, cleared }) => [stack, cleared])).toEqual(
    attempts,
  );
});

test.each([
  ["182/.49", ["contact", "flight"], { contact: "182", flight: ".49" }, ""],
  ["243 ms Achilles", ["contact"], { contact: "243" }, "Achilles"],
  [182, ["contact"], { contact: 182 }, ""],
  [0.49, ["flight"], { flight: 0.49 }, ""],
  [46, [], { height: 46 }, ""],
  ["46 cm", [], { height: "46 cm" }, ""],
  ["46 tired", [], { height: "46" }, "tired"],
  ["30/0.2", ["height", "contact"], { height: "30", contact: "0.2" }, ""],
] as const)("%p under %p is one attempt", (cell, parts, attempt, note) => {
  expect(jumpCell(cell, parts)).toEqual({ attempts: [attempt], note, mark: "", problem: null });
});

test.each([
  ["", null, ""],
  [false, null, ""],
  ["xx", null, ""],
  ["n/a", null, ""],
  ["calf sore", null, "calf sore"],
  ["46?", "unsure", ""],
  [new Date(2026, 4, 1), "jump-unread", ""],
  ["182/0.49/3", "jump-unread", ""],
] as const)("%p is no attempt", (cell, problem, note) => {
  expect(jumpCell(cell, ["contact"])).toEqual({ attempts: [], note, mark: "", problem });
});

test.each([
  ["2) drop jump 30 to floor: contact ms / flight s", "drop jump", ["contact", "flight"], 30, null],
  ["Box jump (in)", "Box jump", [], null, null],
  ["Drop jump 40 onto 5x15+5", "Drop jump 40 onto 5x15+5", [], 40, "5x15+5"],
  ["Hop: height cm", "Hop", ["height"], null, null],
])(
  "the title “%s” says test, figures, drop and landing",
  (text, name, parts, dropCm, landingStack) => {
    const title = jumpTitle(text);
    expect(title.test).toBe(name);
    expect(title.parts.map(({ part }) => part)).toEqual(parts);
    expect([title.dropCm, title.landingStack]).toEqual([dropCm, landingStack]);
  },
);

test("a landing in centimetres is a height, not a stack", () => {
  expect(jumpTitle("Drop jump 40 on to 30 cm")).toMatchObject({
    landingCm: 30,
    landingStack: null,
  });
});
