import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { nearYear } from "../../../src/rows/column/near-year";
import { understandTable } from "../../../src/rows/read-table";
import { dayFromText } from "../../../src/rows/value/day-text";
import { told } from "./one-column";

/** Sets on the days of one column: each as "2026-05-12 1085", or what is told of it. */
const days = (...cells: unknown[]) => {
  const column = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Load (kg)"],
    ...cells.map((cell, at) => [cell, "Ilka", "squat", 60 + at]),
  ]);
  const read = column.reading.records.map(({ day, minute }) =>
    minute === null ? isoFromDay(day) : `${isoFromDay(day)} ${minute}`,
  );
  return [...read, ...told(column)];
};

test("rows may be of the years 1990 to 2100, as dates and as text", () => {
  const date = (year: number) => new Date(year, 5, 1);
  expect(days(date(1990), date(2100), "1990-06-01", "2100-06-01")).toEqual([
    "1990-06-01",
    "2100-06-01",
    "1990-06-01",
    "2100-06-01",
  ]);
  expect(days(date(1989), date(2101), "1989-06-01", "2101-06-01")).toEqual([
    "2 day-implausible",
    "3 day-implausible",
    "4 day-implausible",
    "5 day-implausible",
  ]);
});

test("a day's number in place of the day is told with its day, other numbers are none", () => {
  expect(days(30_000, 79_999, 46_154.75, 29_999, 80_000, Number.NaN)).toEqual([
    "2 day-is-number 1982-02-18",
    "3 day-is-number 2119-01-10",
    "4 day-is-number 2026-05-12",
    "5 not-a-day",
    "6 not-a-day",
    "7 not-a-day",
  ]);
});

test("a date's time of day is the set's, midnight is none; the next row starts anew", () => {
  const at = (hour: number, minute: number) => new Date(2026, 4, 12, hour, minute);
  expect(
    days(at(18, 5), at(18, 5), at(0, 0), "2026-05-12 07:10", "2026-05-12", "2026-05-12"),
  ).toEqual([
    "2026-05-12 1085",
    "2026-05-12 1085",
    "2026-05-12",
    "2026-05-12 430",
    "2026-05-12",
    "2026-05-12",
  ]);
  expect(days("2026-05-12 07:10", "2026-05-12 07:10")).toEqual([
    "2026-05-12 430",
    "2026-05-12 430",
  ]);
});

test("a mark in the first row repeats nothing, and one below a row left out what stands above both", () => {
  expect(days('"', "2026-05-12")).toEqual(["2026-05-12", "2 needed-blank"]);
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Load (kg)"],
    ["2026-05-12", "Ilka", "squat", 80],
    ["soon", "Ilka", "squat", '"'],
    ["2026-05-12", "Ilka", "squat", '"'],
  ]);
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([80, 80]);
});

test("under a merged day that cannot be read the rows below it are told too", () => {
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Load (kg)"],
    ["2026-05-12", "Ilka", "squat", 80],
    ["", "Kofi", "squat", 90],
    ["soon", "Ilka", "squat", 80],
    ["", "Kofi", "squat", 90],
  ]);
  expect(reading.records.map(({ row }) => row)).toEqual([2, 3]);
  expect(told({ reading })).toEqual(["4 not-a-day", "5 needed-blank"]);
});

test("the two days that a date may be are told", () => {
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Load (kg)"],
    ["4/5/2026", "Ilka", "squat", 60],
  ]);
  expect(reading.issues).toMatchObject([
    {
      code: "date-order-unsettled",
      dropsRow: true,
      facts: { heading: "Date", either: "2026-05-04", or: "2026-04-05" },
    },
  ]);
});

test.each([
  ["a date past the twelfth", ["4/5/2026", "13/5/2026"], "2026-05-04"],
  ["a date past the twelfth in December", ["4/5/2026", "13/12/2026"], "2026-05-04"],
  ["a month that cannot be one, in December", ["4/5/2026", "12/13/2026"], "2026-04-05"],
  ["a month that cannot be one", ["4/5/2026", "5/13/2026"], "2026-04-05"],
  ["the twelfth on both sides says nothing", ["4/5/2026", "12/12/2026"], null],
  ["neither side can be a month", ["4/5/2026", "13/14/2026"], null],
  ["both ways in one column", ["4/5/2026", "13/5/2026", "5/13/2026"], null],
  // 4 May 2026 is a Monday, 5 April 2026 a Sunday.
  ["the weekday of the day", ["Mon 4/5/2026"], "2026-05-04"],
  ["the weekday of the month", ["Sun 4/5/2026"], "2026-04-05"],
  ["a weekday that is neither", ["Fri 4/5/2026"], null],
  ["the weekday, with the year of another row", ["Mon 4/5", "2026-05-01"], "2026-05-04"],
  ["points in another row", ["4/5/2026", "6.7.2026"], "2026-05-04"],
])("the order of day and month by %s", (_, cells, first) => {
  expect(days(...cells)).toContain(first ?? "2 date-order-unsettled");
});

test("one hand wrote all columns: days from settle days until, unless they differ among themselves", () => {
  const spell = (from: string, until: string) => {
    const { reading } = understandTable("Availability", [
      ["Athlete", "From", "Until", "May do"],
      ["Ilka", "4/5/2026", "5/6/2026", "out"],
      ["Kofi", from, until, "out"],
    ]);
    return reading.records.map(({ from, until }) => [isoFromDay(from), until && isoFromDay(until)]);
  };
  expect(spell("4/6/2026", "13/6/2026")).toEqual([
    ["2026-05-04", "2026-06-05"],
    ["2026-06-04", "2026-06-13"],
  ]);
  expect(spell("4/13/2026", "7/8/2026")[0]).toEqual(["2026-04-05", "2026-05-06"]);
  // A column that settles it for itself hears no other.
  const own = understandTable("Availability", [
    ["Athlete", "From", "Until", "May do"],
    ["Ilka", "4/13/2026", "5/6/2026", "out"],
    ["Kofi", "4/14/2026", "13/6/2026", "out"],
  ]).reading;
  expect(own.records.map(({ until }) => until && isoFromDay(until))).toEqual([
    "2026-06-05",
    "2026-06-13",
  ]);
  expect(spell("4/6/2026", "7/8/2026")).toEqual([]);
});

test("a day that may be missing: blanks and dashes say nothing, other words are told and the row stays", () => {
  const { reading } = understandTable("Availability", [
    ["Athlete", "From", "Until", "May do"],
    ...["", "n/a", "soon", 12, "2026-05-20", true].map((until, at) => [
      `Ilka ${at}`,
      "2026-05-12",
      until,
      "out",
    ]),
  ]);
  expect(reading.records.map(({ until }) => until)).toEqual([
    null,
    null,
    null,
    null,
    dayFromIso("2026-05-20"),
    null,
  ]);
  expect(reading.issues.map(({ cell, code, dropsRow }) => [cell, code, dropsRow])).toEqual([
    ["C4", "not-a-day", false],
    ["C5", "not-a-day", false],
    ["C7", "not-a-day", false],
  ]);
  const open = understandTable("Availability", [
    ["Athlete", "From", "May do"],
    ["Ilka", "2026-05-12", "out"],
  ]).reading;
  expect(open.records.map(({ until }) => until)).toEqual([null]);
});

test("days without a year follow the row before them over New Year, and the column's year at first", () => {
  expect(days("12 May", new Date(2025, 5, 1))).toEqual(["2025-05-12", "2025-06-01"]);
  expect(days("28 Dec", "30 Dec 2025", "2 Jan", '"', "30 Dec")).toEqual([
    "2025-12-28",
    "2025-12-30",
    "2026-01-02",
    "2026-01-02",
    "2025-12-30",
  ]);
  expect(days("12 May 2024", "12 May 2026", "20 May").at(-1)).toBe("2026-05-20");
  expect(days("20 Dec", new Date(2025, 11, 21), new Date(2026, 0, 5))[0]).toBe("2025-12-20");
  expect(days(new Date(2026, 0, 4), "5 Jan", new Date(2027, 0, 4), "5 Jan")).toEqual([
    "2026-01-04",
    "2026-01-05",
    "2027-01-04",
    "2027-01-05",
  ]);
});

test.each([
  ["12 May", null, null, null],
  ["12 May", null, 2024, 2024],
  ["2 Jan", "2025-12-30", 2020, 2026],
  ["30 Dec", "2026-01-02", 2020, 2025],
  ["13/1", "2025-12-30", 2020, 2026],
  ["1/13", "2025-12-30", 2020, 2026],
  ["2 Jul", "2026-01-01", 2020, 2026],
  ["29 Feb", "2026-03-01", 2020, 2026],
  ["30 Jun", "2026-01-01", 2020, 2026],
  ["12/6", "2026-01-05", 2020, 2026],
  ["6/12", "2026-01-05", 2020, 2025],
  ["5/12", "2026-06-10", 2020, 2026],
  ["6/30", "2025-12-25", 2020, 2025],
])("“%s” after %p, in a column of %p, is of %p", (text, before, year, near) => {
  const earlier = before === null ? null : dayFromIso(before);
  expect(nearYear(dayFromText(text)!, earlier, year)).toBe(near);
});

test("below a day that cannot be read, one without a year still follows the last that was", () => {
  const [december, old] = [new Date(2025, 11, 30), new Date(1989, 5, 1)];
  expect(days(december, old, "2 Jan")).toEqual(["2025-12-30", "2026-01-02", "3 day-implausible"]);
  expect(days(december, "", "2 Jan")).toContain("2026-01-02");
});
