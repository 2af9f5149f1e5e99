import { usualRules } from "../../src/coaching/record/squad-rules";
import { raceWeekSets } from "../../src/coaching/season/race-week-sets";
import published from "./taper.json";

const { least, most } = published.cut;

test("the published range, as arithmetic on a week", () => {
  const { volume, left } = published.weekly;
  expect(volume * (1 - least)).toBeCloseTo(left[0]!, 9);
  expect(volume * (1 - most)).toBeCloseTo(left[1]!, 9);
});

test.each([2, 4, 5, 6, 7, 8, 9, 10])("%i sets are cut by 41 to 60 %% before an A race", (sets) => {
  const cut = 1 - raceWeekSets(sets, usualRules.raceWeekSets) / sets;
  expect(cut).toBeGreaterThanOrEqual(least);
  expect(cut).toBeLessThanOrEqual(most + 1e-9);
});

test("a share of the coach's own outside the range is kept to, as near as whole sets come", () => {
  expect([0.9, 0.8, 0.7].map((kept) => raceWeekSets(5, kept))).toEqual([5, 4, 4]);
  expect([0.7, 0.3, 0.2].map((kept) => raceWeekSets(10, kept))).toEqual([7, 3, 2]);
  expect([0.45, 0.55].map((kept) => raceWeekSets(5, kept))).toEqual([2, 2]);
});

test("three sets have no whole number in the range: two stay, the nearer to half with more kept", () => {
  // One set left is a cut of 67 %, two are a cut of 33 %: both are 17 points from half.
  expect(raceWeekSets(3, 0.5)).toBe(2);
  expect(raceWeekSets(3, 1)).toBe(3);
});
