import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortSet, today } from "./short";

// Headings over lifts and sets side by side; athletes, days and figures are invented.

const day = new Date(2026, 4, 5);
const read = (cells: readonly (readonly unknown[])[]) =>
  understandTable("Sets", cells, { today, title: "Gym" });

/** Each set with what it was noted with, then every cell told and every heading asked about. */
const shown = (cells: readonly (readonly unknown[])[]) => {
  const { reading, questions } = read(cells);
  return [
    ...reading.records.map((set) =>
      [`${set.exercise}: ${shortSet(set).replace("05-05 ", "")}`, set.note]
        .filter(Boolean)
        .join(" – "),
    ),
    ...problems(reading).filter((one) => !one.includes("heading-unknown")),
    ...notes(reading),
    ...questions.map(({ heading }) => `${heading}?`),
  ];
};

type Example = readonly [
  what: string,
  headings: readonly unknown[],
  cells: readonly unknown[],
  told: readonly string[],
];

const who = ["Date", "Athlete"];
const lifted = [...who, "Lift"];
const ilka = [day, "Ilka"];
const squatted = [...ilka, "Squat"];

test.each<Example>([
  [
    "the lift's name over its loads, its repetitions beside it",
    [...who, "Squat", "Squat reps", "Bench", "Bench reps"],
    [...ilka, 80, 5, 40, 8],
    ["Squat: Ilka work 80x5", "Bench: Ilka work 40x8"],
  ],
  [
    "the lift's name once, before its figures",
    [...who, "Squat", "reps", "Bench", "reps"],
    [...ilka, 80, 5, 40, 8],
    ["Squat: Ilka work 80x5", "Bench: Ilka work 40x8"],
  ],
  [
    "shorthand under the lift's name, speeds beside it",
    [...who, "Squat", "Squat speed", "Bench", "Bench speed"],
    [...ilka, "80x3", 0.6, "40x3", 0.5],
    ["Squat: Ilka 1 80x3 0.6", "Bench: Ilka 1 40x3 0.5"],
  ],
  [
    "one lift and its figures",
    [...who, "Squat", "reps", "m/s"],
    [...ilka, 80, 5, 0.6],
    ["Squat: Ilka work 80x5 0.6"],
  ],
  [
    "one lift in each heading",
    [...who, "Squat", "Squat reps", "Squat speed"],
    [...ilka, 80, 5, 0.6],
    ["Squat: Ilka work 80x5 0.6"],
  ],
  [
    "a lift without figures beside one that has some",
    [...who, "Squat", "Squat reps", "Bench"],
    [...ilka, 80, 5, 40],
    ["Squat: Ilka work 80x5", "Bench: Ilka work 40x?"],
  ],
  [
    "a lift's notes",
    [...who, "Squat", "Squat notes", "Bench", "Bench notes"],
    [...ilka, 80, "deep", 40, "2 spotters"],
    ["Squat: Ilka work 80x? – deep", "Bench: Ilka work 40x? – 2 spotters"],
  ],
  [
    "a lift spelled two ways",
    [...who, "Squat kg", "squat Reps", "Bench kg", "BENCH reps"],
    [...ilka, 80, 5, 40, 8],
    ["Squat: Ilka work 80x5", "Bench: Ilka work 40x8"],
  ],
  [
    "body weight alone",
    [...who, "Pull-ups", "Pull-ups reps", "Squat", "Squat reps"],
    [...ilka, "", 8, 80, 5],
    ["Pull-ups: Ilka work ?x8", "Squat: Ilka work 80x5"],
  ],
  [
    "sets counted under the lift's name",
    [...who, "Squat sets", "Squat", "Bench sets", "Bench"],
    [...ilka, 2, 80, 1, 40],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 80x?", "Bench: Ilka work 40x?"],
  ],
  [
    "repetitions behind both lifts, of which nobody knows whose they are",
    [...who, "Squat", "Bench", "reps", "reps"],
    [...ilka, 80, 40, 5, 4],
    ["squat: Ilka 1 80x?", "bench: Ilka 1 40x?", "reps?", "reps?"],
  ],
  [
    "repetitions before the lifts",
    [...who, "reps", "Squat", "Bench"],
    [...ilka, 5, 80, 40],
    ["squat: Ilka 1 80x?", "bench: Ilka 1 40x?", "reps?"],
  ],
  [
    "a lift without a load",
    [...who, "Squat kg", "Bench reps", "Deadlift kg"],
    [...ilka, 80, 5, 100],
    ["Squat: Ilka work 80x?", "Deadlift: Ilka work 100x?", "D2 row-unread: 5"],
  ],
  [
    "speeds numbered beside numbered loads",
    [...lifted, "kg 1", "v1", "kg 2", "v2"],
    [...squatted, 80, 0.62, 85, 0.58],
    ["Squat: Ilka 1 80x? 0.62", "Squat: Ilka 2 85x? 0.58"],
  ],
  [
    "a lift's speeds numbered beside its numbered loads",
    [...who, "Squat kg 1", "Squat v1", "Squat kg 2", "Squat v2"],
    [...ilka, 80, 0.62, 85, 0.58],
    ["Squat: Ilka 1 80x? 0.62", "Squat: Ilka 2 85x? 0.58"],
  ],
  [
    "speeds of repetitions beside numbered loads, of which nobody knows the set",
    [...lifted, "kg 1", "kg 2", "rep speed 1", "rep speed 2"],
    [...squatted, 80, 85, 0.62, 0.6],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "rep speed 1?", "rep speed 2?"],
  ],
  [
    "an athlete whose name ends as a unit does",
    ["Date", "Lift", "Kolb kg", "Kolb reps", "Ilka kg", "Ilka reps"],
    [day, "Squat", 60, 5, 80, 5],
    ["Squat: Kolb work 60x5", "Squat: Ilka work 80x5"],
  ],
  [
    "a lift's name that goes on behind a unit",
    [...who, "Squat (kg plates) set 1", "Squat (kg plates) set 2"],
    [...ilka, 80, 85],
    ["Squat kg plates: Ilka 1 80x?", "Squat kg plates: Ilka 2 85x?"],
  ],
  [
    "speeds numbered within each set",
    [...lifted, "Set 1 kg", "Set 1 v1", "Set 1 v2", "Set 2 kg", "Set 2 v1", "Set 2 v2"],
    [...squatted, 80, 0.62, 0.6, 85, 0.58, 0.57],
    ["Squat: Ilka 1 80x? 0.62 0.6", "Squat: Ilka 2 85x? 0.58 0.57"],
  ],
  [
    "a speed behind numbered loads, which is of none of them",
    [...who, "Squat kg 1", "Squat kg 2", "speed"],
    [...ilka, 80, 85, 0.6],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "speed?"],
  ],
  [
    "one speed more than sets, and a load that says of itself only that it is the heaviest",
    [...lifted, "Set 1 kg", "Set 1 m/s", "Set 2 kg", "Set 2 m/s", "m/s", "top load"],
    [...squatted, 80, 0.62, 85, 0.58, 0.6, 85],
    ["Squat: Ilka 1 80x? 0.62", "Squat: Ilka 2 85x? 0.58", "m/s?", "top load?"],
  ],
  [
    "one set alone",
    [...lifted, "Set 1 kg", "Set 1 reps"],
    [...squatted, 80, 5],
    ["Squat: Ilka 1 80x5"],
  ],
  [
    "the lift, its sets and how their cells are written",
    [...who, "Squat set 1 (kg/m/s)", "Squat (kg/m/s) set 2"],
    [...ilka, "80/0.62", "85/0.6"],
    ["Squat: Ilka 1 80x? 0.62", "Squat: Ilka 2 85x? 0.6"],
  ],
  [
    "how the cells are written, with spaces between",
    [...lifted, "Set 1 (kg / rep)", "Set 2 (kg / rep)"],
    [...squatted, "80x5", "85x5"],
    ["Squat: Ilka 1 80x5", "Squat: Ilka 2 85x5"],
  ],
  [
    "numbers of sets under the lift's name",
    [...who, "SQUAT", "kg", "reps"],
    [...ilka, 1, 80, 5],
    ["SQUAT: Ilka 1 80x5"],
  ],
  [
    "repetitions before a lift and behind each",
    [...who, "reps", "Squat", "reps", "Bench", "reps"],
    [...ilka, 3, 80, 5, 40, 8],
    ["squat: Ilka 1 80x?", "bench: Ilka 1 40x?", "reps?", "reps?", "reps?"],
  ],
  [
    "repetitions twice behind one lift",
    [...who, "Squat", "reps", "reps", "Bench", "reps"],
    [...ilka, 80, 5, 4, 40, 8],
    ["squat: Ilka 1 80x?", "bench: Ilka 1 40x?", "reps?", "reps?", "reps?"],
  ],
])("columns of lifts: %s", (_, headings, cells, told) => {
  expect(shown([headings, cells])).toEqual(told);
});

test.each<Example>([
  [
    "a target",
    [...who, "Squat target", "Squat", "Bench"],
    [...ilka, 90, 80, 40],
    ["squat: Ilka 1 80x?", "bench: Ilka 1 40x?", "Squat target?"],
  ],
  [
    "a plan in kilograms",
    [...who, "Squat plan kg", "Squat kg", "Bench kg"],
    [...ilka, 90, 80, 40],
    ["squat: Ilka 1 80x?", "bench: Ilka 1 40x?", "Squat plan kg?"],
  ],
  [
    "a share of the most",
    [...who, "Squat % of 1RM", "Squat kg"],
    [...ilka, 80, 90],
    ["squat: Ilka 1 90x?", "Squat % of 1RM?"],
  ],
  [
    "next week's load",
    [...who, "Squat next", "Squat kg"],
    [...ilka, 92, 90],
    ["squat: Ilka 1 90x?", "Squat next?"],
  ],
  [
    "how hard it was",
    [...who, "Squat", "Squat RPE", "Bench"],
    [...ilka, 80, 8, 40],
    ["Squat: Ilka work 80x?", "Bench: Ilka work 40x?"],
  ],
])("what was not lifted is no load: %s", (_, headings, cells, told) => {
  expect(shown([headings, cells])).toEqual(told);
});

test("two kinds of one lift stay two lifts", () => {
  expect(
    shown([
      [...who, "Pause squat", "Squat (kg)"],
      [...ilka, 60, 80],
    ]),
  ).toEqual(["pause squat: Ilka 1 60x?", "squat: Ilka 1 80x?"]);
});

test.each<Example>([
  [
    "loads and speeds numbered",
    [...lifted, "kg 1", "speed 1", "kg 2", "speed 2"],
    [...squatted, 80, 0.6, 85, 0.58],
    ["Squat: Ilka 1 80x? 0.6", "Squat: Ilka 2 85x? 0.58"],
  ],
  [
    "repetitions and speeds numbered, at one load",
    [...lifted, "kg", "reps 1", "speed 1", "reps 2", "speed 2"],
    [...squatted, 80, 5, 0.6, 4, 0.58],
    ["Squat: Ilka 1 80x5 0.6", "Squat: Ilka 2 80x4 0.58"],
  ],
  [
    "a number close behind the unit, past nine",
    [...lifted, "kg1", "kg2", "kg10"],
    [...squatted, 80, 85, 90],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "Squat: Ilka 10 90x?"],
  ],
  [
    "sets of several lifts",
    [...who, "Squat kg 1", "Squat kg 2", "Bench kg 1"],
    [...ilka, 80, 85, 40],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "Bench: Ilka 1 40x?"],
  ],
  [
    "sets and repetitions in one cell beside the load",
    [...who, "Squat sets x reps", "Squat kg", "Bench reps x sets", "Bench kg"],
    [...ilka, "2x5", 80, "3x1", 40],
    ["Squat: Ilka 1 80x5", "Squat: Ilka 2 80x5", "Bench: Ilka 1 40x3"],
  ],
  [
    "repetitions of sets told by their values",
    [...lifted, "kg", "Set 1", "Set 2"],
    [...squatted, 80, 5, 4],
    ["Squat: Ilka 1 80x5", "Squat: Ilka 2 80x4"],
  ],
  [
    "speeds of sets told by their values beside headed repetitions",
    [...lifted, "Set 1", "Set 1 reps", "Set 2", "Set 2 reps", "kg"],
    [...squatted, 0.6, 5, 0.58, 4, 80],
    ["Squat: Ilka 1 80x5 0.6", "Squat: Ilka 2 80x4 0.58"],
  ],
  [
    "loads of sets told by their values, an empty bar among them",
    [...lifted, "Set 1", "Set 2"],
    [...squatted, 20, 82.5],
    ["Squat: Ilka 1 20x?", "Squat: Ilka 2 82.5x?"],
  ],
  [
    "what may be repetitions or exertion, with repetitions headed",
    [...lifted, "kg", "reps", "Set 1", "Set 2"],
    [...squatted, 80, 5, 8, 9],
    ["Squat: Ilka work 80x5", "Set 1?", "Set 2?"],
  ],
  [
    "what is neither",
    [...lifted, "kg", "Set 1", "Set 2"],
    [...squatted, 40, 30, 25],
    ["Squat: Ilka work 40x?", "Set 1?", "Set 2?"],
  ],
  [
    "speeds of repetitions beside several sets, of none of them",
    [...lifted, "Set 1 kg", "Set 2 kg", "Rep 1", "Rep 2"],
    [...squatted, 80, 85, 0.6, 0.58],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "Rep 1?", "Rep 2?"],
  ],
  [
    "a load beside loads of the sets",
    [...lifted, "kg", "Set 1 kg", "Set 2 kg"],
    [...squatted, 90, 80, 85],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "kg?"],
  ],
  [
    "one reserve for several sets",
    [...lifted, "Set 1 kg", "Set 2 kg", "RIR"],
    [...squatted, 80, 85, 2],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "RIR?"],
  ],
  [
    "notes of some sets",
    [...lifted, "Set 1 kg", "Set 1 note", "Set 2 kg", "Set 3 kg", "Set 3 note"],
    [...squatted, 80, "calm", 85, 90, "slow"],
    ["Squat: Ilka 1 80x? – calm", "Squat: Ilka 2 85x?", "Squat: Ilka 3 90x? – slow"],
  ],
  [
    "how many sets, their sum and their mean say no more",
    [...lifted, "Sets", "Set 1 kg", "Set 2 kg", "Total kg", "Mean kg"],
    [...squatted, 2, 80, 85, 165, 82.5],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?"],
  ],
  [
    "a best beside a warm-up alone is a load of its own",
    [...who, "Squat warm-up kg", "Squat best kg", "Bench warm-up kg"],
    [...ilka, 60, 100, 30],
    ["Squat: Ilka warm-up 60x?", "Bench: Ilka warm-up 30x?", "Squat best kg?"],
  ],
  [
    "a warm-up of no lift",
    [...who, "Warm-up kg", "Squat kg", "Bench kg"],
    [...ilka, 50, 80, 40],
    ["Squat: Ilka work 80x?", "Bench: Ilka work 40x?", "A2 exercise-missing: 2026-05-05"],
  ],
  [
    "an empty column between the lifts",
    [...who, "Squat kg", "Squat m/s", "", "Bench kg", "Bench m/s"],
    [...ilka, 80, 0.6, "", 40, 0.5],
    ["Squat: Ilka work 80x? 0.6", "Bench: Ilka work 40x? 0.5"],
  ],
  [
    "a day typed later beside the day",
    ["Date", "", "Athlete", "Squat kg", "Bench kg"],
    [day, new Date(2026, 4, 7), "Ilka", 80, 40],
    ["Squat: Ilka work 80x?", "Bench: Ilka work 40x?", "?"],
  ],
  [
    "two columns that may be the day",
    ["", "", "Athlete", "Squat kg", "Bench kg"],
    [day, new Date(2026, 4, 7), "Ilka", 80, 40],
    ["A2 day-missing: 2026-05-05"],
  ],
  [
    "plates on a bar, not the number of a set",
    [...lifted, "kg 15", "kg 20"],
    [...squatted, 0.9, 0.8],
    ["A1 column-missing: ", "kg 15?", "kg 20?"],
  ],
  [
    "numbers that are no loads",
    [...lifted, "Set 1", "Set 2"],
    [...squatted, 5, 4],
    ["A1 column-missing: ", "Set 1?", "Set 2?"],
  ],
  [
    "metres",
    [...lifted, "Set 1", "Set 2"],
    [...ilka, "Row", 500, 500],
    ["A1 column-missing: ", "Set 1?", "Set 2?"],
  ],
  [
    "how many repetitions in a set's heading",
    [...lifted, "Set 1 (5)", "Set 2 (5)"],
    [...squatted, 80, 85],
    ["A1 column-missing: ", "Set 1 (5)?", "Set 2 (5)?"],
  ],
])("columns of sets: %s", (_, headings, cells, told) => {
  expect(shown([headings, cells])).toEqual(told);
});

type Tab = readonly [what: string, tab: readonly (readonly unknown[])[], told: readonly string[]];

test.each<Tab>([
  [
    "speeds of each lift's repetitions",
    [
      ["", "", "Squat", "", "", "Bench", ""],
      [...who, "kg", "Rep 1", "Rep 2", "kg", "Rep 1"],
      [...ilka, 80, 0.6, 0.59, 40, 0.5],
    ],
    ["Squat: Ilka work 80x? 0.6 0.59", "Bench: Ilka work 40x? 0.5"],
  ],
  [
    "“Speed” over 1, 2, 3 under each lift",
    [
      ["", "", "Squat", "", "", "Bench", ""],
      ["", "", "", "Speed", "", "", "Speed"],
      [...who, "kg", 1, 2, "kg", 1],
      [...ilka, 80, 0.6, 0.59, 40, 0.5],
    ],
    ["Squat: Ilka work 80x? 0.6 0.59", "Bench: Ilka work 40x? 0.5"],
  ],
  [
    "speeds of each set's repetitions",
    [
      ["", "", "", "Set 1", "", "Set 2", ""],
      [...lifted, "kg", "Rep 1", "kg", "Rep 1"],
      [...squatted, 80, 0.6, 85, 0.55],
    ],
    ["Squat: Ilka 1 80x? 0.6", "Squat: Ilka 2 85x? 0.55"],
  ],
  [
    "numbers typed as text over the sets",
    [
      ["", "", "", "1", "", " 2 ", ""],
      [...lifted, "kg", "m/s", "kg", "m/s"],
      [...squatted, 80, 0.6, 85, 0.55],
    ],
    ["Squat: Ilka 1 80x? 0.6", "Squat: Ilka 2 85x? 0.55"],
  ],
  [
    "a row of headings that ends before the columns do",
    [
      ["", "", "Squat", "", "Bench"],
      [...who, "kg", "reps", "kg", "reps"],
      [...ilka, 80, 5, 40, 8],
    ],
    ["Squat: Ilka work 80x5", "Bench: Ilka work 40x8"],
  ],
  [
    "a title over all sets of the row's lift",
    [
      ["", "", "", "Main lift", "", "", ""],
      [...lifted, "Set 1 kg", "Set 1 m/s", "Set 2 kg", "Set 2 m/s"],
      [...squatted, 80, 0.6, 85, 0.55],
    ],
    ["Squat: Ilka 1 80x? 0.6", "Squat: Ilka 2 85x? 0.55"],
  ],
  [
    "a title that is the lift",
    [
      ["", "", "Squat", "", "", ""],
      [...who, "Set 1 kg", "Set 1 m/s", "Set 2 kg", "Set 2 m/s"],
      [...ilka, 80, 0.6, 85, 0.55],
    ],
    ["Squat: Ilka 1 80x? 0.6", "Squat: Ilka 2 85x? 0.55"],
  ],
  [
    "a title that is a lift beside the rows' own",
    [
      ["", "", "", "Squat", ""],
      [...lifted, "Set 1 kg", "Set 2 kg"],
      [...ilka, "Bench", 40, 45],
    ],
    ["Bench: Ilka 1 40x?", "Bench: Ilka 2 45x?"],
  ],
  [
    "a title over sets of no lift",
    [
      ["", "", "Week 3", ""],
      [...who, "Set 1 kg", "Set 2 kg"],
      [...ilka, 80, 85],
    ],
    ["A3 exercise-missing: 2026-05-05"],
  ],
  [
    "a lift that is not known by name, with two figures",
    [
      ["", "", "Squat", "", "Zercher hold", ""],
      [...who, "kg", "reps", "kg", "reps"],
      [...ilka, 80, 5, 60, 3],
    ],
    ["Squat: Ilka work 80x5", "Zercher hold: Ilka work 60x3"],
  ],
  [
    "names over figures of named athletes",
    [
      ["", "", "Alpha", "", "Omega", ""],
      [...who, "kg", "reps", "kg", "reps"],
      [...ilka, 90, 5, 80, 5],
    ],
    ["A2 column-missing: ", "kg?", "reps?"],
  ],
  [
    "a name and another word",
    [
      ["", "", "Ilka", "", "Test", ""],
      ["Date", "Lift", "kg", "reps", "kg", "reps"],
      [day, "Squat", 90, 5, 80, 5],
    ],
    ["A2 column-missing: ", "kg?", "reps?"],
  ],
  [
    "words that are no names",
    [
      ["", "", "Phase 1", "", "Phase 2", ""],
      ["Date", "Lift", "kg", "reps", "kg", "reps"],
      [day, "Squat", 90, 5, 80, 5],
    ],
    ["A2 column-missing: ", "kg?", "reps?"],
  ],
  [
    "the headings again below shorthand with words",
    [
      [...who, "Squat kg", "Bench kg"],
      [...ilka, "80x5 slow", "40x5 good"],
      [...who, "Squat kg", "Bench kg"],
      [...ilka, "85x5", "42x5"],
    ],
    [
      "Squat: Ilka 1 80x5 – slow",
      "Bench: Ilka 1 40x5 – good",
      "Squat: Ilka 2 85x5",
      "Bench: Ilka 2 42x5",
    ],
  ],
  [
    "the headings again below light loads",
    [
      [...who, "Squat kg", "Squat reps", "Bench kg", "Bench reps"],
      [...ilka, 12, 5, 14, 5],
      [...who, "Squat kg", "Squat reps", "Bench kg", "Bench reps"],
      [...ilka, 13, 5, 15, 5],
    ],
    [
      "Squat: Ilka work 12x5",
      "Bench: Ilka work 14x5",
      "Squat: Ilka work 13x5",
      "Bench: Ilka work 15x5",
    ],
  ],
  [
    "a day, a name and a note, with nothing lifted",
    [
      [...who, "Squat kg", "Bench kg", "Notes"],
      [...ilka, 80, 40, ""],
      [day, "Bram", "", "", "ill"],
      [day, "Ada", "", "", ""],
    ],
    ["Squat: Ilka work 80x?", "Bench: Ilka work 40x?", "E3 Bram: ill"],
  ],
  [
    "names over figures of named athletes and lifts",
    [
      ["", "", "", "Alpha", "", "Omega", ""],
      [...lifted, "kg", "reps", "kg", "reps"],
      [...squatted, 90, 5, 80, 5],
    ],
    ["Squat: Ilka work 90x5", "kg?", "reps?"],
  ],
])("headings over several rows: %s", (_, tab, told) => {
  expect(shown(tab)).toEqual(told);
});

test("each lift keeps its own reserve", () => {
  const { reading } = read([
    [...who, "Squat", "RIR", "Bench", "RIR"],
    [...ilka, "80x3", 2, "40x3", 1],
  ]);
  expect(reading.records.map(({ repsInReserve }) => repsInReserve)).toEqual([2, 1]);
});

test("sets that nobody filled in leave the row as it stands", () => {
  const { layout, reading } = read([
    [...lifted, "kg", "Set 1", "Set 2"],
    [...squatted, 40, "", ""],
  ]);
  expect([layout, reading.records.map(shortSet)]).toEqual(["plain rows", ["05-05 Ilka work 40x?"]]);
});

test("nine loads in ten make columns of loads", () => {
  const rows = [80, 85, 60, 62, 8].map((load) => [...squatted, load, 90]);
  expect(shown([[...lifted, "Set 1", "Set 2"], ...rows])).toHaveLength(10);
});

test("jumps under “Set 1” and “Set 2” are no loads", () => {
  const { reading } = read([
    [...who, "Test", "Set 1", "Set 2"],
    [...ilka, "CMJ", 32, 33],
  ]);
  expect([reading.records, problems(reading).length > 0]).toEqual([[], true]);
});

test("each lift is read in the unit of its own heading, its speeds as that says", () => {
  const { reading } = read([
    [...who, "Squat lb", "Squat mean speed", "Bench kilos", "Bench peak m·s⁻¹"],
    [...ilka, 180, 0.6, 40, 0.9],
  ]);
  expect(
    reading.records.map(({ loadKg, setSpeed, speedIs }) => [loadKg, setSpeed, speedIs]),
  ).toEqual([
    [180 * 0.45359237, 0.6, "mean"],
    [40, 0.9, "peak"],
  ]);
});

test.each<Example>([
  [
    "a lift in a column without a heading",
    [...who, "", "Set 1 kg", "Set 2 kg"],
    [...squatted, 80, 85],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?"],
  ],
  [
    "two columns that may be the names",
    ["Date", "", "", "Squat kg", "Bench kg"],
    [day, "Ilka", "Blue", 80, 40],
    ["A2 athlete-missing: 2026-05-05"],
  ],
  [
    "words without a heading beside the name",
    [...who, "", "Squat kg", "Bench kg"],
    [...ilka, "calm", 80, 40],
    ["Squat: Ilka work 80x? – calm", "Bench: Ilka work 40x? – calm", "C2 Ilka: calm"],
  ],
  [
    "a lift's words beside lifts across",
    [...who, "", "Squat kg", "Bench kg"],
    [...ilka, "Squat day", 80, 40],
    [
      "Squat: Ilka work 80x? – Squat day",
      "Bench: Ilka work 40x? – Squat day",
      "C2 Ilka: Squat day",
    ],
  ],
  [
    "the same heading twice",
    [...who, "Squat kg", "Squat kg", "Bench kg"],
    [...ilka, 80, 85, 40],
    ["Squat: Ilka work 80x?", "Bench: Ilka work 40x?", "Squat kg?"],
  ],
  [
    "the best of each set",
    [...lifted, "Set 1 kg", "Set 1 best m/s", "Set 2 kg", "Set 2 best m/s"],
    [...squatted, 80, 0.6, 85, 0.55],
    ["Squat: Ilka 1 80x? 0.6", "Squat: Ilka 2 85x? 0.55"],
  ],
  [
    "the mean of the sets' speeds",
    [...lifted, "Set 1 kg", "Set 1 m/s", "Set 2 kg", "Set 2 m/s", "Mean m/s"],
    [...squatted, 80, 0.6, 85, 0.55, 0.575],
    ["Squat: Ilka 1 80x? 0.6", "Squat: Ilka 2 85x? 0.55"],
  ],
  [
    "a greatest speed beside loads alone",
    [...lifted, "Set 1 kg", "Set 2 kg", "Max m/s"],
    [...squatted, 80, 85, 0.6],
    ["Squat: Ilka 1 80x?", "Squat: Ilka 2 85x?", "Max m/s?"],
  ],
  [
    "a note of the first set alone",
    [...lifted, "Set 1 kg", "Set 1 note", "Set 2 kg"],
    [...squatted, 80, "calm", 85],
    ["Squat: Ilka 1 80x? – calm", "Squat: Ilka 2 85x?"],
  ],
  [
    "a lift's note beside the row's",
    [...who, "Notes", "Squat kg", "Bench kg", "Bench notes"],
    [...ilka, "cold", 80, 40, "slow"],
    ["Squat: Ilka work 80x? – cold", "Bench: Ilka work 40x? – slow"],
  ],
  [
    "how many repetitions, that may be the number of another set",
    [...lifted, "Set 1 (5)", "Set 2 (1)"],
    [...squatted, 80, 85],
    ["A1 column-missing: ", "Set 1 (5)?", "Set 2 (1)?"],
  ],
  [
    "pounds and speeds in one cell",
    [...lifted, "Set 1 (lb/m/s)", "Set 2 (lb/m/s)"],
    [...squatted, "180lb/0.62", "180lb/0.6"],
    ["Squat: Ilka 1 81.6466266x? 0.62", "Squat: Ilka 2 81.6466266x? 0.6"],
  ],
  [
    "a warm-up of one kind of a lift",
    [...who, "Squat warm-up narrow kg", "Squat narrow kg", "Bench kg"],
    [...ilka, 50, 80, 40],
    ["Squat narrow: Ilka warm-up 50x?", "Squat narrow: Ilka work 80x?", "Bench: Ilka work 40x?"],
  ],
])("columns beside one another: %s", (_, headings, cells, told) => {
  expect(shown([headings, cells])).toEqual(told);
});

test("names and days above lifts side by side are those of the rows below", () => {
  expect(
    shown([
      ["Ilka", "", ""],
      ["5 May", "", ""],
      ["Week", "Squat kg", "Bench kg"],
      [1, 80, 40],
    ]).slice(0, 2),
  ).toEqual(["Squat: Ilka work 80x?", "Bench: Ilka work 40x?"]);
});

test("a lift that is the only column is a column of lifts", () => {
  const { layout, reading } = read([
    [...who, "Squat kg"],
    [...ilka, 80],
  ]);
  expect([layout, reading.records.map(shortSet)]).toEqual(["tests across", ["05-05 Ilka 1 80x?"]]);
});

test("a light load among others under a lift with words behind it is a load too", () => {
  expect(
    shown([
      [...who, "Squat heavy", "Bench"],
      [...ilka, 12, 40],
      [day, "Bram", 80, 42],
    ]).slice(0, 3),
  ).toEqual(["squat: Ilka 1 12x?", "bench: Ilka 1 40x?", "squat: Bram 1 80x?"]);
});

test.each([
  "plan",
  "planned",
  "target",
  "targets",
  "goal",
  "goals",
  "prescribed",
  "soll",
  "ziel",
  "geplant",
  "1RM",
  "e1RM",
  "% of 1RM",
])("what “%s” says of a lift was not lifted, over a column or a grid", (word) => {
  const column = understandTable(
    "Sets",
    [
      ["Date", "Athlete", "Squat kg", "Bench kg", `Squat ${word}`],
      ["2026-05-05", "Ilka", 80, 40, 85],
    ],
    { today },
  ).reading;
  expect(column.records.map(({ loadKg }) => loadKg)).toEqual([80, 40]);
  const grid = understandTable(
    "Sets",
    [
      [`Squat ${word}`, "", ""],
      ["Athlete", "5/5/2026", "28/5/2026"],
      ["Ilka", 85, 87.5],
    ],
    { today },
  ).reading;
  expect([grid.records.length, problems(grid)]).toEqual([0, ["A3 row-unread: Ilka"]]);
});

test.each([
  ["loads under a heading that nobody explains", [...who, "Squat", "Iron?", "reps"], [80, 5]],
  ["no loads at all", [...who, "Squat", "reps", "m/s"], [5, 0.6]],
])("numbers of sets under a lift's name are no loads of 1 and 2 kg: %s", (_, headings, cells) => {
  const { reading } = read([headings, [...ilka, 1, ...cells], [...ilka, 2, ...cells]]);
  expect([reading.records, reading.rowsReported]).toEqual([[], 2]);
});

test("a lift's loads may begin with a bar of 15 kg", () => {
  const headings = [...who, "Squat", "Squat reps"];
  const { reading } = read([headings, [...ilka, 15, 5], [...ilka, 80, 5]]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka work 15x5", "05-05 Ilka work 80x5"]);
});

test("headings over two rows: sets over their speeds, or days and athletes in the upper one", () => {
  const headings = [
    [...who, "Squat", "", "Bench", ""],
    ["", "", "kg", "reps", "kg", "reps"],
  ];
  const speeds = read([
    ["", "", "", "Set 1", "", "", "Set 2", "", ""],
    [...lifted, "kg", "v1", "v2", "kg", "v1", "v2"],
    [...squatted, 80, 0.62, 0.6, 85, 0.58, 0.57],
  ]).reading;
  expect(speeds.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 80x? 0.62 0.6",
    "05-05 Ilka 2 85x? 0.58 0.57",
  ]);
  const { reading } = read([...headings, [...ilka, 80, 5, 40, 8]]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka work 80x5", "05-05 Ilka work 40x8"]);
  expect(counts(reading)).toEqual([1, 0, 0, 2]);
});

test("a sentence or a tick above the columns is no lift's name over them", () => {
  const sentence =
    "Three minutes between all of the sets, loads as they stood on the whiteboard of the gym";
  for (const above of [sentence, true]) {
    const { reading, layout } = read([
      ["", "", "Squat", "", above, ""],
      [...who, "kg", "reps", "kg", "reps"],
      [...ilka, 80, 5, 40, 8],
    ]);
    expect([reading.records, layout]).toEqual([[], "not recognised"]);
  }
});
