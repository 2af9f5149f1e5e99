import { highSoreness } from "../../../src/coaching/diary/high-soreness";
import { diaryDay } from "./constructed";

const asOf = 100;
/** Soreness of the days that end on the day asked for. */
const diary = (...soreness: readonly (number | null)[]) =>
  soreness.map((value, at) => diaryDay(asOf - soreness.length + 1 + at, { soreness: value }));
const of = (...soreness: readonly (number | null)[]) => highSoreness(diary(...soreness), asOf);

test("soreness two points over the athlete's own mean in the last two days is told, the latest", () => {
  // Means of 2.25 and 2.125: two points more are 4.25 and 4.125.
  expect(of(2, 2, 2, 2, 2, 2, 1, 5)).toEqual({ day: 100, value: 5 });
  expect(of(2, 2, 2, 2, 2, 1, 5, 1)).toEqual({ day: 99, value: 5 });
  expect(of(2, 2, 2, 2, 2, 2, 1, 4)).toBeNull();
  expect(of(2, 2, 2, 2, 2, 2, 6, 6)).toEqual({ day: 100, value: 6 });
  // Two points over are enough: the mean of eight days at 1 and one at 3.25 is 1.25.
  expect(of(1, 1, 1, 1, 1, 1, 1, 1, 3.25)).toEqual({ day: 100, value: 3.25 });
});

test("three days back is past, and so is what nobody wrote down", () => {
  expect(of(2, 2, 2, 2, 2, 6, 1, 1)).toBeNull();
  expect(of(2, 2, 2, 2, 2, 2, 1, 1, 6, null)).toEqual({ day: 99, value: 6 });
});

test("with fewer than eight days there is no usual to hold it against", () => {
  expect(of(1, 1, 1, 1, 1, 1, 6)).toBeNull();
  expect(of(1, 1, 1, 1, 1, 1, 1, 6)).toEqual({ day: 100, value: 6 });
});
