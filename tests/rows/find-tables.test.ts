import { dayFromIso } from "../../src/coaching/calendar/day";
import { findTables } from "../../src/rows/find-tables";
import { samples } from "../fuzz/tables";

const today = dayFromIso("2026-06-16") as number;
/** The plain tables among the samples, after four layouts of coaches' own. */
const plainTables = [
  "Sets",
  "Jumps",
  "Diary",
  "Athletes",
  "Availability",
  "Runs",
  "Races",
  "Plates",
  "Rules",
];

test("every sample tab is found as the table it is, and the sets log also gives its jumps", () => {
  const names = ["Gym", "Kofi Anstruther", "Log", "Tests", ...plainTables];
  const tabs = samples.map((cells, at) => ({ name: names[at] ?? "", cells }));
  const found = findTables(tabs, { today }).map(({ tab, table, sureness }) => [
    tab,
    table,
    sureness >= 0.6,
  ]);
  expect(found).toEqual([
    ["Gym", "Sets", true],
    ["Kofi Anstruther", "Sets", true],
    ["Kofi Anstruther", "Jumps", true],
    ["Log", "Sets", true],
    ["Log", "Jumps", true],
    ["Tests", "Jumps", true],
    ...plainTables.map((name) => [name, name, true]),
  ]);
});

test("without telling tab names the tables are still told apart", () => {
  const tabs = samples.slice(4).map((cells, at) => ({ name: `Sheet${at + 1}`, cells }));
  expect(findTables(tabs, { today }).map(({ table }) => table)).toEqual(plainTables);
});

test("a shopping list is no table", () => {
  expect(
    findTables([
      {
        name: "Sheet9",
        cells: [
          ["Item", "Price"],
          ["chalk", 4],
          ["tape", 3.5],
        ],
      },
    ]),
  ).toEqual([]);
});

type Row = readonly unknown[];
const found = (name: string, ...cells: readonly Row[]) =>
  findTables([{ name, cells }], { today }).map(({ table, sureness }) => [
    table,
    Math.round(sureness * 1000) / 1000,
  ]);
const day = (date: number) => new Date(2026, 4, date);
const runner = (at: number) => `Runner ${String.fromCharCode(65 + at)}`;
/** Rows under two dates, each cell the same. */
const grid = (
  title: string,
  rows: number,
  cell: unknown,
  dates: Row = ["12/5/2026", "13/5/2026"],
) => [
  [title],
  ["", ...dates],
  ...Array.from({ length: rows }, (_, at) => [runner(at), ...dates.map(() => cell)]),
  [""],
];

test("a grid of sets beside its athletes is asked about, and is no table of athletes", () => {
  const dates = [day(12), day(13)];
  expect(found("Gym", ["Athlete", ...dates], ["Ilka", "85x3x5", "85x3x5"])).toEqual([
    ["Sets", 0.5],
  ]);
  expect(found("Mood", ["Athlete", ...dates], ["Ilka", 4, 4])).toEqual([["Diary", 0.9]]);
  const baselines = ["Athlete", "Group", "Baseline from", "Baseline to"];
  expect(
    found("Squad", baselines, ["Ilka", "A", day(1), day(20)], ["Kofi", "A", day(2), day(21)]),
  ).toEqual([["Athletes", 1]]);
});

test("under a name, rows of one athlete are no table of athletes once most of them are read", () => {
  const set = (number: number) => [number, 80, 0.6, 0.59];
  const rows = [["Name", "Ilka Brandmoor"], ["Tue 12 May 2026"], ["SQUAT", "kg", "r1", "r2"]];
  // The line of the name is not read as a set.
  expect(found("Ilka Brandmoor", ...rows, set(1), set(2))).toEqual([["Sets", 0.6]]);
  const tested = ["Athlete", "Group", "Birth year", "Date", "CMJ"];
  expect(
    found("Squad", tested, ["Ilka", "A", 2003, "2026-05-12", 31], ["Kofi", "A", 2001, "", 30]),
  ).toEqual([["Athletes", 0.81]]);
});

test("a tab that has something of every table and all of none is none", () => {
  const something = ["Date", "Group", "Until", "Width", "Value"].map((word) => [word]);
  expect(found("Sheet1", ...something)).toEqual([]);
  expect(found("Sheet1", ["Rule", "Value"], ...something)).toEqual([["Rules", 0.7]]);
});

test("all that a table needs counts before one athlete's or one lift's rows with more headings", () => {
  expect(
    found(
      "Sheet1",
      ["Date", "Athlete", "Km", "Load", "Reps", "Set", "RIR"],
      ["2026-05-12", "Ilka", 5, 80, 5, 1, 2],
    ),
  ).toEqual([["Runs", 0.55]]);
  expect(
    found(
      "Sheet1",
      ["Name", "Group", "Event"],
      ["Ilka", "A", "mile"],
      ["Date", "Sleep", "Mood"],
      ["2026-05-12", 8, 4],
    ),
  ).toEqual([["Athletes", 0.8]]);
});

test("a tab is a table from half sure on", () => {
  const spell = ["Ilka", "2026-05-12", "out", "a", "b", "c", "d"];
  const heads = ["Athlete", "From", "May do", "Weather", "Sky", "Moon", "Tide"];
  expect(found("Sheet1", heads, spell)).toEqual([["Availability", 0.5]]);
  expect(found("Sheet1", [...heads, "Wind"], [...spell, "e"])).toEqual([]);
});

test("jumps are looked for beside sets and in a diary's columns of tests; repetitions count as headings", () => {
  const hop = ["Date", "Athlete", "Sleep", "Mood", "Hop (cm)"];
  expect(found("Diary", hop, ["2026-05-12", "Ilka", 8, 4, 31])).toEqual([
    ["Diary", 0.88],
    ["Jumps", 0.9],
  ]);
  const felt = ["Date", "Athlete", "Sleep", "Mood", "Legs"];
  expect(found("Diary", felt, ["2026-05-12", "Ilka", 8, 4, 3])).toEqual([["Diary", 0.88]]);
  expect(
    found(
      "Log",
      ["Date", "Athlete", "Exercise", "kg x sets x reps"],
      ["2026-05-12", "Ilka", "squat", "85x3x5"],
      ["2026-05-12", "Ilka", "box jump", "5x15 o"],
    ),
  ).toEqual([
    ["Sets", 0.7],
    ["Jumps", 0.9],
  ]);
  expect(
    found(
      "Set log",
      ["Date", "Athlete", "Exercise", "Load", "Rep 1", "Rep 2", "Weather"],
      ["2026-05-12", "Ilka", "squat", 80, 0.6, 0.59, "rain"],
    ),
  ).toEqual([["Sets", 0.9]]);
});

test("one athlete's tab of two headings more is nine tenths as sure; a nameless one is half sure", () => {
  const rows = [
    ["Date", "Sleep", "Mood"],
    ["2026-05-12", 8, 4],
  ];
  expect(found("Ilka Brandmoor", ...rows)).toEqual([["Diary", 0.72]]);
  expect(found("Tab", ...rows)).toEqual([["Diary", 0.5]]);
});

test("a grid is as sure as the share of its rows read; runs and diary count before jumps of the same numbers", () => {
  expect(found("Spring", ...grid("Box jump", 2, 40))).toEqual([["Jumps", 0.9]]);
  expect(found("Spring", ...grid("Runs", 1, 40))).toEqual([["Runs", 0.5]]);
  expect(found("Spring", ...grid("Mood", 1, 4), ...grid("Xyz", 1, 4))).toEqual([["Diary", 0.45]]);
  // 0.27 is the least that is shown.
  expect(found("Spring", ...grid("Mood", 3, 4), ...grid("Xyz", 7, 4))).toEqual([["Diary", 0.27]]);
  expect(found("Spring", ...grid("Mood", 3, 4), ...grid("Xyz", 8, 4))).toEqual([["Jumps", 0.9]]);
});

test("jumps of contact or flight times alone are jumps, others without a figure are none", () => {
  expect(found("Spring", ...grid("Drop jump contact, s", 2, 0.18))).toEqual([["Jumps", 0.9]]);
  expect(found("Spring", ...grid("Flight time, s", 2, 0.5))).toEqual([["Jumps", 0.9]]);
  // Of a cell that is no jump there is no figure.
  expect(found("Spring", ...grid("Box jump", 1, 40), ...grid("Box jump", 1, -3))).toEqual([
    ["Jumps", 0.45],
  ]);
});

test("a grid of which less than a third is read is asked about where an answer would settle it, not for a strange column", () => {
  const squats = grid("Squat, kg x sets x reps", 1, "85x3x5");
  expect(found("Spring", ...squats, ...grid("", 2, "85x3x5"))).toEqual([["Sets", 0.3]]);
  expect(found("Spring", ...squats, ...grid("", 3, "85x3x5"))).toEqual([["Sets", 0.5]]);
  expect(found("Spring", ...grid("Mood", 2, 4, ["5/6/2026", "6/7/2026", "Sky"]))).toEqual([
    ["Diary", 0.5],
  ]);
  expect(
    found("Spring", ...grid("Mood", 2, 4, ["12/5/2026", "13/5/2026", "Sky"]), ...grid("Xyz", 7, 4)),
  ).toEqual([["Jumps", 0.9]]);
});

test("a tab that lacks one thing a table cannot do without is asked about from three headings on", () => {
  expect(found("Sheet1", ["Until", "May do"], ["2026-05-13", "out"])).toEqual([]);
  expect(found("Sheet1", ["Athlete", "May do"], ["Ilka", "out"])).toEqual([["Athletes", 0.525]]);
  expect(found("Sheet1", ["Athlete", "Until", "Pain"], ["Ilka", "2026-05-13", 2])).toEqual([]);
  const spells = ["From", "Until", "May do"];
  expect(found("Sheet1", spells, ["2026-05-12", "2026-05-13", "out"])).toEqual([
    ["Availability", 0.5],
  ]);
  // Of two such tables the one that knows more.
  const both = ["Athlete", "Exercise", "Load", "Height", "Stack", "Cleared", "Contact"];
  expect(found("Sheet1", both, ["Ilka", "hop", 60, 31, "5x15", "y", 0.2])).toEqual([
    ["Jumps", 0.5],
  ]);
});

test("jumps among sets have the year of the tab's name, as the sets have", () => {
  expect(
    found(
      "Log 2026",
      ["Date", "Athlete", "Exercise", "kg x sets x reps"],
      ["12 May", "Ilka", "squat", "85x3x5"],
      ["12 May", "Ilka", "box jump", "5x15 o"],
    ),
  ).toEqual([
    ["Sets", 0.7],
    ["Jumps", 0.9],
  ]);
});

test("of sets and jumps in one grid that are as sure the sets count; blocks of which half is read are shown", () => {
  expect(found("Spring", ...grid("Squat, kg x reps", 1, "12x5"))).toEqual([["Sets", 0.9]]);
  const rows = [["Coach", "Quill"], ["Tue 12 May 2026"], ["SQUAT", "kg", "r1", "r2"]];
  expect(found("Ilka Brandmoor", ...rows, [1, 80, 0.6, 0.59])).toEqual([["Sets", 0.45]]);
});

test("days and athletes with a jump alone are jumps, also in a tab that speaks of runs", () => {
  const rows = [
    ["Date", "Athlete", "CMJ"],
    ["2026-05-12", "Ilka", 38.5],
    ["2026-05-19", "Ilka", 39],
  ];
  for (const name of ["Sheet1", "After runs"])
    expect(found(name, ...rows)).toEqual([["Jumps", 0.9]]);
});

test("sets in shorthand are sets whatever stands above them, with the jumps of the log", () => {
  const log = (heading: string, ...cells: readonly string[]) =>
    findTables(
      [
        {
          name: "Tab 1",
          cells: [
            ["Date", "Athlete", "Exercise", heading],
            ...cells.map((cell, at) => [`2026-05-0${at + 1}`, "Ilka Brandmoor", "squat", cell]),
          ],
        },
      ],
      { today },
    ).map(({ table, sureness, understanding: { reading } }) => [
      table,
      sureness >= 0.6,
      reading.records.length,
      reading.issues.length,
    ]);
  for (const heading of ["Work", "Done", "What we did", "Zq"])
    expect(log(heading, "80x5x5 @ .62", "85x5x5", "5x5 80")).toEqual([["Sets", true, 15, 0]]);
  // A word now and then is no other column, most of them are.
  expect(log("Work", "80x5", "80x5", "80x5", "80x5", "rest")).toEqual([["Sets", true, 4, 0]]);
  expect(log("Work", "80x5", "rest", "easy")[0]![0]).not.toBe("Sets");
  // A load column of its own is what it is.
  expect(log("Load", "80x5x5", "85x5x5")).toEqual([["Sets", true, 10, 0]]);
});

test("what coaches call a tab speaks for its table", () => {
  const squad = [
    ["Name", "Event", "Years lifting", "Since"],
    ["Ilka", "800 m", 3, 2021],
  ] as const;
  expect(found("Sheet1", ...squad)).toEqual([["Athletes", 0.575]]);
  for (const name of ["Squad list", "Roster 2026", "Kader"])
    expect(found(name, ...squad)[0]![1]).toBeGreaterThan(0.6);
});

test("plates counted without their thickness are asked about, unless more stands beside them", () => {
  expect(found("Kit", ["Plate", "How many"], [20, 8], [10, 6])).toEqual([["Plates", 0.5]]);
  expect(found("Kit", ["Plate", "How many", "Shop"], [20, 8, "x"], [10, 6, "y"])).toEqual([]);
});

test("a tab called injuries or races with day, name and what is asked about as such, never read as runs", () => {
  const cells = [
    ["Athlete", "Date", "What", "Cleared?"],
    ["Ilka Brandmoor", "2026-05-11", "shin pain 4/10", ""],
    ["Kofi Anstruther", "5/1", "rolled ankle", "cleared 5/4"],
  ];
  const asked = (name: string) =>
    findTables([{ name, cells }]).map(({ table, sureness }) => [table, sureness < 0.6]);
  expect(asked("Injuries")).toEqual([["Availability", true]]);
  expect(asked("Verletzungen")).toEqual([["Availability", true]]);
  for (const other of ["Sheet1", "Injured runs"]) expect(asked(other)[0]![0]).toBe("Runs");
  const races = [
    ["When", "What", "Who", "Priority"],
    ["Sat 2 May", "County 10k", "Kofi", "A"],
  ];
  const [found] = findTables([{ name: "Races 2026", cells: races }]);
  expect([found!.table, found!.sureness < 0.6]).toEqual(["Races", true]);
});

test("a calendar of days, what and who is no table of runs: it is asked about", () => {
  const calendar = [
    ["Date", "What", "Who", "Type"],
    ["2026-06-13", "Mill ten", "Oona", "race"],
    ["2026-06-15", "Camp", "all", "travel"],
  ];
  const sure = (name: string, rows = calendar) =>
    findTables([{ name, cells: rows }]).map(
      ({ table, sureness }) => `${table} ${sureness >= 0.6 ? "sure" : "asked"}`,
    );
  expect(sure("Calendar")).toEqual(["Runs asked"]);
  expect(sure("Runs")).toEqual(["Runs sure"]);
  const run = ["2026-06-16", "easy", "Oona", ""];
  expect(sure("Calendar", [...calendar, run, run])).toEqual(["Runs sure"]);
});

test("sets of nothing but their needs, with jumps in columns beside them, are sets and jumps", () => {
  const cells = [
    ["Date", "Athlete", "Lift", "kg", "CMJ 1", "CMJ 2"],
    ["2026-05-05", "Ilka", "Squat", 80, 32, 33],
    ["2026-05-12", "Ilka", "Squat", 82.5, 31, 32],
  ];
  const found = findTables([{ name: "Gym", cells }], { today });
  expect(
    found.map(({ table, understanding }) => [table, understanding.reading.records.length]),
  ).toEqual([
    ["Sets", 2],
    ["Jumps", 4],
  ]);
});

test("of tables that lack one thing the one is asked about of which most headings are known", () => {
  // Six of them are of sets without their loads, four of who may do what.
  const cells = [
    ["Date", "Athlete", "Lift", "Reps", "RIR", "By", "Site"],
    ["2026-05-05", "Ilka", "Squat", 5, 2, "MG", "knee"],
  ];
  const found = findTables([{ name: "June", cells }], { today });
  expect(found.map(({ table, sureness }) => [table, sureness])).toEqual([["Sets", 0.5]]);
});

test("a log of sets that lacks its loads and calls its lift otherwise is asked about as sets, not as who may do what", () => {
  const cells = [
    ["Date", "Athlete", "Station", "Sets", "Reps", "Technique", "By"],
    ["2026-05-05", "Ilka", "Squat", 3, 5, "good", "MG"],
  ];
  const found = findTables([{ name: "Eastfield", cells }], { today });
  expect(found.map(({ table, sureness }) => [table, sureness])).toEqual([["Sets", 0.5]]);
});

test("a school’s tabs are read: pupils, Ex, Wt, Av speed, and who signed", () => {
  const tabs = {
    Pupils: [
      ["Pupil", "School", "Event", "Year of birth"],
      ["Amber Penhale", "Eastfield", "800", 2009],
    ],
    "Eastfield gym": [
      ["Date", "Student", "Ex", "Sets", "Reps", "Wt", "Av speed"],
      ["2026-05-05", "Amber Penhale", "Squat", 3, 5, 25, 0.91],
    ],
    Availability: [
      ["Pupil", "From", "To", "Status", "Signed by", "Where"],
      ["Amber Penhale", "2026-05-05", "2026-05-10", "modified", "Dr S. Vane", "shin"],
    ],
  };
  const found = findTables(
    Object.entries(tabs).map(([name, cells]) => ({ name, cells })),
    { today },
  );
  expect(
    found.map(({ table, understanding: { reading, questions } }) => [
      table,
      reading.records.length,
      questions.length,
    ]),
  ).toEqual([
    ["Athletes", 1, 0],
    ["Sets", 3, 0],
    ["Availability", 1, 0],
  ]);
  const [pupils, gym, spells] = found.map(({ understanding }) => understanding.reading.records[0]);
  expect(pupils).toMatchObject({ athlete: "Amber Penhale", group: "Eastfield" });
  expect(gym).toMatchObject({ exercise: "Squat", loadKg: 25, setSpeed: 0.91 });
  expect(spells).toMatchObject({ by: "Dr S. Vane" });
});
