import { diaryItems, itemByDay } from "../../../src/coaching/readiness/diary-items";
import { pastValues, pooledSpread } from "../../../src/coaching/readiness/past-values";
import { usualReadinessSettings as usual } from "../../../src/coaching/readiness/readiness-settings";
import { diaryDay } from "../diary/constructed";

const today = 20_600;
const daily = (count: number) =>
  Array.from({ length: count }, (_, at) => ({ day: today - count + 1 + at, value: at }));

test("a day is held against the twenty values before it, and not against itself or a later one", () => {
  const past = pastValues([...daily(30), { day: today + 1, value: 99 }], today, usual);
  // The thirtieth value is today's: 9 to 28 are the twenty before.
  expect(past).toEqual(Array.from({ length: 20 }, (_, at) => 9 + at));
});

test("eight weeks back is as far as is read, to the day", () => {
  const ago = (days: number) => ({ day: today - days, value: days });
  expect(pastValues([ago(57), ago(56), ago(1), ago(0)], today, usual)).toEqual([56, 1]);
});

test("a squad's spread is pooled within athletes, the usual one counting ten", () => {
  // Squares 1 + 1 about 2 and 4 + 0 + 4 about 10; one value by itself says nothing.
  expect(pooledSpread([[1, 3], [8, 10, 12], [50]], 2)).toBeCloseTo(
    Math.sqrt((10 * 4 + 2 + 8) / (10 + 1 + 2)),
    12,
  );
  expect(pooledSpread([], 2)).toBe(2);
});

test("of two rows on a day the later one counts for each item it fills", () => {
  const diary = [
    diaryDay(today, { sleepH: 6, mood: 3 }),
    diaryDay(today, { sleepH: 8 }),
    diaryDay(today + 1, { sleepQuality: 4, stress: 2 }),
  ];
  expect(Object.fromEntries(diaryItems.map((item) => [item, itemByDay(diary, item)]))).toEqual({
    sleep: [{ day: today, value: 8 }],
    "sleep quality": [{ day: today + 1, value: 4 }],
    soreness: [],
    fatigue: [],
    stress: [{ day: today + 1, value: 2 }],
    mood: [{ day: today, value: 3 }],
  });
});
