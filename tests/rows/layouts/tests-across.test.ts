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
        ["Date", "Athlete", "Box jump (cm)", "Hop (cm)", "Cleared"],
        ["2026-05-12", "Ilka", 41, 30, cleared],
        ["", "", "", "", false],
      ]).reading,
    );
  expect([told("yes"), told(true)]).toEqual(Array(2).fill(["E1 heading-unknown: Cleared"]));
  expect([told(""), told(false)]).toEqual([[], []]);
});
