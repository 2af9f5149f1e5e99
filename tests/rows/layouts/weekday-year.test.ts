import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { understandTable } from "../../../src/rows/read-table";

const read = (today: string | null, ...days: readonly unknown[]) => {
  const { reading } = understandTable(
    "Jumps",
    [
      ["Date", "Athlete", "Test", "Height (cm)"],
      ...days.map((day, at) => [day, "Ilka Brandmoor", "CMJ", 38 + at / 10]),
    ],
    { today: today === null ? null : dayFromIso(today)! },
  );
  return {
    days: reading.records.map(({ day }) => isoFromDay(day)),
    codes: reading.issues.map(({ code }) => code),
  };
};

// 6 April is a Monday in 2020 and 2026 and no year between (the Gregorian calendar).
test.each([
  ["2026-11-26", "2026"],
  ["2026-03-01", "2026"],
  ["2024-11-26", "2020"],
])("days with their weekday tell the year they fall in, asked on %s", (today, year) => {
  const { days, codes } = read(today, "Mon 6 Apr", "Thu 9 Apr", "13 Apr");
  expect(days).toEqual([`${year}-04-06`, `${year}-04-09`, `${year}-04-13`]);
  expect(codes).toEqual([]);
});

test("weekdays that fit no year, or no weekday, tell none", () => {
  expect(read("2026-11-26", "Mon 6 Apr", "Mon 9 Apr").codes).toEqual([
    "year-missing",
    "year-missing",
  ]);
  expect(read("2026-11-26", "6 Apr").codes).toEqual(["year-missing"]);
  expect(read(null, "Mon 6 Apr").codes).toEqual(["year-missing"]);
});

test("a year written in the column goes before what weekdays would say", () => {
  expect(read("2026-11-26", "Mon 6 Apr", "9 Apr 2020").days).toEqual(["2020-04-06", "2020-04-09"]);
});

test("day and month either way round are told by the weekday too", () => {
  expect(read("2026-11-26", "Mon 4/6", "Thu 4/9").days).toEqual(["2026-04-06", "2026-04-09"]);
});
