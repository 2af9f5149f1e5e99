import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortSet, today } from "./short";

// Lifts and sets side by side as coaches keep them; athletes, days and figures are invented.

const read = (cells: readonly (readonly unknown[])[], title = "Gym") =>
  understandTable("Sets", cells, { today, title });
const shown = (cells: readonly (readonly unknown[])[], title?: string) =>
  read(cells, title).reading.records.map((set) => `${set.exercise}: ${shortSet(set)}`);
const day = new Date(2026, 4, 5);

const bothLifts = [
  "Squat: 05-05 Ilka work 80x5 0.62",
  "Deadlift: 05-05 Ilka work 100x3 0.55",
  "Squat: 05-05 Bram work 60x5 0.66",
];

test("lifts named over merged cells each have their own sets; notes at the end are the row's", () => {
  const cells = [
    ["", "", "Squat", "", "", "Deadlift", "", "", ""],
    ["Date", "Athlete", "kg", "reps", "m/s", "kg", "reps", "m/s", "Notes"],
    [day, "Ilka", 80, 5, 0.62, 100, 3, 0.55, "calm"],
    ["", "Bram", 60, 5, 0.66, "", "", "", "back sore"],
  ];
  expect(shown(cells)).toEqual(bothLifts);
  const { reading, questions } = read(cells);
  expect(reading.records.map(({ note }) => note)).toEqual(["calm", "calm", "back sore"]);
  expect([problems(reading), questions, counts(reading)]).toEqual([[], [], [2, 0, 0, 2]]);
  const [found, ...others] = findTables([{ name: "Gym", cells }], { today });
  expect([found!.table, found!.sureness >= 0.6, others]).toEqual(["Sets", true, []]);
});

test("in a tab of one athlete a day alone in its column begins the sets under it", () => {
  const cells = [
    ["Date", "Squat kg", "Squat reps", "Deadlift kg", "Deadlift reps"],
    [day, "", "", "", ""],
    ["", 80, 5, 100, 3],
    [new Date(2026, 4, 7), "", "", "", ""],
    ["", 82.5, 5, "", ""],
  ];
  expect(shown(cells, "Ilka Brandmoor")).toEqual([
    "Squat: 05-05 Ilka Brandmoor work 80x5",
    "Deadlift: 05-05 Ilka Brandmoor work 100x3",
    "Squat: 05-07 Ilka Brandmoor work 82.5x5",
  ]);
});

test("lifts named in each heading are told apart from their figures", () => {
  const cells = [
    [
      "Date",
      "Athlete",
      "Squat kg",
      "Squat reps",
      "Squat mean m/s",
      "Deadlift (kg)",
      "Deadlift reps",
      "Deadlift best m/s",
    ],
    [day, "Ilka", 80, 5, 0.62, 100, 3, 0.55],
    [day, "Bram", 60, 5, 0.66, "", "", ""],
  ];
  expect(shown(cells)).toEqual(bothLifts);
  expect(read(cells).reading.records.map(({ setSpeedIs }) => setSpeedIs)).toEqual([
    "mean of reps",
    "best rep",
    "mean of reps",
  ]);
  expect(findTables([{ name: "Gym", cells }], { today }).map(({ table }) => table)).toEqual([
    "Sets",
  ]);
});

test.each([
  ["above the figures", (date: string) => [date, ""]],
  ["among them", (date: string) => ["", date]],
])(
  "lifts beside a day in the corner are headings, nobody's notes; the days of the corners settle one another: %s",
  (_, corner) => {
    const block = (date: string, kg: number) => {
      const [above, among] = corner(date);
      return [
        [above, "Home squat", "", "Deadlift (bar 15)", ""],
        [among, "kg", "reps", "kg", "reps"],
        ["Ilka", kg, 5, 100, 3],
        ["Bram", kg, 5, 100, 3],
      ];
    };
    const both = [...block("13/5/2026", 80), ["", "", "", "", ""], ...block("5/6/2026", 85)];
    const { reading } = read(both);
    const squats = reading.records.filter(({ loadKg }) => loadKg !== 100);
    expect(squats.map((set) => `${shortSet(set)} ${set.gym}`)).toEqual([
      "05-13 Ilka work 80x5 ",
      "05-13 Bram work 80x5 ",
      "06-05 Ilka work 85x5 ",
      "06-05 Bram work 85x5 ",
    ]);
    expect([problems(reading), notes(reading)]).toEqual([[], []]);
  },
);

test("a block a day: the day may stand above, in the corner, or among the headings", () => {
  const lifts = ["Squat", "", "", "Deadlift", "", ""];
  const figures = ["kg", "reps", "m/s", "kg", "reps", "m/s"];
  const rows = [
    ["Ilka", 80, 5, 0.62, 100, 3, 0.55],
    ["Bram", 60, 5, 0.66, "", "", ""],
  ];
  const blank = ["", "", "", "", "", "", ""];
  const above = [
    ["Tuesday 5 May", "", "", "", "", "", ""],
    ["", ...lifts],
    ["Athlete", ...figures],
    ...rows,
  ];
  const corner = [[day, ...lifts], ["", ...figures], ...rows];
  const among = [["", ...lifts], ["Tue 5 May", ...figures], ...rows];
  for (const block of [above, corner, among]) {
    const later = block.map((line) =>
      line.map((cell) => (String(cell).includes("5 May") ? "Tue 12 May" : cell)),
    );
    const second = later.map((line) =>
      line.map((cell) => (cell === day ? new Date(2026, 4, 12) : cell)),
    );
    expect(shown([...block, blank, ...second])).toEqual([
      ...bothLifts,
      ...bothLifts.map((set) => set.replace("05-05", "05-12")),
    ]);
  }
});

const threeSets = ["1 80x5 0.62", "2 80x5 0.6", "3 75x4 0.57"].map(
  (set) => `Squat: 05-05 Ilka ${set}`,
);

test("sets side by side, numbered over merged cells, in each heading, or by kind", () => {
  const row = [day, "Ilka", "Squat", 80, 5, 0.62, 80, 5, 0.6, 75, 4, 0.57];
  const left = ["Date", "Athlete", "Lift"];
  const figures = ["kg", "reps", "m/s"];
  const merged = (...sets: unknown[]) => [
    ["", "", "", ...sets.flatMap((set) => [set, "", ""])],
    [...left, ...figures, ...figures, ...figures],
    row,
  ];
  expect(shown(merged("Set 1", "Set 2", "Set 3"))).toEqual(threeSets);
  expect(shown(merged("1st set", "2nd set", "3rd set"))).toEqual(threeSets);
  expect(shown(merged(1, 2, 3))).toEqual(threeSets);
  expect(shown(merged("Warm-up", "Set 1", "Set 2"))).toEqual([
    "Squat: 05-05 Ilka warm-up 80x5 0.62",
    "Squat: 05-05 Ilka 1 80x5 0.6",
    "Squat: 05-05 Ilka 2 75x4 0.57",
  ]);
  const inEach = [1, 2, 3].flatMap((set) => [`Set ${set} kg`, `S${set} reps`, `Set ${set}: m/s`]);
  expect(shown([[...left, ...inEach], row])).toEqual(threeSets);
  const after = [1, 2, 3].flatMap((set) => [`kg ${set}`, `reps ${set}`, `speed ${set}`]);
  expect(shown([[...left, ...after], row])).toEqual(threeSets);
});

test("the load once and a column a set: what stands there is told by its values or the heading above", () => {
  const left = ["Date", "Athlete", "Lift", "Sets", "Reps", "kg"];
  const row = [day, "Ilka", "Squat", 3, 5, 80, 0.62, 0.6, 0.57, 0.62, 0.597];
  const expected = ["1 80x5 0.62", "2 80x5 0.6", "3 80x5 0.57"].map(
    (set) => `Squat: 05-05 Ilka ${set}`,
  );
  const sets = ["Set 1", "Set 2", "Set 3", "Best", "Mean m/s"];
  expect(shown([[...left, ...sets], row])).toEqual(expected);
  const above = ["", "", "", "", "", "", "Speed (m/s)", "", "", "", ""];
  expect(shown([above, [...left, ...sets], row])).toEqual(expected);
  // The best and the mean say nothing that the sets do not; no question is asked of them.
  expect(read([[...left, ...sets], row]).questions).toEqual([]);
});

test("load and speed of each set in one cell, and the best of them under a heading of its own", () => {
  const pairs = [
    ["Date", "Athlete", "Lift", "Set 1 (kg/m/s)", "Set 2 (kg/m/s)"],
    [day, "Ilka", "Squat", "80/0.62", "82,5/0,6"],
  ];
  const expected = ["Squat: 05-05 Ilka 1 80x? 0.62", "Squat: 05-05 Ilka 2 82.5x? 0.6"];
  expect(shown(pairs)).toEqual(expected);
  const best = [
    ["", "", "", "Set 1", "", "Set 2", "", "Best"],
    ["Date", "Athlete", "Lift", "kg", "m/s", "kg", "m/s", "m/s"],
    [day, "Ilka", "Squat", 80, 0.62, 82.5, 0.6, 0.62],
  ];
  expect(shown(best)).toEqual(expected);
  expect(read(best).questions).toEqual([]);
});

test("lifts over sets over figures, and the two sides of one lift", () => {
  const cells = [
    ["", "", "Squat", "", "", "", "Deadlift", ""],
    ["", "", "Set 1", "", "Set 2", "", "Set 1", ""],
    ["Date", "Athlete", "kg", "m/s", "kg", "m/s", "kg", "m/s"],
    [day, "Ilka", 80, 0.62, 80, 0.6, 100, 0.5],
  ];
  expect(shown(cells)).toEqual([
    "Squat: 05-05 Ilka 1 80x? 0.62",
    "Squat: 05-05 Ilka 2 80x? 0.6",
    "Deadlift: 05-05 Ilka 1 100x? 0.5",
  ]);
  const sides = [
    ["", "", "", "Left", "", "Right", ""],
    ["Date", "Athlete", "Lift", "kg", "reps", "kg", "reps"],
    [day, "Ilka", "Split squat", 20, 8, 20, 7],
  ];
  expect(shown(sides)).toEqual([
    "Split squat Left: 05-05 Ilka work 20x8",
    "Split squat Right: 05-05 Ilka work 20x7",
  ]);
});

test("words where figures would stand are a note, and one speed beside several sets is asked about", () => {
  const cells = [
    ["Date", "Athlete", "Lift", "Set 1 kg", "Set 2 kg", "Best m/s", "Notes"],
    [day, "Ilka", "Squat", 80, 85, 0.62, ""],
    [day, "Bram", "Squat", "sore", "", "", ""],
    [day, "Ada", "Squat", "", "", "", "away"],
  ];
  const { reading, questions } = read(cells);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 80x?", "05-05 Ilka 2 85x?"]);
  expect(notes(reading)).toEqual(["D3 Bram: sore", "G4 Ada: away"]);
  expect(problems(reading)).toEqual(["F1 heading-unknown: Best m/s"]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Best m/s"]);
});

test("what is planned is no lift, nor is body mass among lifts", () => {
  const planned = [
    ["", "", "Plan", "", "Done", ""],
    ["Date", "Athlete", "kg", "reps", "kg", "reps"],
    [day, "Ilka", 80, 5, 82.5, 5],
  ];
  expect(read(planned).reading.records).toEqual([]);
  const mass = [
    ["Date", "Athlete", "Body mass kg", "Squat kg", "Squat m/s", "Deadlift kg", "Deadlift m/s"],
    [day, "Ilka", 61, 80, 0.62, 100, 0.55],
  ];
  expect(shown(mass)).toEqual([
    "Squat: 05-05 Ilka work 80x? 0.62",
    "Deadlift: 05-05 Ilka work 100x? 0.55",
  ]);
  expect(problems(read(mass).reading)).toEqual(["C1 heading-unknown: Body mass kg"]);
});

test("names under no heading are no lifts, however the block is headed", () => {
  const cells = [
    ["5 May 2026", "", "", ""],
    ["Athlete", "kg", "reps", "m/s"],
    ["Ilka", 80, 5, 0.62],
  ];
  const { reading, tabQuestions } = read(cells);
  expect(reading.records).toEqual([]);
  expect(tabQuestions.map(({ about }) => about)).toEqual(["exercise"]);
});

test("words beside several sets of one row are said once", () => {
  const { reading } = read([
    ["Date", "Athlete", "Squat kg", "Deadlift kg", "Where it was cold"],
    [day, "Ilka", 80, 100, "hands"],
  ]);
  expect(notes(reading)).toEqual(["E2 Ilka: hands"]);
});

test("athletes side by side each have their own sets, of the row's lift or the one in the corner", () => {
  const names = ["", "", "Ilka", "", "Bram", ""];
  const heads = ["Date", "Lift", "kg", "m/s", "kg", "m/s"];
  expect(shown([names, heads, [day, "Squat", 80, 0.62, 60, 0.66]])).toEqual([
    "Squat: 05-05 Ilka work 80x? 0.62",
    "Squat: 05-05 Bram work 60x? 0.66",
  ]);
  const corner = [
    ["Squat", "", ...names.slice(2)],
    ["Date", "Reps", ...heads.slice(2)],
    [day, 5, 80, 0.62, 60, 0.66],
  ];
  expect(shown(corner)).toEqual([
    "squat: 05-05 Ilka work 80x5 0.62",
    "squat: 05-05 Bram work 60x5 0.66",
  ]);
});

test("what stands over figures is no athlete where names stand down the rows, and when it is a word of the trade", () => {
  for (const [above, ...rows] of [
    [
      ["", "", "Alpha", "", "Omega", ""],
      [day, "Ilka Brandmoor", 80, 0.62, 60, 0.66],
    ],
    [
      ["", "", "Heavy", "", "Light", ""],
      [day, "Squat", 80, 0.62, 60, 0.66],
    ],
    [
      ["", "", "Mon", "", "Thu", ""],
      [day, "Squat", 80, 0.62, 60, 0.66],
    ],
  ])
    expect(
      read([above, ["Date", "", "kg", "m/s", "kg", "m/s"], ...rows] as unknown[][]).reading.records,
    ).toEqual([]);
});

test("lifts in other languages over figures, days and names known by what stands in their columns", () => {
  const cells = [
    ["", "", "Agachamento", "", "Peso morto", ""],
    ["Data", "Atleta", "kg", "m/s", "kg", "m/s"],
    [day, "Ilka", 80, "0,62", 100, "0,5"],
  ];
  expect(shown(cells)).toEqual([
    "Agachamento: 05-05 Ilka work 80x? 0.62",
    "Peso morto: 05-05 Ilka work 100x? 0.5",
  ]);
});

test("exertion beside each set is no repetition, a lift's warm-up is a warm-up, and sets may be numbered alone", () => {
  const heads = ["Date", "Athlete", "Lift"];
  const rated = [
    [...heads, "Set 1 kg", "Set 1 RPE", "Set 2 kg", "Set 2 RPE"],
    [day, "Ilka", "Squat", 80, 7, 85, 8],
  ];
  expect(shown(rated)).toEqual(["Squat: 05-05 Ilka 1 80x?", "Squat: 05-05 Ilka 2 85x?"]);
  // Ten less the effort is what was left.
  expect(read(rated).questions).toEqual([]);
  expect(read(rated).reading.records.map((set) => set.repsInReserve)).toEqual([3, 2]);
  const warm = [
    ["Date", "Athlete", "Squat warm-up kg", "Squat kg", "Bench kg"],
    [day, "Ilka", 50, 80, 40],
  ];
  expect(shown(warm)).toEqual([
    "Squat: 05-05 Ilka warm-up 50x?",
    "Squat: 05-05 Ilka work 80x?",
    "Bench: 05-05 Ilka work 40x?",
  ]);
  const numbered = [
    ["", "", "", "", "Sets", ""],
    [...heads, "kg", 1, 2],
    [day, "Ilka", "Squat", 80, 0.62, 0.6],
  ];
  expect(shown(numbered)).toEqual([
    "Squat: 05-05 Ilka 1 80x? 0.62",
    "Squat: 05-05 Ilka 2 80x? 0.6",
  ]);
});

test.each([
  ["best", "best rep"],
  ["mean", "mean of reps"],
  ["Beste", "best rep"],
])("“Squat %s m/s” is the %s", (word, is) => {
  const { reading, questions } = understandTable("Sets", [
    ["Date", "Name", "Squat kg", `Squat ${word} m/s`, "Deadlift kg", `Deadlift ${word} m/s`],
    [new Date(2026, 4, 4), "Ilka", 80, 0.72, 100, 0.6],
  ]);
  expect(reading.records.map(({ setSpeed, setSpeedIs }) => [setSpeed, setSpeedIs])).toEqual([
    [0.72, is],
    [0.6, is],
  ]);
  expect(questions).toEqual([]);
});

test("“Squat max m/s” is a peak or the best mean: asked about, not read", () => {
  const { reading, questions } = understandTable("Sets", [
    ["Date", "Name", "Squat kg", "Squat max m/s", "Deadlift kg", "Deadlift max m/s"],
    [new Date(2026, 4, 4), "Ilka", 80, 0.72, 100, 0.6],
  ]);
  expect(reading.records.map(({ loadKg, setSpeed }) => [loadKg, setSpeed])).toEqual([
    [80, null],
    [100, null],
  ]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Squat max m/s", "Deadlift max m/s"]);
});

test("the mean speed of each set is that set's, not one of all of them", () => {
  const heads = ["kg set 1", "mean speed set 1", "kg set 2", "mean speed set 2"];
  const cells = [
    ["Date", "Athlete", "Exercise", ...heads],
    [day, "Ilka", "squat", 80, 0.62, 82.5, 0.6],
  ];
  expect(shown(cells)).toEqual(["squat: 05-05 Ilka 1 80x? 0.62", "squat: 05-05 Ilka 2 82.5x? 0.6"]);
});
