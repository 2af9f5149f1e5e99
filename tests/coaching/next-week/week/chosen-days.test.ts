import { chosenDays } from "../../../../src/coaching/next-week/week/chosen-days";
import type { DayChoice } from "../../../../src/coaching/season/gym-days";
import { day } from "../written-squad";

const monday = day("2026-06-15");
const choice = (weekday: number): DayChoice => ({
  day: monday + weekday,
  minute: 17 * 60,
  refused: null,
  cost: weekday,
});
const all = [0, 1, 2, 3, 4, 5, 6].map(choice);
const chosen = (best: readonly number[], set: number | undefined, wanted: number) =>
  chosenDays(
    { best: best.map(choice), second: [], all },
    set === undefined ? undefined : monday + set,
    wanted,
  ).map((one) => one.day - monday);

test("without a day set by the coach the best days stand", () => {
  expect(chosen([1, 4], undefined, 2)).toEqual([1, 4]);
});

test("the day set comes first, then the best days two days or more from it, no more than wanted", () => {
  expect(chosen([0, 4], 2, 2)).toEqual([2, 0]);
  expect(chosen([0, 4], 2, 1)).toEqual([2]);
  expect(chosen([1, 4], 2, 2)).toEqual([2, 4]);
  expect(chosen([1, 4], 4, 2)).toEqual([4, 1]);
  expect(chosen([1, 3], 2, 2)).toEqual([2]);
});
