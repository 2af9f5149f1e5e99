import { isoFromDay } from "../../../src/coaching/calendar/day";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { Run } from "../../../src/coaching/record/run";
import { understandTable } from "../../../src/rows/read-table";
import type { Reading } from "../../../src/rows/reading";
import type { TableName } from "../../../src/rows/table-name";
import { counts, notes, problems, shortSet, today } from "./short";

// Whole grids with everything a coach leaves in them; athletes and figures are invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });
/** What is told and noted of a reading, and its counts: read, reported, blank, heading. */
const rest = (reading: Reading<unknown>) => [
  ...problems(reading),
  ...notes(reading),
  counts(reading).join(" "),
];

const jump = ({
  row,
  day,
  athlete,
  test,
  heightCm,
  stackKg,
  cleared,
  dropCm,
  landingCm,
  contactS,
  flightS,
  note,
}: JumpAttempt) =>
  [
    row,
    isoFromDay(day).slice(5),
    athlete,
    test,
    heightCm === null ? "" : `${Math.round(heightCm * 100) / 100} cm`,
    stackKg.length === 0 ? "" : `${stackKg.join("+")} ${cleared}`,
    dropCm === null ? "" : `from ${dropCm}`,
    landingCm === null ? "" : `on ${landingCm}`,
    contactS === null ? "" : `down ${contactS}`,
    flightS === null ? "" : `up ${flightS}`,
    note && `(${note})`,
  ]
    .filter((part) => part !== "")
    .join(" ");

test("jumps: a block a test, footnotes by their mark, notes of the day and of the week, doubts with a mend", () => {
  const { reading } = read("Jumps", [
    ["JUMP TESTS 2026", "", "", "", ""],
    ["1) box jump – best clean", "", "", "", ""],
    ["Athlete", "5/5", "12/5", "28/5", "notes"],
    ["Ilka", "2x15+5", "2x15+5*", "3x15 xo late", " flat  week "],
    ["", "2x15", "", "", ""],
    ["SPRINTERS", "", "", "", ""],
    ["Kofi  A.", 30, "30?", true, ""],
    ["* hands on knees", "", "", "", ""],
    ["mean", 20, 20, "", ""],
    ["", "", "", "", ""],
    ["2) drop jump from 30 onto 15 cm: contact ms / flight s", "", "", "", ""],
    ["", "5/5", "12/5", "28/5", ""],
    ["Ilka", "182/.49", "190 sore", "182/.49/3", ""],
  ]);
  expect(reading.records.map(jump)).toEqual([
    "4 05-05 Ilka box jump 15+15+5 true",
    "4 05-12 Ilka box jump 15+15+5 false (hands on knees)",
    "4 05-28 Ilka box jump 15+15+15 false (late)",
    "4 05-28 Ilka box jump 15+15+15 true (late)",
    "7 05-05 Kofi A. box jump 30 cm",
    "13 05-05 Ilka drop jump from 30 onto 15 cm from 30 on 15 down 0.182 up 0.49",
    "13 05-12 Ilka drop jump from 30 onto 15 cm from 30 on 15 down 0.19 (sore)",
  ]);
  expect(rest(reading)).toEqual([
    "A5 needed-blank: ",
    "C7 unsure: 30?",
    "D7 jump-unread: true",
    "D13 jump-unread: 182/.49/3",
    "E4 Ilka: flat  week",
    "D4 Ilka: late",
    "C13 Ilka: sore",
    "3 1 1 8",
  ]);
  expect(reading.issues.map(({ facts }) => facts)).toEqual([
    { heading: "athlete" },
    { mend: 30, heading: "box jump" },
    {},
    {},
  ]);
});

test("jumps: figures in columns of their own under each date, a column for the test, a raised landing", () => {
  const { reading } = read(
    "Jumps",
    [
      ["", "", "5/5/2026", "", "13/5/2026", ""],
      ["Name", "Test", "contact ms", "height (in)", "contact", "notes"],
      ["Ilka", "hop", 182, 20, 0.19, "calm"],
      ["Kofi", "", "190", "", "", ""],
    ],
    { title: "Drop jump 30 onto 2x15" },
  );
  expect(reading.records.map(jump)).toEqual([
    "3 05-05 Ilka hop 50.8 cm 15+15 null from 30 down 0.182",
    "3 05-13 Ilka hop 15+15 null from 30 down 0.19",
    "4 05-05 Kofi Drop jump 30 onto 2x15 15+15 null from 30 down 0.19",
  ]);
  expect(rest(reading)).toEqual(["F3 Ilka: calm", "2 0 0 2"]);
});

test("sets: a lift in the row or the title, weeks with weekdays, sets repeated, copied and noted", () => {
  const { reading, tabQuestions } = read("Sets", [
    ["Back squat, kg x sets x reps – spring 26", "", "", "", "", "", ""],
    ["", "", "w/c 4/5", "", "w/c 11/5", "", ""],
    ["Athlete", "Lift", "Mon", "Wed", "Mon", "Wed", "Notes"],
    ["Ilka", "", "85x3x5 .66 tired", '"', "as Wed", "ride", "exams"],
    ["Kofi", "front squat", '"', "as Mon", "60x1x3", "as Mon", ""],
    ["Wren", "", "lots 5", "", 60, "", ""],
    ["AVG", "", 85, "", "", "", ""],
  ]);
  expect(reading.records.map((set) => [shortSet(set), set.exercise, set.note].join(" | "))).toEqual(
    [
      "05-04 Ilka 1 85x5 0.66 | back squat | tired",
      "05-04 Ilka 2 85x5 | back squat | ",
      "05-04 Ilka 3 85x5 | back squat | ",
      "05-06 Ilka 1 85x5 | back squat | ",
      "05-06 Ilka 2 85x5 | back squat | ",
      "05-06 Ilka 3 85x5 | back squat | ",
      "05-11 Kofi 1 60x3 | front squat | ",
      "05-13 Kofi 1 60x3 | front squat | ",
      "05-11 Wren 1 60x? | back squat | ",
    ],
  );
  expect(rest(reading)).toEqual([
    "E4 nothing-to-repeat: as Wed",
    'C5 nothing-to-repeat: "',
    "D5 nothing-to-repeat: as Mon",
    "C6 scheme-unread: lots 5",
    "G4 Ilka: exams",
    "F4 Ilka: ride",
    "3 0 0 4",
  ]);
  expect(tabQuestions.map(({ about, samples }) => [about, samples])).toEqual([
    ["set speed", ["85x3x5 .66 tired"]],
  ]);
});

test("sets: a block that names no lift is reported and asked about by its shorthand, the next one read", () => {
  const { reading, tabQuestions } = read("Sets", [
    ["Strength 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "85x3x5", "bike"],
    ["Kofi", "5x5x60", 60],
    ["Front squat, sets x reps x lb, mean speed", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "2x3x185 .61", "2x3x190kg"],
  ]);
  expect(
    reading.records.map((set) => [shortSet(set), set.setSpeedIs, set.speedIs].join(" ")),
  ).toEqual([
    `05-05 Ilka 1 ${185 * 0.45359237}x3 0.61 mean of reps mean`,
    `05-05 Ilka 2 ${185 * 0.45359237}x3  mean`,
    "05-28 Ilka 1 190x3  mean",
    "05-28 Ilka 2 190x3  mean",
  ]);
  expect(rest(reading)).toEqual(["A2 exercise-missing: ", "1 2 0 4"]);
  expect(tabQuestions.map(({ about, samples }) => [about, samples])).toEqual([
    ["exercise", ["85x3x5", "5x5x60"]],
  ]);
});

test("sets: load, scheme, repetitions and speed in columns under each date, each in its own unit", () => {
  const { reading, tabQuestions } = read("Sets", [
    ["Squat 2026", "", "", "", "", "", ""],
    ["", "5/5", "", "", "28/5", "", ""],
    ["Athlete", "lb", "reps", "m/s", "kg", "m/s", "note"],
    ["Ilka", 185, 5, ".6 .59", "85x3", "0.62/0.60/0.58", "x"],
    ["Kofi", "185x3", "", ".6", "60", "61 cm/s", ""],
    ["Wren", "", "", "", "ride", "", ""],
    ["Zed", "", 5, "", "85x3x5", "", ""],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    `05-05 Ilka work ${185 * 0.45359237}x5 0.6 0.59`,
    "05-28 Ilka 1 85x3 0.62 0.6 0.58",
    `05-05 Kofi 1 ${185 * 0.45359237}x3 0.6`,
    "05-28 Kofi work 60x? 0.61",
    "05-05 Zed work ?x5",
  ]);
  expect(rest(reading)).toEqual([
    "E7 scheme-order-unsettled: 85x3x5",
    "A7 load-blank: ",
    "G4 Ilka: x",
    "E6 Wren: ride",
    "4 0 0 3",
  ]);
  expect(tabQuestions.map(({ about, samples }) => [about, samples])).toEqual([
    ["set speed", [".6", "61 cm/s"]],
    ["scheme order", ["85x3x5"]],
  ]);
});

const shortRun = ({ row, day, athlete, kind, minutes, km, exertion }: Run) =>
  [
    row,
    isoFromDay(day).slice(5),
    athlete,
    kind,
    minutes,
    km && Math.round(km * 100) / 100,
    exertion,
  ].join(" ");

test("runs: what a bare figure is by the title, figures in columns, the coach's word before both", () => {
  const grid = (title: string) => [
    [title, "", "", ""],
    ["", "5/5/2026", "13/5/2026", "notes"],
    ["Ilka", 45, "6 mi easy", "windy"],
    ["mean", 45, "", ""],
  ];
  const runs = (title: string, more = {}) => {
    const { reading } = read("Runs", grid(title), { said: true, ...more });
    return [...reading.records.map(shortRun), ...rest(reading)];
  };
  const read45 = (minutes: string, km: string) => [
    `3 05-05 Ilka  ${minutes} ${km} `,
    "3 05-13 Ilka easy  9.66 ",
    "D3 Ilka: windy",
    "1 0 0 3",
  ];
  for (const title of ["Runs, min", "Minuten", "duration of runs", "Time on feet"])
    expect(runs(title)).toEqual(read45("45", ""));
  for (const title of ["Runs (km)", "Distance", "weekly mileage", "Umfang", "Kilometre"])
    expect(runs(title)).toEqual(read45("", "45"));
  for (const title of ["Runs", "Runs, min or km"])
    expect(runs(title)).toContain("B3 run-figure-unsettled: 45");
  expect(runs("Runs, min", { tab: { runs: "km" } })).toEqual(read45("", "45"));
});

test("runs: a grid speaks of them by its title or by half of at least three cells", () => {
  const layout = (title: string, ...cells: unknown[]) =>
    read("Runs", [
      [title, "", "", "", ""],
      ["", "5/5/2026", "13/5/2026", "14/5/2026", "15/5/2026"],
      ["Ilka", ...cells],
    ]).layout;
  expect(layout("Running plan", 45, 45, 45, 45)).toBe("dates across");
  expect(layout("Laufplan", 45, 45, 45, 45)).toBe("dates across");
  expect(layout("Run log", 45, 45, 45, 45)).toBe("dates across");
  expect(layout("Lauf", 45, 45, 45, 45)).toBe("dates across");
  expect(layout("Spring", "45", "45", "45", "45")).not.toBe("dates across");
  expect(layout("Spring", "45 hilly", "50 flat", 45, 45)).toBe("dates across");
  expect(layout("Spring", "bike", "rest", "vest", "")).not.toBe("dates across");
  expect(layout("Spring", "45 min", "8 km", 45, 45)).toBe("dates across");
  expect(layout("Spring", "45 min", 45, 45, 45)).not.toBe("dates across");
  expect(layout("Spring", "45 min", "40'", "", "")).not.toBe("dates across");
  expect(layout("Spring", "45 min", "8 km", "40'", "")).toBe("dates across");
  expect(layout("Squat runs", "45 min", "8 km", "40'", "")).not.toBe("dates across");
  expect(layout("Box jumps", "45 min", "8 km", "40'", "")).not.toBe("dates across");
});

const shortDay = ({ row, day, athlete, sleepH, mood, soreness }: DiaryDay) =>
  [row, isoFromDay(day).slice(5), athlete, sleepH, mood, soreness].join(" ");

test("diary: several questions under each date beside one by the title, marks repeat the same question", () => {
  const { reading } = read(
    "Diary",
    [
      ["Sleep (min)", "", "", "", "", ""],
      ["", "5/5/2026", "", "13/5/2026", "", ""],
      ["Athlete", "sleep h", "mood", "sleep h", "mood", "notes"],
      ["Ilka", 7, 4, '"', '"', " exams "],
      ["Kofi", '"', 3, 8, "", ""],
      ["", "", "", "", "", ""],
      ["Soreness", "", "", "", "", ""],
      ["", "5/5/2026", "13/5/2026", "", "", ""],
      ["Ilka", 2, "ditto", "", "", ""],
    ],
    { title: "Spring" },
  );
  expect(reading.records.map(shortDay)).toEqual([
    "4 05-05 Ilka 7 4 ",
    "4 05-13 Ilka 7 4 ",
    "5 05-05 Kofi  3 ",
    "5 05-13 Kofi 8  ",
    "9 05-05 Ilka   2",
    "9 05-13 Ilka   2",
  ]);
  expect(rest(reading)).toEqual(['B5 nothing-to-repeat: "', "F4 Ilka: exams", "3 0 1 5"]);
});

test("dates that cannot be told, or are none, are reported in the header; the other columns are read", () => {
  const { reading, questions } = read(
    "Runs",
    [
      ["Runs, min", "", "", "", ""],
      ["", "5/6/2026", "31/31/2026", "6/6/2026", "x"],
      ["Ilka", 45, 46, 47, 48],
    ],
    { said: true },
  );
  expect(reading.records.map(shortRun)).toEqual(["3 06-06 Ilka  47  "]);
  expect(rest(reading)).toEqual([
    "B2 date-order-unsettled: 5/6/2026",
    "C2 not-a-day: 31/31/2026",
    "1 1 0 1",
  ]);
  expect(questions).toMatchObject([
    { column: 5, about: "meaning", heading: "x", samples: ["48"] },
    { column: 2, about: "date order" },
  ]);
});

test("a single date, dates among many words, and numbers are no header of dates", () => {
  const layout = (...head: unknown[]) =>
    read("Sets", [["Squat 2026"], head, ["Ilka", "85x3x3", "85x3x3", "85x3x3", "85x3x3"]]).layout;
  expect(layout("", "5/5", "13/5", "", "")).toBe("dates across");
  expect(layout("Name", "5/5", "13/5", "x", "")).toBe("dates across");
  expect(layout("Name", "5/5", "13/5", "x", "y")).not.toBe("dates across");
  expect(layout("", "5/5", "", "", "")).not.toBe("dates across");
  expect(layout("", 46_147, 46_155, "", "")).not.toBe("dates across");
});

test("races: a mark a runner, crosses or ticks but not both; words beside are no marks", () => {
  const races = (...rows: readonly (readonly unknown[])[]) => {
    const { reading, layout } = read("Races", [
      ["Date", "Race", "Ilka", "Kofi (m)", "Juniors"],
      ...rows,
    ]);
    return [layout, ...reading.records.map(({ race, who }) => `${race}: ${who}`), ...rest(reading)];
  };
  expect(
    races(
      ["2026-05-05", "Mile", "x", "", "XX"],
      ["2026-05-12", "Relay", "-", "", "n"],
      ["", "", "", "", ""],
      ["total", "", 1, "", 1],
    ),
  ).toEqual([
    "runners across",
    "Mile: Ilka",
    "Mile: Juniors",
    "C3 race-without-runner: -",
    "1 1 1 2",
  ]);
  expect(races(["2026-05-05", "Mile", "x", "", ""], ["2026-05-12", "Relay", "✓", "", ""])[0]).toBe(
    "plain rows",
  );
  expect(
    races(["2026-05-05", "Mile", "1", "", "yes"], ["2026-05-12", "Relay", "ok", "", ""]).slice(
      0,
      4,
    ),
  ).toEqual(["runners across", "Mile: Ilka", "Mile: Juniors", "Relay: Ilka"]);
  expect(races(["2026-05-05", "Mile", "fast", "", ""])[0]).toBe("plain rows");
  expect(races(["2026-05-05", "Mile", "n", "", ""])[0]).toBe("plain rows");
});

test("tests across: a column a test, heights and stacks beside times, doubts, words and rows without a day", () => {
  const { reading, layout } = read("Jumps", [
    [
      "Date",
      "Athlete",
      "Box jump (cm)",
      "Box jump stack",
      "Hop contact ms",
      "Hop flight (s)",
      "CMJ in",
      "Note",
    ],
    ["2026-05-05", "Ilka", 60, "2x15 xo", 182, ".49", 16, "calm"],
    ["2026-05-12", "Ilka", "61?", "", "190 sore", "", "16.5 high", ""],
    ["", "Ilka", "", "", "", "", "", ""],
    ["2026-05-19", "", "", "", 185, "", "", ""],
    ["mean", "", 60, "", "", "", "", ""],
    ["2026-05-26", "Ilka", "", "", "", "", "", ""],
    ["2026-05-28", "Ilka", "", "", "", "", "", ""],
  ]);
  expect(layout).toBe("tests across");
  expect(reading.records.map(jump)).toEqual([
    "2 05-05 Ilka Box jump 60 cm 15+15 false (calm)",
    "2 05-05 Ilka Box jump 15+15 true (calm)",
    "2 05-05 Ilka Hop down 0.182 up 0.49 (calm)",
    "2 05-05 Ilka CMJ 40.64 cm (calm)",
    "3 05-12 Ilka Hop down 0.19",
    "3 05-12 Ilka CMJ 41.91 cm",
  ]);
  expect(rest(reading)).toEqual([
    "C3 unsure: 61?",
    "A4 needed-blank: ",
    "B5 needed-blank: ",
    "E3 Ilka: sore",
    "G3 Ilka: high",
    "4 2 0 2",
  ]);
  expect(reading.issues[0]!.facts).toEqual({ mend: "61" });
});

test("lifts across: shorthand under each lift, its own order of sets and repetitions, notes and what cannot be read", () => {
  const { reading, layout } = read("Sets", [
    ["Date", "Athlete", "Squat", "Deadlifts", "Note"],
    ["2026-05-05", "Ilka", "60x3x3", "3x3x80 .6", "calm"],
    ["2026-05-12", "Ilka", "ride", "80x3x5", ""],
    ["2026-05-19", "Ilka", "60x2 (slow)", "lots 5", "late"],
  ]);
  expect(layout).toBe("tests across");
  expect(reading.records.map((set) => [shortSet(set), set.exercise, set.note].join(" | "))).toEqual(
    [
      "05-05 Ilka 1 60x3 | squat | calm",
      "05-05 Ilka 2 60x3 | squat | ",
      "05-05 Ilka 3 60x3 | squat | ",
      "05-05 Ilka 1 80x3 0.6 | deadlift | calm",
      "05-05 Ilka 2 80x3 | deadlift | ",
      "05-05 Ilka 3 80x3 | deadlift | ",
      "05-19 Ilka 1 60x2 | squat | late; slow",
    ],
  );
  expect(rest(reading)).toEqual([
    "D3 scheme-order-unsettled: 80x3x5",
    "D4 scheme-unread: lots 5",
    "C3 Ilka: ride",
    "3 0 0 1",
  ]);
});
