import { aroundLevel } from "../../../src/coaching/diary/around-level";
import { performanceDays } from "../../../src/coaching/diary/performance-day";
import { gymDay, seasonOf } from "./constructed";

/** About π/2 of a mean's: the variance of a median. */
const medianVariance = 1.57;

test("a value is held against the median of four before and four after, itself left out", () => {
  // Around the fifth value: 1, 2, 3, 4 and 60, 7, 8, 9; the middle of 4 and 7.
  const [, , , , fifth] = aroundLevel([1, 2, 3, 4, 50, 60, 7, 8, 9, 1000]);
  expect(fifth!.away).toBe(50 - 5.5);
  expect(fifth!.levelVariance).toBeCloseTo(medianVariance / 8, 12);
});

test("at the season's ends there are neighbours on one side, three at least", () => {
  const levels = aroundLevel([10, 1, 2, 3, 4, 99]);
  expect(levels[0]).toEqual({ away: 7.5, fromNearer: 7.5, levelVariance: medianVariance / 4 });
  expect(aroundLevel([10, 1, 2, 3]).map((one) => one?.away)).toEqual([8, -2, -1, 1]);
  expect(aroundLevel([10, 1, 2])).toEqual([null, null, null]);
});

test("missing values are passed over, not counted", () => {
  const levels = aroundLevel([1, null, 2, null, null, 30, 3, null, 4]);
  expect(levels.map((one) => one?.away ?? null)).toEqual([
    -2.5,
    null,
    -1.5,
    null,
    null,
    27.5,
    0,
    null,
    1.5,
  ]);
});

test("beside a lasting change a value is measured from the nearer of the levels before and after", () => {
  const step = aroundLevel([0, 0, 0, 0, 8, 10, 10, 10, 10]);
  // 8 from the level before, 2 under the level after: between them.
  expect(step[4]).toMatchObject({ away: 3, fromNearer: 0 });
  const past = aroundLevel([0, 0, 0, 0, 13, 10, 10, 10, 10]);
  expect(past[4]).toMatchObject({ away: 8, fromNearer: 3 });
  const under = aroundLevel([0, 0, 0, 0, -4, 10, 10, 10, 10]);
  expect(under[4]).toMatchObject({ away: -9, fromNearer: -4 });
  const below = aroundLevel([5, 5, 5, 5, 1, 15, 15, 15, 15]);
  expect(below[4]).toMatchObject({ away: -9, fromNearer: -4 });
  // Three on either side are a level.
  expect(aroundLevel([0, 0, 0, 8, 10, 10, 10, 10])[3]).toMatchObject({ away: -2, fromNearer: 0 });
  expect(aroundLevel([10, 10, 10, 10, 8, 0, 0, 0])[4]).toMatchObject({ away: -2, fromNearer: 0 });
  // Two on one side are no level: the whole distance stands.
  expect(aroundLevel([0, 0, 8, 10, 10, 10, 10])[2]).toMatchObject({ away: -2, fromNearer: -2 });
});

test("a session's size is in the athlete's own wobbles, the level's doubt allowed for", () => {
  const percents = [0, 0, 0, 0, -9, 0, 0, 0, 0];
  const days = performanceDays(seasonOf(percents));
  expect(days.map(({ day }) => day)).toEqual(percents.map((_, s) => gymDay(s)));
  // A wobble of 3 %, and a level from eight neighbours.
  expect(days[4]!.size).toBeCloseTo(-9 / (3 * Math.sqrt(1 + medianVariance / 8)), 12);
  expect(days[4]!.percent).toBe(-9);
});

test("the first session of a slide is counted half: midway between both distances", () => {
  const days = performanceDays(seasonOf([0, 0, 0, 0, 13, 10, 10, 10, 10]));
  expect(days[4]!.size).toBeCloseTo((8 + 3) / 2 / (3 * Math.sqrt(1 + medianVariance / 8)), 12);
});

test("two values of a day are put together as values that err together by 0.4", () => {
  const speed = [0, 0, 0, 0, -9, 0, 0, 0, 0];
  const jump = [0, 0, 0, 0, -3, 0, 0, 0, 0];
  const day = performanceDays(seasonOf(speed, gymDay, jump))[4]!;
  const spread = 3 * Math.sqrt(1 + medianVariance / 8);
  expect(day.percent).toBe(-6);
  expect(day.size).toBeCloseTo(-12 / spread / Math.sqrt(2 + 2 * 0.4), 12);
  expect(day.values.map(({ kind, percent }) => [kind, percent])).toEqual([
    ["bar speed", -9],
    ["jump height", -3],
  ]);
});

test("a session without any value is no day of performance", () => {
  const days = performanceDays(seasonOf([0, 0, null, 0, 0, 0]));
  expect(days.map(({ day }) => day)).toEqual([0, 1, 3, 4, 5].map(gymDay));
});
