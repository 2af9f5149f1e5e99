import { dayFromIso } from "../../src/coaching/calendar/day";
import { usualRules } from "../../src/coaching/record/squad-rules";
import type { Cells } from "../../src/rows/cells";
import { nameLink } from "../../src/rows/name/near-name";
import { squadRules } from "../../src/rows/table/read-rules";
import { dayFromText, settleDay } from "../../src/rows/value/day-text";
import { minuteOfDay } from "../../src/rows/value/minute-of-day";
import * as rows from "./readers";

const day = (iso: string) => dayFromIso(iso) as number;
const issues = (reading: { issues: readonly { code: string; cell: string }[] }) =>
  reading.issues.map(({ code, cell }) => `${cell} ${code}`);

/** A table of one odd column: a heading, then the cells under it beside good ones. */
const races = (heading: string, ...cells: unknown[]) =>
  rows.readRaces([
    ["Date", "Race", heading],
    ...cells.map((cell, i) => [`2026-05-${String(i + 3).padStart(2, "0")}`, `R${i + 1}`, cell]),
  ] as Cells);

test("race distances are read in the words and units that races are written in", () => {
  const reading = races(
    "Distance",
    "marathon",
    "Half Marathon",
    "10 km",
    "5000 m",
    "10k",
    "3,000 m",
    "1 mile",
    "2 mi",
    "3000 m steeple",
    1500,
    8,
    "",
    false,
    "n/a",
  );
  expect(issues(reading)).toEqual([]);
  expect(reading.records.map(({ distanceKm }) => distanceKm)).toEqual([
    42.195,
    21.0975,
    10,
    5,
    10,
    3,
    1.609344,
    3.218688,
    3,
    1.5,
    8,
    null,
    null,
    null,
  ]);
});

test("a distance that could be metres or kilometres is asked about, one nobody races reported", () => {
  const reading = races("Distance", 60, 100, 200, "300 km", "0.01 km", "far", new Date(2026, 4, 1));
  expect(issues(reading)).toEqual([
    "C2 distance-unsettled",
    "C3 distance-unsettled",
    "C4 distance-unsettled",
    "C5 implausible",
    "C6 implausible",
    "C7 not-a-number",
    "C8 not-a-number",
  ]);
  expect(reading.records.every(({ distanceKm }) => distanceKm === null)).toBe(true);
});

test.each([
  ["Distance (km)", 100, 100],
  ["Distance (m)", 100, 0.1],
  ["Distance (mi)", 100, 160.9344],
  ["Distance (m)", "800", 0.8],
])("under “%s” %p is settled by its heading", (heading, cell, km) => {
  const reading = races(heading, cell);
  expect(issues(reading)).toEqual([]);
  expect(reading.records[0]!.distanceKm).toBeCloseTo(km as number, 9);
});

test("a race without a day or a name is reported, and the same race twice counts once", () => {
  const reading = rows.readRaces([
    ["Date", "Race", "Who", "Matters", "Start"],
    ["", "R1", "", "A", ""],
    ["2026-05-03", "", "", "A", ""],
    ["2026-05-03", "R2", "Alle", "main", "18:30"],
    ["2026-05-03", "R2", "Alle", "main", "18:30"],
    ["2026-05-10", "R3", "Ilka Brandmoor", "perhaps", ""],
  ]);
  expect(issues(reading)).toEqual([
    "A2 needed-blank",
    "B3 needed-blank",
    "A5 doubled-row",
    "D6 word-unknown",
  ]);
  expect(
    reading.records.map(({ race, who, matters, startMinute }) => [race, who, matters, startMinute]),
  ).toEqual([
    ["R2", "all", "A", 1110],
    ["R3", "Ilka Brandmoor", null, null],
  ]);
});

test("ages: a birth year, a date, “U18”, a mark; anything else is reported and no age is guessed", () => {
  const reading = rows.readAthletes([
    ["Athlete", "Birth year", "Under 18"],
    ["Ada Ruhl", 2001, ""],
    ["Ben Ruhl", "2009", "yes"],
    ["Cal Ruhl", new Date(2010, 2, 1), 1],
    ["Dee Ruhl", "U18", ""],
    ["Eli Ruhl", "12/05/2008", 0],
    ["Fay Ruhl", "young", "perhaps"],
    ["Gus Ruhl", 19, "n/a"],
    ["Hal Ruhl", "-", 7],
    ["Ida Ruhl", "no", ""],
  ]);
  expect(issues(reading)).toEqual([
    "C7 not-yes-or-no",
    "B7 not-a-birth-year",
    "B8 not-a-birth-year",
    "C9 not-yes-or-no",
  ]);
  expect(reading.records.map(({ birthYear, under18 }) => [birthYear, under18])).toEqual([
    [2001, null],
    [2009, true],
    [2010, true],
    [null, true],
    [2008, false],
    [null, null],
    [null, null],
    [null, null],
    [null, false],
  ]);
});

test("a supervisor counts from a day that is not in doubt; otherwise nobody is counted", () => {
  const reading = rows.readAthletes([
    ["Athlete", "Supervisor"],
    ["Ada Ruhl", "M. Okel from 2026-05-05"],
    ["Ben Ruhl", "M. Okel (since 5 May 2026)"],
    ["Cal Ruhl", "M. Okel ab 25.5.2026"],
    ["Dee Ruhl", "M. Okel from 5/4/2026"],
    ["Eli Ruhl", "M. Okel from next week"],
    ["Fay Ruhl", "n/a"],
    ["Gus Ruhl", "M. Okel"],
    ["", ""],
    ["Ada  Ruhl", "M. Okel"],
    ["Hal Ruhl", "M. Okel from 5/25/2026"],
  ]);
  expect(issues(reading)).toEqual(["B5 supervisor-day", "B6 supervisor-day", "A10 athlete-twice"]);
  expect(
    reading.records.map(({ supervisor, supervisorFrom }) => [supervisor, supervisorFrom]),
  ).toEqual([
    ["M. Okel", day("2026-05-05")],
    ["M. Okel", day("2026-05-05")],
    ["M. Okel", day("2026-05-25")],
    ["", null],
    ["", null],
    ["", null],
    ["M. Okel", null],
    ["M. Okel", day("2026-05-25")],
  ]);
});

test("rules are read as fractions, percents, words for yes, and refused by cell otherwise", () => {
  const reading = rows.readRules([
    ["Rule", "Value"],
    ["falseFlagRate", "20 %"],
    ["holdWeeks", "2 weeks"],
    ["stepBySession", true],
    ["holdWeeks", 3],
    ["no such rule", 3],
    ["seasonWeeks", ""],
    ["baselineSessions", "six"],
    ["largestStep", 10],
    ["", 4],
    ["firstHold", new Date(2026, 4, 1)],
    ["hoursAfterTen", "48?"],
  ]);
  expect(issues(reading)).toEqual([
    "A5 rule-twice",
    "A6 rule-unknown",
    "B7 needed-blank",
    "B8 not-a-number",
    "B9 rule-out-of-bounds",
    "A10 needed-blank",
    "B11 not-a-number",
    "B12 not-a-number",
  ]);
  expect(reading.issues[4]!.facts.mend).toBe(0.1);
  expect(squadRules(reading.records)).toEqual({
    ...usualRules,
    falseFlagRate: 0.2,
    holdWeeks: 2,
    stepBySession: 1,
  });
});

test("who may do what: nobody is fit by accident", () => {
  const reading = rows.readAvailability([
    ["Athlete", "From", "Until", "May do", "By", "Pain"],
    ["Ada Ruhl", "2026-05-03", "2026-05-10", "krank", "M. Okel", 4],
    ["", "2026-05-03", "", "out", "", ""],
    ["Ben Ruhl", "", "", "out", "", ""],
    ["Cal Ruhl", "2026-05-03", "", "better", "", ""],
    ["Dee Ruhl", "2026-05-03", "", "", "", ""],
    ["Eli Ruhl", "2026-05-03", "2026-05-01", "out", "", ""],
    ["Fay Ruhl", "2026-05-03", "", "freigegeben", "Dr Lind", 12],
    ["Ada Ruhl", "2026-05-03", "2026-05-10", "krank", "M. Okel", 4],
  ]);
  expect(issues(reading)).toEqual([
    "A3 needed-blank",
    "B4 needed-blank",
    "D5 word-unknown",
    "D6 needed-blank",
    "C7 ends-before-start",
    "F8 implausible",
    "A9 doubled-row",
  ]);
  expect(reading.records.map(({ mayDo, pain }) => [mayDo, pain])).toEqual([
    ["out", 4],
    ["cleared", null],
  ]);
});

test("plates: a mass stands once, with its thickness", () => {
  const reading = rows.readPlates([
    ["Mass (kg)", "Thickness (cm)", "Owned"],
    [20, 3.2, 4],
    [20, 3.2, 4],
    [20, 3.6, 2],
    ["", 2, 2],
    [15, "", 2],
    ["n/a", 2, 2],
    [10, "thick", 2],
    [5, 2.4, 2.5],
    [2.5, 1.8, "few"],
  ]);
  expect(issues(reading)).toEqual([
    "A3 doubled-row",
    "A4 plate-twice",
    "A5 needed-blank",
    "B6 needed-blank",
    "A7 needed-blank",
    "B8 not-a-number",
    "C9 not-whole",
    "C10 not-a-number",
  ]);
  expect(reading.records.map(({ massKg, owned }) => [massKg, owned])).toEqual([
    [20, 4],
    [5, null],
    [2.5, null],
  ]);
});

test("lengths of sleep and of runs as they are typed", () => {
  const sleep = rows.readDiary([
    ["Date", "Athlete", "Sleep (h)"],
    ...[
      7.5,
      "7:30",
      "7h30",
      "8 h",
      "450 min",
      new Date(1899, 11, 30, 7, 15),
      "''",
      75,
      "7?",
      "long",
      "n/a",
      false,
      new Date(2026, 4, 1),
      "25 h",
    ].map((cell, i) => [`2026-05-${String(i + 3).padStart(2, "0")}`, "Ilka Brandmoor", cell]),
  ] as Cells);
  expect(issues(sleep)).toEqual([
    "C9 implausible",
    "C10 unsure",
    "C11 not-a-number",
    "C14 implausible",
    "C15 implausible",
  ]);
  expect(sleep.issues[0]!.facts.mend).toBe(7.5);
  expect(sleep.records.map(({ sleepH }) => sleepH)).toEqual([
    7.5,
    7.5,
    7.5,
    8,
    7.5,
    7.25,
    7.25,
    null,
    null,
    null,
    null,
    null,
    null,
    null,
  ]);
  const runs = rows.readRuns([
    ["Date", "Athlete", "Minutes"],
    ...["1:05:30", "45:30", "1:10", "5:30", "40'", "1 h", 50].map((cell, i) => [
      `2026-05-${String(i + 3).padStart(2, "0")}`,
      "Ilka Brandmoor",
      cell,
    ]),
  ] as Cells);
  expect(issues(runs)).toEqual(["C5 length-unsettled"]);
  expect(runs.records.map(({ minutes }) => minutes)).toEqual([65.5, 45.5, 70, null, 40, 60, 50]);
});

test.each([
  ["12 am", 0],
  ["12 pm", 720],
  ["6 a.m.", 360],
  ["18.30 Uhr", 1110],
  ["18h", 1080],
  ["13 pm", null],
  ["0 am", null],
  ["18", null],
  ["25:00", null],
  ["12:75", null],
  [0.75, 1080],
  [1.5, null],
  [true, null],
])("%p as a time of day is minute %p", (cell, minute) => {
  expect(minuteOfDay(cell)).toBe(minute);
});

test.each([
  ["5 May 26", "2026-05-05"],
  ["May 5, 2026", "2026-05-05"],
  ["Tue 5/5", "2026-05-05"],
  ["5. Mai", "2026-05-05"],
  ["2026/5/5", "2026-05-05"],
  ["2026-05-05T18:00:00.000Z", "2026-05-05"],
  ["30 Feb", null],
])("“%s” as a day of 2026", (text, iso) => {
  expect(settleDay(dayFromText(text)!, "day first", 2026)).toBe(iso === null ? null : day(iso));
});

test.each(["5 Foo", "2-3", "1.08", "soon", "x".repeat(41)])("“%s” is no day", (text) => {
  expect(dayFromText(text)).toBeNull();
});

test.each([
  ["Ilka Brandmoor", "Ilka Brandmor", "spelling"],
  ["Ilka Brandmoor", "Brandmoor Ilka", "order"],
  ["Ilka Brandmoor", "Brandmor Ilka", "spelling"],
  ["Ilka Brandmoor", "I. Brandmoor", "initial"],
  ["Ilka Brandmoor", "Ilka", "part"],
  ["Ilka Brandmoor", "ILKA-BRANDMOOR", "spelling"],
  ["Ilka Brandmoor", "I. B.", null],
  ["Ilka Brandmoor", "Kofi Anstruther", null],
  ["Ilka Brandmoor", "...", null],
])("%s and %s: %s", (one, other, link) => {
  expect(nameLink(one, other)).toBe(link);
});
