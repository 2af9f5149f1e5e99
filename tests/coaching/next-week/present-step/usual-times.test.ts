import { usualWeekdays } from "../../../../src/coaching/next-week/present-step/usual-times";
import { day } from "../written-squad";

const days = (...all: string[]) => all.map((one) => day(`2026-05-${one}`));

test("days to which races moved the gym are no usual ones, where there are others", () => {
  // Tuesdays and Thursdays; Mondays and Wednesdays in two weeks of races.
  const all = days("05", "07", "11", "13", "18", "20", "26");
  const isOwnDay = (one: number) => one < day("2026-05-11") || one > day("2026-05-24");
  expect(usualWeekdays(all, isOwnDay)).toEqual([1, 3]);
  expect(usualWeekdays(all)).toEqual([1, 0, 2, 3]);
  expect(usualWeekdays(all, () => false)).toEqual([1, 0, 2, 3]);
});
