import { performanceDays } from "../../../src/coaching/diary/performance-day";
import { symptomDays } from "../../../src/coaching/diary/symptom-day";
import { unusualDays } from "../../../src/coaching/diary/unusual-day";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import { diaryDay, gymDay, seasonOf } from "./constructed";

const day = gymDay(10);
const oddSeason = seasonOf(Array.from({ length: 20 }, (_, s) => (s === 10 ? -9 : 0.5 * (s % 3))));
const race = (daysAgo: number, name = `${daysAgo} days ago`) => ({
  row: 2,
  day: day - daysAgo,
  startMinute: null,
  race: name,
  who: "all",
  distanceKm: 10,
  surface: "road",
  matters: "B" as const,
});
const odd = (diary: readonly DiaryDay[], races: readonly ReturnType<typeof race>[] = []) => {
  const days = unusualDays({ hold: oddSeason, diary, runs: [], races });
  expect(days).toHaveLength(1);
  return days[0]!;
};

test("a day far out in both values is as far as both together say, which is further than either", () => {
  const down = Array.from({ length: 20 }, (_, s) => (s === 10 ? -9 : 0.5 * (s % 3)));
  const hold = seasonOf(down, gymDay, down);
  const together = performanceDays(hold)[10]!;
  const [told] = unusualDays({ hold, diary: [], runs: [], races: [] });
  expect(told!.size).toBeCloseTo(together.size, 12);
  expect(Math.abs(told!.size)).toBeGreaterThan(Math.abs(together.values[0]!.size));
});

test("a day far out in one value beside an ordinary one is as far as that value alone says", () => {
  const calm = Array.from({ length: 20 }, (_, s) => 0.5 * (s % 3));
  const hold = seasonOf(
    calm,
    gymDay,
    calm.map((percent, s) => (s === 10 ? -14 : percent)),
  );
  const [, jump] = performanceDays(hold)[10]!.values;
  const [told] = unusualDays({ hold, diary: [], runs: [], races: [] });
  expect(told).toMatchObject({ size: jump!.size, valuePercent: jump!.percent });
});

test("the latest race of the two weeks up to an unusual day is told, that day's own among them", () => {
  expect(odd([], [race(14)]).race).toEqual({ race: "14 days ago", daysAgo: 14 });
  expect(odd([], [race(15)]).race).toBeNull();
  expect(odd([], [race(9), race(3), race(5)]).race!.daysAgo).toBe(3);
  expect(odd([], [race(0), race(-1)]).race!.daysAgo).toBe(0);
});

test("words of the day and of the day before are told without the spaces around them", () => {
  const { written, privateRows } = odd([
    diaryDay(day - 2, { note: "two days before" }),
    diaryDay(day - 1, { note: "  calf sore " }),
    diaryDay(day, { newToday: "shoes", foodNote: "no breakfast", note: " " }),
    diaryDay(day + 1, { note: "the day after" }),
    diaryDay(day, { note: "private", private: true }),
    diaryDay(day, { private: true }),
  ]);
  expect(written).toEqual([
    { day: day - 1, kind: "note", text: "calf sore", symptoms: ["sore"] },
    { day, kind: "new", text: "shoes", symptoms: [] },
    { day, kind: "food", text: "no breakfast", symptoms: [] },
  ]);
  // A private row without a word hides nothing.
  expect(privateRows).toBe(1);
});

test("an amount one spread from the athlete's other days does not stand out, a little more does", () => {
  const nightsOf = (last: number) =>
    Array.from({ length: 11 }, (_, s) =>
      diaryDay(gymDay(s), { sleepH: s === 10 ? last : s % 4 < 2 ? 7 : 9 }),
    );
  // The Tuesdays before: 7, 9, 7, 9, 7; mean 7.8, squares 3·0.64 + 2·1.44 = 4.8 over 4.
  const spread = Math.sqrt(1.2);
  expect(odd(nightsOf(7.8 - spread + 0.001)).stoodOut).toEqual([]);
  expect(odd(nightsOf(7.8 - spread - 0.001)).stoodOut).toEqual([
    {
      item: "sleep",
      unit: "h",
      value: 7.8 - spread - 0.001,
      usual: expect.closeTo(7.8, 9),
      spreads: expect.closeTo(-1 - 0.001 / spread, 9),
    },
  ]);
});

test("words of pain are looked for in every text of a row, up to the day asked for", () => {
  const rows = [
    diaryDay(day, { newToday: "calf sore" }),
    diaryDay(day + 1, { foodNote: "felt sick" }),
    diaryDay(day + 2, { note: "fever" }),
    // Two texts are not read as one: "no" here does not deny the pain there.
    diaryDay(day - 1, { newToday: "no", note: "pain" }),
  ];
  expect(symptomDays(rows, day + 1)).toEqual([
    { day: day + 1, symptoms: ["sick"], private: false },
    { day, symptoms: ["sore"], private: false },
    { day: day - 1, symptoms: ["pain"], private: false },
  ]);
});
