import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { counts, problems, shortSet, today } from "../layouts/short";

// Rows as coaches leave them, table by table; athletes and figures are invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[]) =>
  understandTable<T>(table, cells, { today }).reading;
const squat = (...cells: unknown[]) => ["2026-05-12", "Ilka", "squat", ...cells];

test("one row a repetition: a gap keeps its place, a smaller number starts the next set, notes and form add up", () => {
  const reading = read("Sets", [
    ["Date", "Athlete", "Exercise", "Set", "Rep", "Load (kg)", "Speed (m/s)", "Note", "ok", "RIR"],
    squat(1, "", 80, 0.62, "", "", ""),
    squat(1, "", 80, 0.6, "a", "y", 3),
    squat(1, 4, 80, 0.58, "b", "n", 2),
    squat(2, 2, 80, 0.58, "", "", ""),
    squat(2, 1, 80, 0.57, "", "", ""),
    squat("wu", "", 60, 0.97, "", "", ""),
    squat("wu", "", 65, 0.9, "", "", ""),
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 80x4 0.62 0.6 - 0.58",
    "05-12 Ilka 2 80x2 - 0.58",
    "05-12 Ilka 2 80x1 0.57",
    "05-12 Ilka warm-up 60x1 0.97",
    "05-12 Ilka warm-up 65x1 0.9",
  ]);
  expect(
    reading.records.map(({ note, movedWell, repsInReserve }) => [
      note,
      movedWell,
      repsInReserve,
    ])[0],
  ).toEqual(["a; b", false, 2]);
  expect(counts(reading)).toEqual([7, 0, 0, 1]);
});

test("a word for the kind may stand where set numbers do; another may be of a warm-up, and its row waits", () => {
  const reading = read("Sets", [
    ["Date", "Athlete", "Exercise", "Set", "Load (kg)", "Peak speed"],
    squat("wu", 80, 1.62),
    squat("marker", 80, 1.61),
    squat("Aufwärmen 1", 60, 1.8),
    squat("calentamiento", 60, 1.8),
    squat("feeler", 82.5, 1.6),
    squat(1.5, 85, 1.59),
    squat("-", 85, 1.58),
    squat("back-off", 75, 1.7),
  ]);
  expect(reading.records.map(({ kind, set, speedIs }) => [kind, set, speedIs])).toEqual([
    ["warm-up", null, "peak"],
    ["marker", null, "peak"],
    ["warm-up", null, "peak"],
    ["warm-up", null, "peak"],
    ["work", null, "peak"],
    ["work", null, "peak"],
    ["work", null, "peak"],
  ]);
  expect(problems(reading)).toEqual(["D6 word-unknown: feeler", "D7 not-whole: 1.5"]);
  expect(reading.issues.map(({ dropsRow }) => dropsRow)).toEqual([true, false]);
});

test("a plate needs its mass and its thickness; one mass has one thickness", () => {
  const reading = read("Plates", [
    ["Mass", "Thickness (mm)", "Number owned"],
    [20, "", 2],
    ["", 30, 2],
    [15, 28, ""],
    ['"', 29, 1],
    [10, 5000, 2],
    [-5, 20, 2],
    ["5 lb", "1 in", 2],
  ]);
  expect(problems(reading)).toEqual([
    "B2 needed-blank: ",
    "A3 needed-blank: ",
    'A5 plate-twice: "',
    "B6 implausible: 5000",
    "A7 implausible: -5",
  ]);
  expect(reading.issues.map(({ dropsRow }) => dropsRow)).toEqual(Array(5).fill(true));
  expect(reading.records.map(({ row, thicknessCm, owned }) => [row, thicknessCm, owned])).toEqual([
    [4, 2.8, null],
    [8, 2.54, 2],
  ]);
  expect(reading.records[1]!.massKg).toBeCloseTo(2.268, 3);
});

test("a rule is read from a percentage, a tick or a number; what is no value of it is said", () => {
  const rules = (...rows: unknown[][]) => {
    const reading = read("Rules", [["Rule", "Value"], ...rows]);
    return [reading.records.map(({ key, value }) => [key, value]), problems(reading)];
  };
  expect(rules(["Velocity loss cap", "20 %"], ["Racks in the room", true])).toEqual([
    [
      ["velocityLossCap", 0.2],
      ["racks", 1],
    ],
    [],
  ]);
  expect(rules(["Racks in the room", false])[0]).toEqual([["racks", 0]]);
  expect(rules(["Racks in the room", Number.POSITIVE_INFINITY])[0]).toEqual([]);
  expect(rules(["Racks in the room", "three"])[0]).toEqual([]);
  expect(rules(["Racks in the room", 3], ["Racks", 4])).toEqual([
    [["racks", 3]],
    ["A3 rule-twice: Racks"],
  ]);
  expect(rules(["Nonsense", 3], ["", 4])[1]).toEqual([
    "A2 rule-unknown: Nonsense",
    "A3 needed-blank: ",
  ]);
});

test("a run typed twice with its distance is one run; two equal half-hours are two", () => {
  const reading = read("Runs", [
    ["Date", "Athlete", "Km", "Min"],
    ["2026-05-12", "Ilka", 10, 50],
    ["2026-05-12", "Ilka", 10, 50],
    ["2026-05-12", "", 10, 50],
    ["2026-05-12", "Ilka", "", 30],
    ["2026-05-12", "Ilka", "", 30],
  ]);
  expect(reading.records.map(({ row }) => row)).toEqual([2, 5, 6]);
  expect(problems(reading)).toEqual(["A3 doubled-row: ", "B4 needed-blank: "]);
  expect(reading.issues[0]!.facts.earlierRow).toBe(2);
});

test("a diary row without an athlete is reported, and a row typed twice counts once", () => {
  const reading = read("Diary", [
    ["Date", "Athlete", "Sleep", "Mood"],
    [new Date(2026, 4, 12), "", 8, 5],
    [new Date(2026, 4, 12), "Ilka", 8, 5],
    [new Date(2026, 4, 12), "Ilka", 8, 5],
    [new Date(2026, 4, 13), "Ilka", 8, 5, ""],
    [new Date(2026, 4, 13), "Ilka", 8, 5],
  ]);
  expect(reading.records.map(({ row }) => row)).toEqual([3, 5]);
  expect(problems(reading)).toEqual(["B2 needed-blank: ", "A4 doubled-row: ", "A6 doubled-row: "]);
});
