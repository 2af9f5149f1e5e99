import { isoFromDay } from "../../../src/coaching/calendar/day";
import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Grids and blocks in the spirit of the sample layouts; athletes, dates and figures are invented.

test("real dates across, “5x5 95” in the cells, the lift in the tab's name", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Name", new Date(2026, 4, 12), new Date(2026, 4, 14)],
      ["Kofi", "5x5 95", "3x5 @ 100kg .60"],
      ["Ilka", "DNS", "3x5 65 (tired)"],
    ],
    { title: "Back squat" },
  );
  expect(reading.records.filter(({ set }) => set === 1).map(shortSet)).toEqual([
    "05-12 Kofi 1 95x5",
    "05-14 Kofi 1 100x5 0.6",
    "05-14 Ilka 1 65x5",
  ]);
  expect(reading.records).toHaveLength(11);
  expect(reading.records.find(({ athlete }) => athlete === "Ilka")?.note).toBe("tired");
});

test("kg and m/s in columns of their own under each date", () => {
  const { reading } = understandTable("Sets", [
    ["SQUAT 2026", "", "", "", "", ""],
    ["", "12/5", "", "", "28/5", ""],
    ["Athlete", "kg", "m/s", "notes", "kg", "m/s"],
    ["Ilka", 65, 0.66, "calm", 67.5, 0.62],
    ["Kofi", 105, "0,61 0,60 0,58", "", "-", ""],
  ]);
  expect(reading.records.map(shortSet)).toEqual(
    [
      "05-12 Ilka work 65x? 0.66",
      "05-28 Ilka work 67.5x? 0.62",
      "05-12 Kofi work 105x? 0.61 0.6 0.58",
      "05-28 Kofi work ?x?",
    ].filter((line) => !line.endsWith("?x?")),
  );
  expect(notes(reading)).toEqual(["D4 Ilka: calm"]);
});

test("weeks named by their first day in words, Mon and Wed below", () => {
  const { reading } = understandTable("Sets", [
    ["Squat, sets x reps x kg – 2026", "", "", "", ""],
    ["", "w/c 4 May", "", "w/c 11 May", ""],
    ["Name", "Mon", "Wed", "Mon", "Wed"],
    ["Dario", "3x5x85 .66", "as Mon", "3x5x87.5 .64", ""],
  ]);
  expect(reading.records.filter(({ set }) => set === 1).map(shortSet)).toEqual([
    "05-04 Dario 1 85x5 0.66",
    "05-06 Dario 1 85x5",
    "05-11 Dario 1 87.5x5 0.64",
  ]);
});

test("several athletes' blocks one under another, the name above each, the header again", () => {
  const head = ["Date", "Lift", "Set", "kg", "Rep 1", "Rep 2", "Rep 3"];
  const { reading } = understandTable("Sets", [
    ["Wren Castellow", "", "", "", "", "", ""],
    head,
    ["2026-05-12", "Squat", 1, 40, 0.75, 0.74, 0.73],
    ["", "", 2, "", 0.74, 0.73, 0.71],
    ["", "", "", "", "", "", ""],
    ["Joss Whitterby", "", "", "", "", "", ""],
    head,
    ["2026-05-12", "Squat", 1, 77.5, 0.65, 0.64, 0.62],
    ["2026-05-14", "Squat", 1, 80, 0.62, "0.58?", 0.6],
    ["total", "", "", 157.5, "", "", ""],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Wren Castellow 1 40x? 0.75 0.74 0.73",
    "05-12 Wren Castellow 2 40x? 0.74 0.73 0.71",
    "05-12 Joss Whitterby 1 77.5x? 0.65 0.64 0.62",
    "05-14 Joss Whitterby 1 80x? 0.62 - 0.6",
  ]);
  expect(problems(reading)).toEqual(["F9 unsure: 0.58?"]);
  expect(counts(reading)).toEqual([4, 0, 1, 5]);
});

test("one tab an athlete, the name in the tab only, dates in a column", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Date", "Exercise", "Set", "Load", "Speed"],
      ["Tue 26 May", "squat", 1, 107.5, 0.6],
      ["", "squat", 2, '"', 0.59],
      ["Thu 28 May", "squat", 1, 107.5, 0.6],
    ],
    { title: "Kofi Anstruther", today },
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-26 Kofi Anstruther 1 107.5x? 0.6",
    "05-26 Kofi Anstruther 2 107.5x? 0.59",
    "05-28 Kofi Anstruther 1 107.5x? 0.6",
  ]);
});

test("a tab that names no athlete is reported row by row, not given to anyone", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Date", "Exercise", "Set", "Load", "Speed"],
      ["2026-05-26", "squat", 1, 107.5, 0.6],
    ],
    { title: "Sheet1" },
  );
  expect(problems(reading)).toEqual(["A2 athlete-missing: 2026-05-26"]);
  expect(counts(reading)).toEqual([0, 1, 0, 1]);
});

test("one row a repetition, with a repetition missing", () => {
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Set", "Rep no", "Load", "m/s"],
    ["2026-05-12", "Ilka", "squat", 1, 1, 65, 0.66],
    ["2026-05-12", "Ilka", "squat", 1, 3, 65, 0.63],
    ["2026-05-12", "Ilka", "squat", 2, 1, 65, 0.65],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 65x3 0.66 - 0.63",
    "05-12 Ilka 2 65x1 0.65",
  ]);
  expect(counts(reading)).toEqual([3, 0, 0, 1]);
});

test("shorthand without its order is asked when sets and repetitions could be either", () => {
  const log = (heading: string) => [
    ["Date", "Who", "Lift", heading],
    ["2026-05-12", "Ilka", "squat", "65x5x5 @ .66"],
    ["2026-05-14", "Ilka", "squat", "65x3x5 @ .66"],
  ];
  const open = understandTable("Sets", log("Work done")).reading;
  expect(open.records).toHaveLength(5);
  expect(problems(open)).toEqual(["D3 scheme-order-unsettled: 65x3x5 @ .66"]);
  const said = (heading: string) =>
    understandTable("Sets", log(heading)).reading.records.filter(({ row }) => row === 3);
  expect(said("kg x sets x reps").map(({ reps }) => reps)).toEqual([5, 5, 5]);
  expect(said("kg x reps x sets").map(({ reps }) => reps)).toEqual([3, 3, 3, 3, 3]);
});

test("one row a test day, one column a test, inches and ms in the headings", () => {
  const { reading, layout } = understandTable("Jumps", [
    ["Date", "Athlete", "Box jump (in)", "Drop jump contact ms", "Drop jump flight ms", "Note"],
    ["2026-04-14", "Kofi", 22, 168, 550, ""],
    ["2026-04-28", "Kofi", "21.5", 171, "DNS", "late"],
    ["2026-05-12", "Wren", "12?", "", "", ""],
  ]);
  expect(layout).toBe("tests across");
  expect(reading.records.map(shortJump)).toEqual([
    "04-14 Kofi 55.88 cm",
    "04-14 Kofi 0.168/0.55",
    "04-28 Kofi 54.61 cm",
    "04-28 Kofi 0.171/?",
  ]);
  expect(new Set(reading.records.map(({ test }) => test))).toEqual(
    new Set(["Box jump", "Drop jump"]),
  );
  expect(problems(reading)).toEqual(["C4 unsure: 12?"]);
  expect(counts(reading)).toEqual([3, 0, 0, 1]);
});

test("one row a day, one column a lift, shorthand below", () => {
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Back squat", "Split squat"],
    ["2026-05-12", "Ilka", "3x5 65", "2x6 16kg"],
    ["2026-05-14", "Ilka", "60x5, 80x3 .70", "skipped"],
  ]);
  expect(
    reading.records.map(({ exercise, set, loadKg, reps }) => [exercise, set, loadKg, reps]),
  ).toEqual([
    ["back squat", 1, 65, 5],
    ["back squat", 2, 65, 5],
    ["back squat", 3, 65, 5],
    ["split squat", 1, 16, 6],
    ["split squat", 2, 16, 6],
    ["back squat", 1, 60, 5],
    ["back squat", 2, 80, 3],
  ]);
});

test("dates across for jumps in centimetres, a missed try, an average row", () => {
  const { reading } = understandTable("Jumps", [
    ["Box jump (cm) 2026", "", "", ""],
    ["Athlete", "14 Apr", "28 Apr", "12 May"],
    ["Kofi", 56, "57,5", "x"],
    ["Wren", 34, "n/a", 580],
    ["Ø", 45, 57.5, ""],
  ]);
  expect(reading.records.filter(({ heightCm }) => heightCm !== null).map(shortJump)).toEqual([
    "04-14 Kofi 56 cm",
    "04-28 Kofi 57.5 cm",
    "04-14 Wren 34 cm",
  ]);
  expect(problems(reading)).toEqual(["D4 implausible: 580"]);
});

test("a wide grid whose dates could be either way round is reported at each date", () => {
  const { reading } = understandTable("Sets", [
    ["Squat 2026", "", ""],
    ["Name", "5/6", "7/6"],
    ["Kofi", "5x5 95", "5x5 95"],
  ]);
  expect(reading.records).toEqual([]);
  expect(problems(reading)).toEqual([
    "B2 date-order-unsettled: 5/6",
    "C2 date-order-unsettled: 7/6",
  ]);
});

test("pounds under one date, kilograms under another; inches in a block's title", () => {
  const { reading } = understandTable("Sets", [
    ["SQUAT 2026", "", "", "", ""],
    ["", "14 May", "", "28 May", ""],
    ["Athlete", "lb", "m/s", "kg", "m/s"],
    ["Nils", 185, 0.66, 85, 0.65],
  ]);
  expect(reading.records.map(({ loadKg }) => Math.round((loadKg ?? 0) * 10) / 10)).toEqual([
    83.9, 85,
  ]);
  const jumps = understandTable("Jumps", [
    ["Box jump (in) 2026", "14 Apr", "28 Apr"],
    ["Kofi", 22, "21,5"],
    ["Box jump (cm)", "12 May", "26 May"],
    ["Kofi", 56, 57],
  ]).reading;
  expect(jumps.records.map(shortJump)).toEqual([
    "04-14 Kofi 55.88 cm",
    "04-28 Kofi 54.61 cm",
    "05-12 Kofi 56 cm",
    "05-26 Kofi 57 cm",
  ]);
});

test("the coach's answer about a grid's dates settles all of them", () => {
  const grid = [
    ["Squat 2026", "", ""],
    ["Name", "5/6", "7/6"],
    ["Kofi", "1x5 95", "1x5 95"],
  ];
  const { questions } = understandTable("Sets", grid);
  expect(questions.map(({ column, about }) => [column, about])).toEqual([
    [2, "date order"],
    [3, "date order"],
  ]);
  const answers = {
    columns: [
      { column: 1, field: "athlete" },
      { column: 2, dateOrder: "day first" as const },
    ],
  };
  const { reading } = understandTable("Sets", grid, { answers });
  expect(reading.records.map(shortSet)).toEqual(["06-05 Kofi 1 95x5", "06-07 Kofi 1 95x5"]);
});

test("fifteen sets of five is no scheme", () => {
  const { reading } = understandTable("Sets", [
    ["Squat 2026", "", ""],
    ["Name", "14/5", "28/5"],
    ["Kofi", "15x5", "0x5 95"],
  ]);
  expect(problems(reading)).toEqual(["B3 scheme-unread: 15x5", "C3 scheme-unread: 0x5 95"]);
});

test("weekdays under each date settle the order of day and month", () => {
  const { reading } = understandTable("Sets", [
    ["Squat 2026", "", ""],
    ["", "5/5", "7/5"],
    ["Name", "Tue", "Thu"],
    ["Kofi", "1x5 95", "1x5 97.5"],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Kofi 1 95x5", "05-07 Kofi 1 97.5x5"]);
});

test("a title between two grids belongs to the grid below it, averages and footnotes to the one above", () => {
  const { reading } = understandTable("Sets", [
    ["Back squat", "", ""],
    ["", "12/5/2026", "14/5/2026"],
    ["Ilka", "3x3x60", "5x5x65"],
    ["AVG", "60", "65"],
    ["Bench press", "", ""],
    ["", "12/5/2026", "14/5/2026"],
    ["Ilka", "2x2x40", ""],
  ]);
  const lifts = reading.records.map(
    ({ day, exercise, set }) => `${isoFromDay(day)} ${exercise} ${set}`,
  );
  expect(lifts).toContain("2026-05-12 back squat 3");
  expect(lifts.filter((lift) => lift.includes("bench press"))).toEqual([
    "2026-05-12 bench press 1",
    "2026-05-12 bench press 2",
  ]);
  expect(problems(reading)).toEqual([]);
});

test.each(["Squat plan", "Squat (target)", "Squat 1RM", "Squat % of 1RM"])(
  "under “%s” nothing was lifted: each row is told",
  (title) => {
    const { reading } = understandTable(
      "Sets",
      [
        ["Athlete", "2026-05-05", "2026-05-12"],
        ["Ilka", 80, 82.5],
      ],
      { title },
    );
    expect([reading.records, problems(reading)]).toEqual([[], ["A2 row-unread: Ilka"]]);
  },
);

test("of what was planned and what was done under each date only the latter was lifted", () => {
  const { reading, questions } = understandTable(
    "Sets",
    [
      ["", "2026-05-05", "", "2026-05-12", ""],
      ["Athlete", "Plan", "Done", "Plan", "Done"],
      ["Ilka", "1x5 80", "1x5 78", "1x5 82", ""],
    ],
    { title: "Squat" },
  );
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 78x5"]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Plan"]);
});

test("jump tests named under each date are each a test of their own, in their own unit", () => {
  const { reading, questions } = understandTable(
    "Jumps",
    [
      ["", "2026-05-05", "", "", "2026-05-12", "", ""],
      ["Athlete", "CMJ (in)", "Drop jump 40", "Notes", "CMJ (in)", "Drop jump 40", "Notes"],
      ["Ilka", 12, 30, "calm", 13, 31, ""],
    ],
    { title: "Tests" },
  );
  expect(
    reading.records.map((jump) => `${jump.test}: ${shortJump(jump)} from ${jump.dropCm}`),
  ).toEqual([
    "CMJ: 05-05 Ilka 30.48 cm from null",
    "Drop jump 40: 05-05 Ilka 30 cm from 40",
    "CMJ: 05-12 Ilka 33.02 cm from null",
    "Drop jump 40: 05-12 Ilka 31 cm from 40",
  ]);
  expect([notes(reading), problems(reading), questions]).toEqual([["D3 Ilka: calm"], [], []]);
});
