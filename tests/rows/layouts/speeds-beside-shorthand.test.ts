import { understandTable } from "../../../src/rows/read-table";
import { problems, shortSet, today } from "./short";

// Speeds in a cell beside shorthand, in a log, under dates and in blocks; all invented.

const read = (cells: readonly (readonly unknown[])[]) =>
  understandTable("Sets", cells, { today }).reading;
const log = (speeds: unknown, scheme = "85x1x5") =>
  read([
    ["Date", "Athlete", "Exercise", "kg x sets x reps", "Speeds"],
    ["2026-05-05", "Ilka", "squat", scheme, speeds],
  ]);
const grid = (speeds: unknown, scheme = "85x1x5") =>
  read([
    ["Squat 2026", "", "", "", ""],
    ["", "5/5", "", "28/5", ""],
    ["Athlete", "sets x reps", "m/s", "kg", "m/s"],
    ["Ilka", scheme.replace("85x1x5", "85x5"), speeds, "", ""],
  ]);
const block = (speeds: unknown, scheme = "85x1x5") =>
  read([
    ["Ilka", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "kg x sets x reps", "m/s"],
    ["", scheme, speeds],
  ]);
/** Where it is, the cell of the speeds beside, the shorthand's own cell, and what heads the speeds. */
const places = [
  ["log", log, "E2", "D2", "Speeds"],
  ["grid", grid, "C4", "B4", "speed"],
  ["block", block, "C4", "B4", "m/s"],
] as const;

test.each(places)("in a %s: a figure, a list or a mark for none", (_, written) => {
  expect(written(0.62).records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5 0.62"]);
  expect(written("0.62 - 0.6").records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5 0.62 - 0.6"]);
  for (const none of ["", "-", "n/a", false])
    expect([written(none).records.map(shortSet), problems(written(none))]).toEqual([
      ["05-05 Ilka 1 85x5"],
      [],
    ]);
});

test.each(places)(
  "in a %s: a date, a tick, a word or a doubt is told at its cell",
  (_, written, at, __, head) => {
    const told = (speeds: unknown) => {
      const { records, issues } = written(speeds);
      expect(records.map(({ loadKg, reps, setSpeed }) => [loadKg, reps, setSpeed])).toEqual([
        [85, 5, null],
      ]);
      expect(issues.map(({ facts }) => facts.heading)).toEqual([head]);
      return issues.map(({ cell, code, facts }) => [cell, code, facts.piece ?? ""].join(" "));
    };
    expect(told(new Date(2026, 4, 6))).toEqual([`${at} date-in-number `]);
    expect(told(true)).toEqual([`${at} not-a-number true`]);
    expect(told("fast")).toEqual([`${at} not-a-number fast`]);
    expect(told(".6?")).toEqual([`${at} unsure .6?`]);
    expect(written(12_345).issues.map(({ cell, code }) => [cell, code])).toEqual([
      [at, "implausible"],
    ]);
  },
);

test.each(places)(
  "in a %s: the same speeds in two places are one, others leave both out",
  (_, written, at) => {
    const twice = (speeds: unknown) => {
      const reading = written(speeds, "85x1x5 .62");
      return [...reading.records.map(shortSet), ...problems(reading)];
    };
    expect(twice(0.62)).toEqual(["05-05 Ilka 1 85x5 0.62"]);
    expect(twice("")).toEqual(["05-05 Ilka 1 85x5 0.62"]);
    expect(twice("-")).toEqual(["05-05 Ilka 1 85x5 0.62"]);
    expect(twice("fast")).toEqual(["05-05 Ilka 1 85x5 0.62", `${at} not-a-number: fast`]);
    expect(twice(0.6)).toEqual(["05-05 Ilka 1 85x5", `${at} speeds-twice: 0.6`]);
  },
);

test.each(places)("in a %s: speeds too many are told where they stand", (_, written, at, own) => {
  const six = ".62 .61 .60 .59 .58 .57";
  expect(problems(written(six))).toEqual([`${at} speeds-too-many: ${six}`]);
  expect(written(six).issues[0]!.facts).toEqual({ speeds: 6, sets: 1, reps: 5, said: "" });
  const scheme = `85x1x5 ${six}`;
  expect(problems(written("", scheme))).toEqual([
    `${own} speeds-too-many: ${written === grid ? scheme.replace("85x1x5", "85x5") : scheme}`,
  ]);
});

test("one repetition a column: each is told at its own cell and keeps its place", () => {
  const reading = read([
    ["Ilka", "", "", "", "", ""],
    ["5 May", "", "", "", "", ""],
    ["SQUAT", "kg", "r1", "r2", "r3", "r4"],
    ["", "85x5", 0.62, new Date(2026, 4, 6), ".58?", 0.57],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5 0.62 - - 0.57"]);
  expect(problems(reading)).toEqual(["D4 date-in-number: 2026-05-06", "E4 unsure: .58?"]);
  expect(reading.issues.map(({ facts }) => facts.heading)).toEqual(["", ""]);
});

test("a session copied from a weekday tells of its own speeds", () => {
  const reading = read([
    ["Date", "Athlete", "Exercise", "kg x sets x reps", "Speeds"],
    ["2026-05-12", "Ilka", "squat", "85x1x5", ""],
    ["2026-05-14", "Ilka", "squat", "as Tue", ".6?"],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-12 Ilka 1 85x5", "05-14 Ilka 1 85x5"]);
  expect(problems(reading)).toEqual(["E3 unsure: .6?"]);
});

test("words beside shorthand go with the row's own note, in a block, a log and under a lift's name", () => {
  const blocks = read([
    ["Ilka", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "kg x sets x reps", "m/s", "note"],
    ["", "85x1x5 slipped", "", "late"],
    ["", "80x1x5 (redo)", "", ""],
  ]);
  expect(blocks.records.map(({ note }) => note)).toEqual(["late; slipped", "redo"]);
  const across = read([
    ["Date", "Athlete", "Squat", "Bench press", "Note"],
    ["2026-05-12", "Ilka", "1x5 65 slipped", "1x5 40", "late"],
  ]);
  expect(across.records.map(({ note }) => note)).toEqual(["late; slipped", "late"]);
});
