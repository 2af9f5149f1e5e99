import { isoFromDay } from "../../../src/coaching/calendar/day";
import type { Run } from "../../../src/coaching/record/run";
import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortSet, today } from "./short";

// Weeks across, their weekdays below; athletes and figures are invented.

/** Two weeks of two days each, under two labels. */
const weeks = (first: unknown, second: unknown, days = ["Mon", "Wed", "Mon", "Wed"]) =>
  understandTable(
    "Sets",
    [
      ["Squat 2026", "", "", "", ""],
      ["", first, "", second, ""],
      ["Athlete", ...days],
      ["Ilka", "81x5", "82x5", "83x5", "84x5"],
    ],
    { today },
  ).reading;

test.each([
  ["w/c 4 May", "w/c 11 May"],
  ["w/c  4 May", " w/c 11 May"],
  ["w/c 4 May (easy)", "w/c 11 May (2 races)"],
  ["w/c 4 May* (2 races)", "w/c 11 May\neasy week"],
  ["Wk 19 (easy) (4 May)", "Wk 20 (hard) (11 May)"],
  ["Wk 19 (4/5)", "Wk 20 (11/5)"],
  ["Wk  19: 4 May", "Wk 20:11/5"],
  ["Woche 4.5.", "Woche 20: 11.5."],
  ["Woche vom 4.5.", "Woche ab 11.5."],
])("weeks are labelled “%s” and “%s”", (first, second) => {
  const reading = weeks(first, second);
  expect(reading.records.map(shortSet)).toEqual([
    "05-04 Ilka 1 81x5",
    "05-06 Ilka 1 82x5",
    "05-11 Ilka 1 83x5",
    "05-13 Ilka 1 84x5",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("a label over several weekdays is the Monday's, which tells day from month", () => {
  const reading = weeks("w/c 4/5", "w/c 11/5", ["Tue", "Thu", "Tue", "Thu"]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 81x5",
    "05-07 Ilka 1 82x5",
    "05-12 Ilka 1 83x5",
    "05-14 Ilka 1 84x5",
  ]);
});

test("a Monday after a Wednesday is of no week while no label names the next", () => {
  const reading = weeks("w/c 4 May", "");
  expect(reading.records.map(shortSet)).toEqual(["05-04 Ilka 1 81x5", "05-06 Ilka 1 82x5"]);
  expect(problems(reading)).toEqual(["D3 heading-unknown: Mon", "E3 heading-unknown: Wed"]);
});

test("two columns of one weekday are of the same week, as of a morning and an evening", () => {
  const reading = weeks("w/c 4 May", "w/c 11 May", ["Mon", "Mon", "Mon", "Wed"]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-04 Ilka 1 81x5",
    "05-04 Ilka 1 82x5",
    "05-11 Ilka 1 83x5",
    "05-13 Ilka 1 84x5",
  ]);
});

test("a week that begins on no day of the calendar is told at its label, and none of its cells is read", () => {
  const reading = weeks("w/c 31/31", "w/c 11/5");
  expect(reading.records.map(shortSet)).toEqual(["05-11 Ilka 1 83x5", "05-13 Ilka 1 84x5"]);
  expect(problems(reading)).toEqual(["B2 not-a-day: w/c 31/31"]);
});

test("a week's sum beside its weekdays is no run of the Monday", () => {
  const { reading } = understandTable(
    "Runs",
    [
      ["Runs 2026", "", "", "", ""],
      ["", "w/c 4 May", "", "", "w/c 11 May"],
      ["Athlete", "Mon", "Wed", "km", "Mon"],
      ["Ilka", "8 km", "9 km", 17, "7 km"],
    ],
    { today },
  );
  const run = ({ day, km }: Run) => `${isoFromDay(day)} ${km}`;
  expect(reading.records.map(run)).toEqual(["2026-05-04 8", "2026-05-06 9", "2026-05-11 7"]);
  expect(problems(reading)).toEqual(["D3 heading-unknown: km"]);
});

test("a day's note stands in the column under its own date, once and of that week alone", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Squat 2026", "", "", "", ""],
      ["", "5/5", "", "28/5", ""],
      ["Athlete", "note", "kg", "note", "kg"],
      ["Ilka", "tired", 80, "good", 81],
    ],
    { today },
  );
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka work 80x?", "05-28 Ilka work 81x?"]);
  expect(notes(reading)).toEqual(["B4 Ilka: tired", "D4 Ilka: good"]);
  expect(reading.notes?.map(({ day }) => isoFromDay(day!))).toEqual(["2026-05-04", "2026-05-25"]);
});

test("dates and weekdays, or headings under them, need no heading over the names", () => {
  const grid = (...heads: string[]) =>
    understandTable(
      "Sets",
      [
        ["Squat 2026", "", ""],
        ["", "5/5", "28/5"],
        ["", ...heads],
        ["Ilka", 81, 82],
      ],
      { today },
    ).reading;
  for (const heads of [
    ["Tue", "Thu"],
    ["kg", "kg"],
  ]) {
    const reading = grid(...heads);
    expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([81, 82]);
    expect([problems(reading), counts(reading)]).toEqual([[], [1, 0, 0, 3]]);
  }
});

test("what stands under a date that cannot be told is no figure of any day, nor is a column without a heading", () => {
  const reading = (first: string, head: string) =>
    understandTable(
      "Sets",
      [
        ["Squat 2026", "", "", "", "", ""],
        ["", first, "", "", "28/5/2026", ""],
        ["Athlete", head, "m/s", "note", "kg", "m/s"],
        ["Ilka", 80, 0.7, "tired", 81, 0.69],
      ],
      { today },
    ).reading;
  const untold = reading("31/31/2026", "kg");
  expect(untold.records.map(shortSet)).toEqual(["05-28 Ilka work 81x? 0.69"]);
  expect([problems(untold), notes(untold)]).toEqual([["B2 not-a-day: 31/31/2026"], []]);
  const unheaded = reading("5/5/2026", "");
  expect(unheaded.records.map(({ loadKg }) => loadKg)).toEqual([null, 81]);
  expect(problems(unheaded)).toContain("B2 heading-unknown: 5/5/2026");
});

test("weeks that begin on Sunday have it before their Monday, with the date of either over them", () => {
  const week = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
  const blank = Array(6).fill("");
  const days = (first: string, second: string) =>
    understandTable(
      "Sets",
      [
        ["", first, ...blank, second, ...blank],
        ["Squat", ...week, ...week],
        ["Ilka", "3x5 60", "", "", "", "", "", "1x5 65", "", "1x3 70", "", "", "", "", ""],
      ],
      { today },
    ).reading.records.map(shortSet);
  const expected = [
    "05-03 Ilka 1 60x5",
    "05-03 Ilka 2 60x5",
    "05-03 Ilka 3 60x5",
    "05-09 Ilka 1 65x5",
    "05-11 Ilka 1 70x3",
  ];
  // 3 May 2026 is a Sunday.
  expect(days("Wk 1 (3/5/26)", "Wk 2 (10/5/26)")).toEqual(expected);
  expect(days("w/c 4 May", "w/c 11 May")).toEqual(expected);
});

const sundayWeek = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const runsOf = (cells: readonly (readonly unknown[])[]) => {
  const { reading } = understandTable("Runs", cells, { today, title: "Run plan" });
  return (reading.records as readonly Run[]).map(
    ({ day, minutes, athlete }) => `${isoFromDay(day)} ${athlete} ${minutes}`,
  );
};

test("a week that begins on Sunday is its label's Sunday and the six days after it", () => {
  const days = (label: string) => [
    `${label} Ilka 10`,
    ...[8, 9, 10, 11, 12, 13].map(
      (date, at) => `2026-06-${String(date).padStart(2, "0")} Ilka ${20 + 10 * at}`,
    ),
  ];
  const row = ["Ilka", "10 min", "20 min", "30 min", "40 min", "50 min", "60 min", "70 min"];
  // The label above the weekdays, or beside them; it may name the Sunday or the Monday.
  expect(runsOf([["", "Week of 7 June"], ["Name", ...sundayWeek], row])).toEqual(
    days("2026-06-07"),
  );
  expect(runsOf([["Week of 7 June", ...sundayWeek], row])).toEqual(days("2026-06-07"));
  expect(runsOf([["Week of 8 June", ...sundayWeek], row])).toEqual(days("2026-06-07"));
  // Its Sunday tells month from day: 7 June 2026 is one, 6 July is none.
  expect(runsOf([["Week of 6/7", ...sundayWeek], row])).toEqual(days("2026-06-07"));
});

test("weeks labelled beside their weekdays stand one under another, each with its own athletes", () => {
  expect(
    runsOf([
      ["Week of 1 June", "Mon", "Wed", "Fri"],
      ["Ilka", "40 min", "50 min", "60 min"],
      ["Week of 8 June", "Mon", "Wed", "Fri"],
      ["Ilka", "41 min", "51 min", "61 min"],
    ]),
  ).toEqual([
    "2026-06-01 Ilka 40",
    "2026-06-03 Ilka 50",
    "2026-06-05 Ilka 60",
    "2026-06-08 Ilka 41",
    "2026-06-10 Ilka 51",
    "2026-06-12 Ilka 61",
  ]);
});
