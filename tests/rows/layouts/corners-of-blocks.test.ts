import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortSet, today } from "./short";

// Days and labels in the corner of a block's headings, names and days alone in a row; all invented.

type Lines = readonly (readonly unknown[])[];
const read = (cells: Lines, title = "Ilka", table: "Sets" | "Jumps" = "Sets") =>
  understandTable(table, cells, { today, title }).reading;
const shown = (cells: Lines, title?: string) =>
  read(cells, title).records.map((set) =>
    "exercise" in set ? `${set.exercise}: ${shortSet(set)}` : "",
  );
const first = new Date(2026, 4, 5);

test.each([
  ["in words", "13/5/2026", "5/6/2026", "05-13", "06-05"],
  ["as dates", new Date(2026, 4, 13), new Date(2026, 5, 5), "05-13", "06-05"],
])("a day in the corner of a block's headings begins its session: %s", (_, one, other, ...days) => {
  const block = (day: unknown) => [
    [day, "kg", "reps"],
    ["Squat", 80, 5],
    ["", 82.5, 5],
    ["Bench", 40, 8],
  ];
  const cells = [...block(one), ["", "", ""], ...block(other)];
  expect(shown(cells)).toEqual(
    days.flatMap((day) => [
      `Squat: ${day} Ilka work 80x5`,
      `Squat: ${day} Ilka work 82.5x5`,
      `Bench: ${day} Ilka work 40x8`,
    ]),
  );
  expect([problems(read(cells)), notes(read(cells)), counts(read(cells))]).toEqual([
    [],
    [],
    [6, 0, 1, 2],
  ]);
});

test("a day in the corner may stand before the lift, or behind a blank cell over lifts side by side", () => {
  const before = [
    ["5/5/2026", "SQUAT", "kg", "reps"],
    ["", 1, 80, 5],
  ];
  expect(shown(before)).toEqual(["SQUAT: 05-05 Ilka 1 80x5"]);
  const behind = [
    ["", first, "Squat kg", "Squat reps", "Bench kg", "Bench reps"],
    ["Bram", "", 60, 5, 30, 8],
  ];
  expect(shown(behind, "Gym")).toEqual([
    "Squat: 05-05 Bram work 60x5",
    "Bench: 05-05 Bram work 30x8",
  ]);
  expect([problems(read(behind, "Gym")), notes(read(behind, "Gym"))]).toEqual([[], []]);
});

test("under the first blank heading left of the loads stand lifts, kinds and numbers of sets, and no notes", () => {
  const cells = [
    ["Date", "", "kg", "reps"],
    [first, "Squat", 80, 5],
    ["", "wu", 40, 5],
    ["", 1, 80, 5],
    ["", "Bench", 40, 8],
  ];
  expect(shown(cells)).toEqual([
    "Squat: 05-05 Ilka work 80x5",
    "Squat: 05-05 Ilka warm-up 40x5",
    "Squat: 05-05 Ilka 1 80x5",
    "Bench: 05-05 Ilka work 40x8",
  ]);
  expect([problems(read(cells)), notes(read(cells))]).toEqual([[], []]);
});

test.each([
  ["under a heading of another meaning", ["Date", "Helper", "kg", "reps"], [first, "Anna", 80, 5]],
  ["right of the loads", ["Date", "kg", "", "reps"], [first, 80, "Anna", 5]],
])("words %s are a note and no lift", (_, headings, row) => {
  const cells = [["Squat", "", "", ""], headings, row];
  expect(shown(cells)).toEqual(["squat: 05-05 Ilka work 80x5"]);
  expect(notes(read(cells))).toEqual([expect.stringMatching(/^[BC]3 Ilka: Anna$/)]);
});

test.each([
  ["the day first", ["Date", "Athlete"], [first, "Bram"]],
  ["the name first", ["Athlete", "Date"], ["Bram", first]],
])("a row of name and day alone holds for the sets below and is no set: %s", (_, who, bram) => {
  const cells = [
    [...who, "Note", "SQUAT", "kg", "reps"],
    [...bram, "", "", "", ""],
    ["", "", "", 1, 80, 5],
    ["", "", "", 2, 80, 5],
    [...bram.map((one) => (one === first ? new Date(2026, 4, 7) : one)), "tired", "", "", ""],
    ["", "", "", 1, 82.5, 5],
  ];
  expect(shown(cells, "Gym")).toEqual([
    "SQUAT: 05-05 Bram 1 80x5",
    "SQUAT: 05-05 Bram 2 80x5",
    "SQUAT: 05-07 Bram 1 82.5x5",
  ]);
  const sets = read(cells, "Gym");
  expect([problems(sets), notes(sets), counts(sets)]).toEqual([
    [],
    ["C5 Bram: tired"],
    [5, 0, 0, 1],
  ]);
  const jumps = read(cells, "Gym", "Jumps");
  expect([jumps.records, notes(jumps)]).toEqual([[], []]);
});

test("a gym beside a day alone in its column is where the sets below were done", () => {
  const cells = [
    ["Date", "Squat kg", "Squat reps", "Bench kg", "Bench reps"],
    [first, "school hall", "", "", ""],
    ["", 80, 5, 40, 8],
    [new Date(2026, 4, 7), "", "", "", ""],
    ["", 82.5, 5, 40, 8],
  ];
  const { records } = read(cells);
  expect(records.map((set) => "gym" in set && set.gym)).toEqual([
    "school hall",
    "school hall",
    "",
    "",
  ]);
});

test("rows without a column of loads or labels are told at their first cell", () => {
  const cells = [
    ["5 May", ""],
    ["reps", "m/s"],
    [5, 0.6],
  ];
  expect(problems(read(cells))).toEqual(["A3 row-unread: 5"]);
});

test.each([
  ["one lift", ["SQUAT", "kg", "reps"], [1, 80, 5]],
  ["lifts side by side", ["Squat kg", "Squat reps", "Bench kg", "Bench reps"], [80, 5, 40, 8]],
])(
  "words without a heading in a row with nothing lifted are the day's note: %s",
  (_, headings, figures) => {
    const cells = [
      ["Date", "Athlete", ...headings, ""],
      [first, "Bram", ...headings.map(() => ""), "felt sick"],
      [first, "Cleo", ...figures, ""],
    ];
    const sets = read(cells, "Gym");
    expect(new Set(sets.records.map(({ athlete }) => athlete))).toEqual(new Set(["Cleo"]));
    expect([problems(sets), notes(sets)]).toEqual([
      [],
      [expect.stringMatching(/^[FG]2 Bram: felt sick$/)],
    ]);
  },
);

test("a day alone over rows that begin with a name starts their session and is no set of the name above", () => {
  const cells = [
    ["Date", "Athlete", "SQUAT", "kg", "reps"],
    [first, "Bram", 1, 80, 5],
    [new Date(2026, 4, 7), "", "", "", ""],
    ["", "Cleo", 1, 60, 5],
  ];
  const sets = read(cells, "Gym");
  expect(sets.records.map((set) => "exercise" in set && shortSet(set))).toEqual([
    "05-05 Bram 1 80x5",
    "05-07 Cleo 1 60x5",
  ]);
  expect(problems(sets)).toEqual([]);
});

test("single speeds alone are a set at the load above, two words alone are none", () => {
  const cells = [
    ["5 May", "SQUAT", "kg", "r1", "r2", "Note", ""],
    ["", 1, 80, 0.62, 0.6, "", ""],
    ["", "", "", 0.6, 0.58, "", ""],
    ["", "", "", "", "", "stopped", "knee"],
  ];
  expect(shown(cells)).toEqual([
    "SQUAT: 05-05 Ilka 1 80x? 0.62 0.6",
    "SQUAT: 05-05 Ilka work 80x? 0.6 0.58",
  ]);
  expect(notes(read(cells))).toEqual(["G4 Ilka: knee", "F4 Ilka: stopped"]);
});
