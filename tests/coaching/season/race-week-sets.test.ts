import { raceWeekSets } from "../../../src/coaching/season/race-week-sets";

test("half of the sets, more of them on a tie", () => {
  expect([1, 2, 3, 4, 5].map((sets) => raceWeekSets(sets, 0.5))).toEqual([1, 1, 2, 2, 2]);
  expect(raceWeekSets(3, 1)).toBe(3);
});

test("a share that is itself a cut of 41 to 60 % takes a number whose cut is one too", () => {
  // Of five sets two are a cut of 60 %, three one of 40 %.
  expect(raceWeekSets(5, 0.59)).toBe(2);
  expect(raceWeekSets(5, 0.4)).toBe(2);
  // Kept a little more, it is no such cut, and the nearest number counts.
  expect(raceWeekSets(5, 0.6)).toBe(3);
});
