import { understandTable } from "../../../src/rows/read-table";
import { notes, problems, shortJump, shortSet } from "./short";

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
