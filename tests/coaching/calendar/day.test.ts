import fc from "fast-check";
import {
  dateOfDay,
  dayFromDate,
  dayFromIso,
  isoFromDay,
  mondayOf,
  weekdayOfDay,
} from "../../../src/coaching/calendar/day";

test("only a day written 2026-05-12 is one", () => {
  expect(
    ["2026-05-12", "2026-13-01", "2026-02-30", "12 May", "", "2026-05-12 ", "x2026-05-12"].map(
      dayFromIso,
    ),
  ).toEqual([20_585, null, null, null, null, null, null]);
});

test("a date that does not exist is none: month, date of the month, leap years", () => {
  expect(dayFromDate(1970, 1, 1)).toBe(0);
  expect(dayFromDate(1969, 12, 31)).toBe(-1);
  expect(dayFromDate(2024, 2, 29)).toBe(19_782);
  // 1900 was no leap year, 2000 was (the Gregorian rule; ISO 8601).
  expect([dayFromDate(1900, 2, 29), dayFromDate(2026, 2, 29), dayFromDate(2026, 4, 31)]).toEqual([
    null,
    null,
    null,
  ]);
  expect(dayFromDate(2000, 2, 29)).toBe(11_016);
  for (const [month, date] of [
    [0, 1],
    [13, 1],
    [1, 0],
  ] as const) {
    expect(dayFromDate(2026, month, date)).toBeNull();
  }
});

test("a year of two digits is not taken for one of the last century", () => {
  expect(dayFromDate(26, 5, 12)).toBeNull();
});

test("weeks begin on Monday: 1 January 1970 was a Thursday, 6 April 2026 a Monday", () => {
  expect([0, -1, -3, -4].map(weekdayOfDay)).toEqual([3, 2, 0, 6]);
  expect([20_549, 20_555].map(weekdayOfDay)).toEqual([0, 6]);
  expect([20_549, 20_552, 20_555, 20_556].map(mondayOf)).toEqual([20_549, 20_549, 20_549, 20_556]);
  expect(mondayOf(-4)).toBe(-10);
});

test("a day's date is that of the calendar, written with all its digits", () => {
  expect(dateOfDay(20_585)).toEqual({ year: 2026, month: 5, date: 12 });
  expect(isoFromDay(20_585)).toBe("2026-05-12");
  expect(isoFromDay(20_454)).toBe("2026-01-01");
});

test("every day written and read again is the same day", () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 200_000 }), (day) => {
      const { year, month, date } = dateOfDay(day);
      expect(dayFromIso(isoFromDay(day))).toBe(day);
      expect(dayFromDate(year, month, date)).toBe(day);
    }),
  );
});
