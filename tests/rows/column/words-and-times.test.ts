import { minuteColumn } from "../../../src/rows/column/minute-column";
import { IssueLog } from "../../../src/rows/issue-log";
import { understandTable } from "../../../src/rows/read-table";
import type { TableView } from "../../../src/rows/table-view";
import { oneColumn, told } from "./one-column";

const facts = ({ reading }: ReturnType<typeof oneColumn>) => reading.issues.map((one) => one.facts);

test("words for the kind of a set, with their number behind; others are told with all that are known", () => {
  const column = oneColumn("Sets", "Kind", [
    "WU",
    "Marker set 1",
    "work3.",
    "Arbeit Satz 2:",
    "work set 12",
    "work.",
    "n/a",
    false,
    "",
    "-",
    "cool-down",
  ]);
  expect(column.reading.records.map(({ kind }) => kind)).toEqual([
    "warm-up",
    "marker",
    "work",
    "work",
    "work",
    "work",
    "work",
    "work",
    "work",
    "work",
  ]);
  expect(column.reading.issues).toMatchObject([
    {
      code: "word-unknown",
      cell: "D12",
      dropsRow: true,
      facts: { known: "warm-up, marker, work", heading: "Kind" },
    },
  ]);
});

test("a word that must be there: blanks and dashes are told, a known word may be a mark for no value", () => {
  const { reading } = understandTable("Availability", [
    ["Athlete", "From", "May do"],
    ...["", "n/a", false, '"', "ill", '"', "perhaps", '"'].map((mayDo, at) => [
      `Ilka ${at}`,
      "2026-05-12",
      mayDo,
    ]),
  ]);
  expect(reading.records.map(({ row, mayDo }) => [row, mayDo])).toEqual([
    [6, "out"],
    [7, "out"],
  ]);
  expect(
    reading.issues.map(({ cell, code, dropsRow, facts }) => [cell, code, dropsRow, facts.heading]),
  ).toEqual([
    ["C2", "needed-blank", true, "May do"],
    ["C3", "needed-blank", true, "May do"],
    ["C4", "needed-blank", true, "May do"],
    ["C5", "needed-blank", true, "May do"],
    ["C8", "word-unknown", true, "May do"],
    ["C9", "word-unknown", true, "May do"],
  ]);
});

test("a word that may be missing leaves the row where it is", () => {
  const { reading } = oneColumn("Runs", "Kind", ["jog", "walk", "Tempo"]);
  expect(reading.records.map(({ kind }) => kind)).toEqual(["easy", null, "race pace"]);
  expect(reading.issues.map(({ cell, dropsRow }) => [cell, dropsRow])).toEqual([["C3", false]]);
});

test("yes and no: a boolean, a word, a mark that repeats one, and a word that is neither", () => {
  const column = oneColumn("Sets", "Moved well", [
    '"',
    "y",
    '"',
    "n/a",
    '"',
    false,
    "soso",
    7,
    " ",
  ]);
  expect(column.reading.records.map(({ movedWell }) => movedWell)).toEqual([
    null,
    true,
    true,
    null,
    null,
    false,
    null,
    null,
    null,
  ]);
  expect(told(column)).toEqual(["8 not-yes-or-no", "9 not-yes-or-no"]);
  expect(facts(column)).toEqual([{ heading: "Moved well" }, { heading: "Moved well" }]);
});

test("marks repeat the nearest cell above that is none, over any number of rows", () => {
  const { reading } = oneColumn("Sets", "Gym", [
    '"',
    '"',
    "north",
    '"',
    "ditto",
    "south",
    '"',
    "",
    '"',
  ]);
  expect(reading.records.map(({ gym }) => gym)).toEqual([
    "",
    "",
    "north",
    "north",
    "north",
    "south",
    "south",
    "",
    "",
  ]);
});

test("words are kept without stray spaces; numbers and dates as they are read, boxes not at all", () => {
  const { reading } = oneColumn("Sets", "Note", [
    "  slow   start ",
    "a\u00a0 b",
    "be\uFEFFlow ",
    " early",
    new Date(Number.NaN),
    7,
    new Date(2026, 4, 2),
    true,
    " ",
    "plain",
    "plain",
  ]);
  expect(reading.records.map(({ note }) => note)).toEqual([
    "slow start",
    "a b",
    "below",
    "early",
    "",
    "7",
    "2026-05-02",
    "",
    "",
    "plain",
    "plain",
  ]);
});

test("a time of day that is none is told with its heading", () => {
  const column = oneColumn("Sets", "Time", [" AM ", "pm", "pm!", "noon", "-", true, "late pm"]);
  expect(told(column)).toEqual(["4 not-a-time", "5 not-a-time", "7 not-a-time", "8 not-a-time"]);
  expect(facts(column)[0]).toEqual({ heading: "Time" });
});

test("what is no number is none, and where no column of times is there is no time", () => {
  const { reading } = oneColumn("Sets", "Reps", [Number.NaN]);
  expect(reading.records.map(({ reps }) => reps)).toEqual([null]);
  expect(told({ reading })).toEqual(["2 not-a-number"]);
  const view: TableView = {
    table: "Sets",
    cells: [["17:30"]],
    headerRow: -1,
    first: 0,
    end: 1,
    fields: {},
    repColumns: [],
    year: null,
    log: new IssueLog("Sets"),
  };
  expect(minuteColumn(view, undefined)(["17:30"], 0)).toBeNull();
});

const slept = (cell: unknown, heading = "Sleep") => {
  const column = oneColumn("Diary", heading, [cell]);
  return told(column)[0] ?? column.reading.records[0]!.sleepH;
};
const ran = (cell: unknown, heading = "Minutes") => {
  const column = oneColumn("Runs", heading, [cell]);
  return told(column)[0] ?? column.reading.records[0]!.minutes;
};

test.each([
  [7.5, 7.5],
  [0, 0],
  [18, 18],
  [18.1, "2 implausible"],
  [-1, "2 implausible"],
  [29, "2 implausible"],
  [30, "2 implausible 3"],
  [120, "2 implausible 12"],
  [121, "2 implausible"],
  ["75", "2 implausible"],
  ["7:30", 7.5],
  ["7:30:00", 7.5],
  ["07:30:45", 7.5125],
  ["7 h 30 min", 7.5],
  ["7H30m", 7.5],
  ["7h", 7],
  ["7,5 Std", 7.5],
  ["450 mins", 7.5],
  ["450'", 7.5],
  ["8 hrs", 8],
  ["8 hr", 8],
  ["8 hours", 8],
  ["480 Minuten", 8],
  ["7.5??", "2 unsure 7.5"],
  ["7,5 ?", "2 unsure 7.5"],
  ["7,25 ?", "2 unsure 7.25"],
  ["about 7 ?", "2 not-a-number"],
  ["7? or 8", "2 not-a-number"],
  ["7:30:00 late", "2 not-a-number"],
  ["7.25 h", 7.25],
  [" 7:30 ", 7.5],
  ["about 7", "2 not-a-number"],
  ["7 hours or so", "2 not-a-number"],
  ["7:5", "2 not-a-number"],
  ["100:00:00", "2 not-a-number"],
  ["a7h", "2 not-a-number"],
  ["7h30 late", "2 not-a-number"],
  ["at 7h30", "2 not-a-number"],
  ["at 7:30", "2 not-a-number"],
  ["7:30 am", "2 not-a-number"],
  [Number.NaN, "2 not-a-number"],
  [true, "2 not-a-number"],
  ["n/a", null],
  [" ", null],
  [false, null],
  [new Date(1899, 11, 30, 7, 30, 45), 7.5125],
  [new Date(1910, 0, 1, 7, 30), "2 implausible"],
])("sleep written %p is %p", (cell, hours) => {
  expect(slept(cell)).toBe(hours);
});

test("sleep under another unit's heading", () => {
  expect(slept(450, "Sleep (min)")).toBe(7.5);
  expect(slept("450", "Sleep (min)")).toBe(7.5);
  expect(slept("7 h", "Sleep (min)")).toBe(7);
  expect(slept(27_000, "Sleep (s)")).toBe(7.5);
  // What is proposed goes into the cell, and so is in minutes.
  expect(slept(4500, "Sleep (min)")).toBe("2 implausible 450");
});

test.each([
  [40, 40],
  [900, 900],
  [901, "2 implausible"],
  [9000, "2 implausible"],
  ["1:05:30", 65.5],
  ["4:59", 299],
  ["5:00", "2 length-unsettled"],
  ["9:59", "2 length-unsettled"],
  ["10:00", 10],
  ["120:30", 120.5],
  ["1h10", 70],
  ["10h30", 630],
  ["1,5 h", 90],
  ["40 m", 40],
])("a run of %p is %p minutes", (cell, minutes) => {
  expect(ran(cell)).toBe(minutes);
});

test("a run in hours by its heading, and what is told of one that is none", () => {
  expect(ran(1.5, "Duration (h)")).toBe(90);
  expect(ran("1.5", "Duration (h)")).toBe(90);
  expect(ran(2_400_000, "Duration (ms)")).toBe(40);
  // By its letter metres; of a duration it can only be minutes.
  expect(ran(40, "Duration (m)")).toBe(40);
  expect(ran("40 min", "Duration (h)")).toBe(40);
  expect(facts(oneColumn("Runs", "Minutes", [901, "5:30", "far", "40?"]))).toEqual([
    { low: 0, high: 900, unit: "min", heading: "Minutes" },
    { heading: "Minutes" },
    { heading: "Minutes" },
    { mend: 40, heading: "Minutes" },
  ]);
});

test("the effort of a set is what it left of ten, a range at its higher end; what is written as reserve stands", () => {
  for (const heading of ["RPE", "RPE (1-10)", "Set RPE", "Perceived exertion"]) {
    const effort = oneColumn("Sets", heading, [10, 8, "8/10", "7,5", "7-8", "", 0, 15, "hard"]);
    expect(effort.reading.records.map(({ repsInReserve }) => repsInReserve)).toEqual([
      0,
      2,
      2,
      2.5,
      2,
      null,
      null,
      null,
      null,
    ]);
    expect(told(effort)).toEqual(["8 implausible", "9 implausible", "10 not-a-number"]);
  }
  const both = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Set", "Load", "RIR", "RPE"],
    ["2026-05-05", "Ilka Brandmoor", "back squat", 1, 60, 3, 9],
    ["2026-05-05", "Ilka Brandmoor", "back squat", 2, 60, "", 9],
  ]);
  expect(both.reading.records.map(({ repsInReserve }) => repsInReserve)).toEqual([3, 1]);
  expect(oneColumn("Sets", "Session RPE", [9]).reading.records[0]!.repsInReserve).toBeNull();
});

test("plain numbers: ranges at their lower end where a range makes sense, tenths, wholes", () => {
  const reserve = oneColumn("Sets", "RIR", [
    "3 – 2",
    "2,5-3",
    "4/10",
    "4 of 10",
    "4 von 10",
    0,
    10,
    "1-2-3",
    "12-10",
    "2.25-3.25",
    " 2-3 ",
  ]);
  expect(reserve.reading.records.map(({ repsInReserve }) => repsInReserve)).toEqual([
    2,
    2.5,
    4,
    4,
    4,
    0,
    10,
    null,
    10,
    2.25,
    2,
  ]);
  expect(told(reserve)).toEqual(["9 not-a-number"]);
  // Of a range the harder end: of two loads the higher is the careful one.
  const exertion = oneColumn("Runs", "Exertion", ["10", "0", "11", "5-6", "6,5 – 7"]);
  expect(exertion.reading.records.map(({ exertion }) => exertion)).toEqual([10, 0, null, 6, 7]);
  const none = oneColumn("Sets", "Reps", ["five", true, new Date(2026, 4, 5)]);
  expect(none.reading.issues.map(({ code, facts }) => [code, facts])).toEqual([
    ["not-a-number", { heading: "Reps" }],
    ["not-a-number", { heading: "Reps" }],
    ["date-in-number", { heading: "Reps" }],
  ]);
  const reps = oneColumn("Sets", "Reps", ["4-5", 2.5, "2.5", 5, "5", 1000, "5?", "4/11", "3/100"]);
  expect(reps.reading.records.map(({ reps }) => reps)).toEqual([
    null,
    null,
    null,
    5,
    5,
    null,
    null,
    null,
    null,
  ]);
  expect(told(reps)).toEqual([
    "2 not-a-number",
    "3 not-whole",
    "4 not-whole",
    "7 implausible",
    "8 unsure 5",
    "9 not-a-number",
    "10 not-a-number",
  ]);
  expect(facts(reps)[1]).toMatchObject({ unit: "", heading: "Reps" });
  expect(facts(reps)[4]).toEqual({ mend: 5, heading: "Reps" });
});

test("a list of speeds in its heading's unit; each piece is judged by itself, bounds included", () => {
  const list = (heading: string, ...cells: unknown[]) => {
    const column = oneColumn("Sets", heading, cells);
    return { read: column.reading.records.map(({ repSpeeds }) => repSpeeds), facts: facts(column) };
  };
  expect(list("Rep speeds", "0.62 0.60 62m/s", 0.61).facts).toMatchObject([{ mendPiece: 0.62 }]);
  expect(list("Rep speeds", "0.62 0.60 62m/s", 0.61).facts[0]).not.toHaveProperty("mend");
  expect(list("Rep speeds (cm/s)", "62 60 350 8").read).toEqual([[0.62, 0.6, 3.5, 0.08]]);
  const plain = list("Rep speeds", "0.62 3.5 0.08 3.6 0.07", "0.61 x7 0.60?", "n/a", " ");
  expect(plain.read).toEqual([[0.62, 3.5, 0.08, null, null], [0.61, null, null], [], []]);
  expect(plain.facts).toEqual([
    {
      low: 0.08,
      high: 3.5,
      unit: "m/s",
      piece: "3.6",
      heading: "Rep speeds",
      mendPiece: 0.36,
      mend: "0.62 3.5 0.08 0.36 0.07",
    },
    {
      low: 0.08,
      high: 3.5,
      unit: "m/s",
      piece: "0.07",
      heading: "Rep speeds",
      mendPiece: 0.7,
      mend: "0.62 3.5 0.08 3.6 0.7",
    },
    { piece: "x7", heading: "Rep speeds" },
    { piece: "0.60?", heading: "Rep speeds" },
  ]);
});

test("a list out of bounds before any other is mended by what stands below it", () => {
  const { reading } = oneColumn("Sets", "Rep speeds", ["62 60", 0.61, 0.6]);
  expect(reading.issues.map(({ facts }) => facts.mendPiece)).toEqual([0.62, 0.6]);
});
