import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Jumps in a tab whose sets stand side by side; athletes, days and figures are invented.

const day = new Date(2026, 4, 5);
const read = (cells: readonly (readonly unknown[])[]) => {
  const sets = understandTable("Sets", cells, { today, title: "Gym" }).reading;
  const jumps = understandTable("Jumps", cells, { today, title: "Gym" }).reading;
  return { sets, jumps };
};

test("each table reads its own rows, every cell of them, and takes the other's for no rows", () => {
  const { sets, jumps } = read([
    ["Date", "Athlete", "Lift", "Set 1", "Set 2", "Set 3", "Notes"],
    [day, "Ilka", "Squat", 80, 85, 90, ""],
    [day, "Bram", "Squat", 60, 65, 70, ""],
    [day, "Ilka", "Box jump", "15+10", "2x15 xo", "-", "good"],
    [day, "Ilka", "CMJ", 32, "33 tired", " sore ", ""],
    [day, "Ada", "Squat", "back hurts", "", "", ""],
  ]);
  expect(sets.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 80x?",
    "05-05 Ilka 2 85x?",
    "05-05 Ilka 3 90x?",
    "05-05 Bram 1 60x?",
    "05-05 Bram 2 65x?",
    "05-05 Bram 3 70x?",
  ]);
  expect([problems(sets), counts(sets)]).toEqual([[], [3, 0, 0, 3]]);
  expect(notes(sets)).toEqual(["D6 Ada: back hurts"]);
  expect(
    jumps.records.map((jump) => `${jump.test} ${shortJump(jump)} ${jump.note}`.trim()),
  ).toEqual([
    "Box jump 05-05 Ilka 15 10 ✓ good",
    "Box jump 05-05 Ilka 15 15 ✗ good",
    "Box jump 05-05 Ilka 15 15 ✓ good",
    "CMJ 05-05 Ilka 32 cm",
    "CMJ 05-05 Ilka 33 cm",
  ]);
  expect(notes(jumps)).toEqual(["E5 Ilka: tired", "F5 Ilka: sore"]);
  expect([problems(jumps), counts(jumps)]).toEqual([[], [2, 0, 0, 4]]);
});

test("under kilograms a stack is one, a number is no height", () => {
  const { jumps } = read([
    ["Date", "Athlete", "Lift", "Set 1 kg", "Set 2 kg"],
    [day, "Ilka", "Squat", 80, 85],
    [day, "Ilka", "Box jump", "15+10", "high"],
    [day, "Ilka", "CMJ", 32, "x?1"],
  ]);
  expect(jumps.records.map(shortJump)).toEqual(["05-05 Ilka 15 10 ✓"]);
  expect([problems(jumps), notes(jumps)]).toEqual([
    ["D4 jump-unread: 32", "E4 jump-unread: x?1"],
    ["E3 Ilka: high"],
  ]);
});

test.each([
  [
    "athlete",
    ["Date", "Lift", "Set 1", "Set 2"],
    [day, "CMJ", 32, 33],
    "A3 athlete-missing: 2026-05-05",
  ],
  ["day", ["Athlete", "Lift", "Set 1", "Set 2"], ["Ilka", "CMJ", 32, 33], "A3 day-missing: Ilka"],
])("without its %s a jump is told at its row", (_, heads, cells, told) => {
  const squat = cells.map((cell) =>
    cell === "CMJ" ? "Squat" : typeof cell === "number" ? 80 : cell,
  );
  const { jumps } = read([heads, squat, cells]);
  expect([jumps.records, problems(jumps)]).toEqual([[], [told]]);
});

test("a day above the headings is the jumps' day", () => {
  const { jumps } = read([
    ["5 May 2026", "", "", ""],
    ["Athlete", "Lift", "Set 1", "Set 2"],
    ["Ilka", "Squat", 80, 85],
    ["Ilka", "CMJ", 32, 33],
  ]);
  expect(jumps.records.map(shortJump)).toEqual(["05-05 Ilka 32 cm", "05-05 Ilka 33 cm"]);
});

test("words where figures would stand are kept as they are, without the blanks around them", () => {
  const { sets } = read([
    ["Date", "Athlete", "Lift", "kg", "Set 1 m/s", "Set 2 m/s", "Notes"],
    [day, "Ilka", "Squat", 80, 0.6, 0.58, ""],
    [day, "Bram", "Squat", 60, "", "", ""],
    [day, "Ada", "Squat", "", "", "", " ill "],
    [day, "Jo", "Squat", "", " sore ", "", ""],
    [day, "Max", "Squat", "", "", "", ""],
  ]);
  expect(sets.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 80x? 0.6",
    "05-05 Ilka 2 80x? 0.58",
    "05-05 Bram work 60x?",
  ]);
  expect([notes(sets), problems(sets), counts(sets)]).toEqual([
    ["G4 Ada: ill", "E5 Jo: sore"],
    [],
    [5, 0, 0, 1],
  ]);
  expect((sets.notes ?? []).map(({ span }) => span)).toEqual(["day", "day"]);
});

test("a tick or a date where a load would stand is told in its own cell", () => {
  const { sets } = read([
    ["Date", "Athlete", "Lift", "Set 1", "Set 2"],
    [day, "Ilka", "Squat", 80, 85],
    [day, "Bram", "Squat", true, 80],
    [day, "Ada", "Squat", new Date(2026, 4, 3), 80],
  ]);
  expect(problems(sets)).toEqual(["D3 not-a-number: true", "D4 date-in-number: 2026-05-03"]);
});

test("left and right without a lift of the row are lifts by themselves", () => {
  const { sets } = read([
    ["", "", "Left", "", "Right", ""],
    ["Date", "Athlete", "kg", "reps", "kg", "reps"],
    [day, "Ilka", 20, 8, 20, 7],
  ]);
  expect(sets.records.map(({ exercise, reps }) => [exercise, reps])).toEqual([
    ["Left", 8],
    ["Right", 7],
  ]);
});
