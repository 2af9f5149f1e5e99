import { findTables } from "../../../src/rows/find-tables";
import { tablesBeside } from "../../../src/rows/layout/tables-beside";
import { understandTable } from "../../../src/rows/read-table";
import { counts, problems, shortJump, shortSet, today } from "./short";

// Two tables in one tab, side by side; athletes and figures are invented.

const day = new Date(2026, 4, 5);
const later = new Date(2026, 4, 12);
const setsAndJumps = [
  ["Gym", "", "", "", "", "Jumps", "", "", ""],
  ["Date", "Athlete", "Lift", "kg", "", "Date", "Athlete", "Test", "cm"],
  [day, "Ilka", "Squat", 80, "", day, "Bram", "CMJ", 32],
  [later, "Ilka", "Squat", 82.5, "", "", "", "", ""],
];

test("sets and jumps side by side are two tables, each with its own days and names", () => {
  const found = findTables([{ name: "Tuesday", cells: setsAndJumps }], { today });
  expect(found.map(({ table, sureness }) => [table, sureness >= 0.6])).toEqual([
    ["Sets", true],
    ["Jumps", true],
  ]);
  const sets = understandTable("Sets", setsAndJumps, { today });
  expect(sets.reading.records.map(shortSet)).toEqual([
    "05-05 Ilka work 80x?",
    "05-12 Ilka work 82.5x?",
  ]);
  const jumps = understandTable("Jumps", setsAndJumps, { today });
  expect(jumps.reading.records.map(shortJump)).toEqual(["05-05 Bram 32 cm"]);
  expect([...sets.questions, ...jumps.questions]).toEqual([]);
});

const twoLifts = [
  ["Squat", "", "", "", "", "Deadlift", "", "", ""],
  ["Date", "Athlete", "kg", "m/s", "", "Date", "Athlete", "kg", "m/s"],
  [day, "Ilka", 80, 0.62, "", later, "Bram", 100, "fast"],
  ["", "", "", "", "", later, "Ilka", 110, 0.5],
];

test("two tables of sets are one answer: their rows together, every cell at its place, every row counted once", () => {
  const { reading } = understandTable("Sets", twoLifts, { today });
  expect(reading.records.map((set) => `${set.row} ${set.exercise} ${shortSet(set)}`)).toEqual([
    "3 squat 05-05 Ilka work 80x? 0.62",
    "3 deadlift 05-12 Bram work 100x?",
    "4 deadlift 05-12 Ilka work 110x? 0.5",
  ]);
  expect(problems(reading)).toEqual(["I3 not-a-number: fast"]);
  expect(counts(reading)).toEqual([2, 0, 0, 2]);
  const [found, ...others] = findTables([{ name: "Tuesday", cells: twoLifts }], { today });
  expect([found!.table, found!.understanding.reading.records.length, others]).toEqual([
    "Sets",
    3,
    [],
  ]);
});

test("an answer about a column is of the table it stands in", () => {
  const cells = twoLifts.map((line) => line.map((cell) => (cell === "m/s" ? "speed?" : cell)));
  const answers = { columns: [{ column: 9, field: null }] };
  const { questions } = understandTable("Sets", cells, { today, answers });
  expect(questions.every(({ column }) => column <= 5)).toBe(true);
});

test("a day alone above both is the day of both, a lift's title only that of its own", () => {
  const cells = [
    ["5 May 2026", "", "", "", ""],
    ["Athlete", "Squat", "", "Athlete", "Squat"],
    ["Ilka", "80x5", "", "Bram", "60x5"],
  ];
  expect(tablesBeside(cells).map((part) => part.cells[0]![0])).toEqual([
    "5 May 2026",
    "5 May 2026",
  ]);
  for (const [title, ofBoth] of [
    ["Squat", false],
    ["CMJ", false],
    ["River gym", true],
  ] as const) {
    const titled = [[title, "", "", "", ""], ...cells.slice(1)];
    expect(tablesBeside(titled).map((part) => part.cells[0]![0])).toEqual([
      title,
      ofBoth ? title : "",
    ]);
  }
  // Among the rows a day is still of both, a place of the table in which it stands.
  const days = [...cells, ["12 May 2026", "", "", "", ""]];
  expect(tablesBeside(days).map((part) => part.cells[3]![0])).toEqual([
    "12 May 2026",
    "12 May 2026",
  ]);
  const among = [...cells, ["River gym", "", "", "", ""]];
  expect(tablesBeside(among).map((part) => part.cells[3]![0])).toEqual(["River gym", ""]);
});

test("one table stays one: two different headings of days, or no empty column between", () => {
  const weekdays = [
    ["Date", "Day", "Athlete", "", "Lift", "kg"],
    [day, "Tue", "Ilka", "", "Squat", 80],
  ];
  expect(tablesBeside(weekdays)).toEqual([]);
  const notes = [
    ["Date", "Athlete", "kg", "Date", "Athlete"],
    [day, "Ilka", 80, later, "Bram"],
  ];
  expect(tablesBeside(notes)).toEqual([]);
});

test("two tables that are neither what was asked for are told as not recognised", () => {
  const { layout, reading } = understandTable("Plates", [
    ["Name", "Event", "", "Name", "Event"],
    ["Ilka", "800", "", "Kofi", "1500"],
  ]);
  expect(layout).toBe("not recognised");
  expect(reading.issues.map(({ code }) => code)).toEqual(["no-header"]);
});

test("grids of dates side by side keep their own names and lifts, whatever stands over the names", () => {
  for (const [left, right] of [
    ["Squat", "Squat"],
    ["Squat", "Deadlift"],
    ["Athlete", "Athlete"],
  ]) {
    const cells = [
      [left, "5 May", "12 May", "", right, "5 May", "12 May"],
      ["Ilka", "1x5 80", "1x5 85", "", "Bram", "1x5 100", "-"],
      ["Ada", "1x5 60", "", "", "Jo", "1x5 90", "1x5 95"],
    ];
    const { reading } = understandTable("Sets", cells, { today, title: "Squat" });
    expect(reading.records.map((set) => `${set.exercise} ${shortSet(set)}`.toLowerCase())).toEqual([
      "squat 05-05 ilka 1 80x5",
      "squat 05-12 ilka 1 85x5",
      `${right === "Deadlift" ? "deadlift" : "squat"} 05-05 bram 1 100x5`,
      "squat 05-05 ada 1 60x5",
      ...["05-05 jo 1 90x5", "05-12 jo 1 95x5"].map(
        (set) => `${right === "Deadlift" ? "deadlift" : "squat"} ${set}`,
      ),
    ]);
  }
});

test("beside a grid of athletes no grid of sums, and no list of names, is a grid of athletes", () => {
  const grid = (left: string, right: readonly unknown[], row: readonly unknown[]) =>
    tablesBeside([
      [left, "5 May", "12 May", "", ...right],
      ["Ilka", "1x5 80", "1x5 85", "", ...row],
    ]);
  expect(grid("Squat", ["Total", "5 May", "12 May"], [2, 400, 425])).toEqual([]);
  expect(grid("Squat", ["Total", "5 May", "12 May"], ["", 400, 425])).toEqual([]);
  const both = grid(
    "Squat",
    ["Bench", "5 May", "12 May", "", "Captains"],
    ["Bram", "1x5 60", "-", "", "Ada"],
  );
  expect(both.map(({ from, to }) => [from, to])).toEqual([
    [0, 4],
    [4, 9],
  ]);
});

test("names under dates are a rota, and no grids side by side", () => {
  const rota = [
    ["5 May", "12 May", "", "19 May", "26 May"],
    ["Ilka", "Bram", "", "Ada", "Jo"],
  ];
  expect(tablesBeside(rota)).toEqual([]);
});

test("what stands left of the first table is told with it", () => {
  const head = ["Date", "Athlete", "Lift", "kg"];
  const cells = [
    ["Gym 2", "", ...head, "", ...head],
    ["", "", day, "Ilka", "Squat", 80, "", later, "Bram", "Bench", 40],
  ];
  expect(tablesBeside(cells).map(({ from, cells: part }) => [from, part[0]![0]])).toEqual([
    [0, "Gym 2"],
    [7, ""],
  ]);
});

test("one grid with an empty column in it stays one", () => {
  const cells = [
    ["Squat", "5 May", "", "12 May"],
    ["Ilka", "1x5 80", "", "1x5 85"],
  ];
  expect(tablesBeside(cells)).toEqual([]);
});

test.each([
  ["two", [day, "Ilka", "Squat", 80, later, "Bram", "Bench", 40], ["05-05 Ilka", "05-12 Bram"]],
  [
    "three, one apart",
    [day, "Ilka", "Squat", 80, later, "Bram", "Bench", 40, "", later, "Ada", "Bench", 42],
    ["05-05 Ilka", "05-12 Bram", "05-12 Ada"],
  ],
])(
  "tables that begin with the same headings of day and name need no empty column between them: %s",
  (_, row, whose) => {
    const head = ["Date", "Athlete", "Lift", "kg"];
    const heads = row.length > 8 ? [...head, ...head, "", ...head] : [...head, ...head];
    const { reading, questions } = understandTable("Sets", [heads, row], { today });
    expect(reading.records.map((set) => shortSet(set).split(" work")[0])).toEqual(whose);
    expect([problems(reading), questions]).toEqual([[], []]);
  },
);

test.each([
  [
    ["Date", "Athlete", "Lift", "kg", "Date", "Speed"],
    [day, "Ilka", "Squat", 80, "odd", 0.6],
  ],
  [
    ["Athlete", "Date", "Lift", "Athlete", "kg", "Speed"],
    ["Ilka", day, "Squat", "odd", 80, 0.6],
  ],
  [
    ["Date", "Athlete", "Lift", "kg", "Date", "Athlete"],
    [day, "Ilka", "Squat", 80, "odd", "x"],
  ],
  [
    ["Date", "Athlete", "kg", "Date", "Day", "Speed"],
    [day, "Ilka", 80, "odd", "Tue", 0.6],
  ],
  [
    ["Date", "Lift", "kg", "Date", "reps", "Speed"],
    [day, "Squat", 80, "odd", 5, 0.6],
  ],
])("a column typed twice begins no table: %j", (heads, row) => {
  expect(tablesBeside([heads, row])).toEqual([]);
});

test("one lift each, side by side without an empty column, stay with their own athletes and days", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Date", "Athlete", "Squat kg", "Date", "Athlete", "Bench kg"],
      [day, "Ilka", 80, later, "Bram", 40],
    ],
    { today },
  );
  expect(reading.records.map((set) => `${set.exercise} ${shortSet(set)}`)).toEqual([
    "squat 05-05 Ilka 1 80x?",
    "bench 05-12 Bram 1 40x?",
  ]);
});

test("a day above each of two tables of lifts and loads is the day of its own rows", () => {
  const cells = [
    ["5 May 2026", "", "", "", "12 May 2026", "", ""],
    ["Athlete", "Lift", "kg", "", "Athlete", "Lift", "kg"],
    ["Ilka", "Squat", 80, "", "Bram", "Squat", 60],
    ["Ilka", "Bench", 40, "", "", "", ""],
  ];
  const { reading } = understandTable("Sets", cells, { today });
  expect(reading.records.map((set) => `${set.exercise} ${shortSet(set)}`)).toEqual([
    "Squat 05-05 Ilka work 80x?",
    "Squat 05-12 Bram work 60x?",
    "Bench 05-05 Ilka work 40x?",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("what stands behind the last of the tables is asked about", () => {
  const head = ["Date", "Athlete", "Lift", "kg"];
  const { reading, questions } = understandTable(
    "Sets",
    [
      [...head, "", ...head, "", "Best"],
      [day, "Ilka", "Squat", 80, "", later, "Bram", "Bench", 40, "", 90],
    ],
    { today },
  );
  expect(reading.records).toHaveLength(2);
  expect(questions.map(({ column, heading }) => [column, heading])).toEqual([[11, "Best"]]);
});

test("two dates of a row with an empty column between them are no grids side by side", () => {
  const { reading } = understandTable("Athletes", [
    ["Event", "Baseline to", "", "Notes", "Athlete", "Group", "Baseline from"],
    ["mile", later, "", "calm", "Ilka Brandmoor", "road", day],
    ["5 km", later, "", "back", "Bram Oster", "track", day],
  ]);
  expect(reading.records.map(({ athlete, event }) => [athlete, event])).toEqual([
    ["Ilka Brandmoor", "mile"],
    ["Bram Oster", "5 km"],
  ]);
  expect(reading.records.every(({ baselineTo }) => baselineTo !== null)).toBe(true);
});
