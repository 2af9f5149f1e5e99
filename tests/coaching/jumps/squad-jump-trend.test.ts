import { squadJumpTrend } from "../../../src/coaching/jumps/squad-jump-trend";
import { testDays } from "../../../src/coaching/jumps/test-day";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { Plate } from "../../../src/coaching/record/plate";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { athleteRow, inventedSeason, jumpAttempt, sessionDay } from "../series/invented-season";

const plates: Plate[] = [
  { row: 2, massKg: 15, thicknessCm: 6, owned: null },
  { row: 3, massKg: 5, thicknessCm: 2, owned: null },
];
const end = sessionDay(29);
const trendOf = (jumps: readonly JumpAttempt[], test = "Box jump") =>
  squadJumpTrend({
    index: squadIndex({ jumps }, end),
    test,
    plates,
    athletes: [],
    rules: usualRules,
  })("Ilka Brandmoor");

test("a jump that falls 8 % slips, with plain means before and since", () => {
  const { jumps } = inventedSeason("Ilka Brandmoor", 30, (s) => (s < 14 ? 1 : 0.92));
  const trend = trendOf(jumps);
  if (!trend.ok) throw new Error(trend.refusal.code);
  const { baselineCm, nowCm, change, smallestChange } = trend.value;
  const first = jumps.filter(({ heightCm }) => heightCm !== null).slice(0, 6);
  expect(trend.value.word).toBe("slipping");
  expect(baselineCm).toBeCloseTo(first.reduce((sum, jump) => sum + jump.heightCm!, 0) / 6, 9);
  expect(change).toBeCloseTo(nowCm! / baselineCm! - 1, 12);
  expect(-change!).toBeGreaterThan(smallestChange!);
});

test("a calm jump holds on its last four days against six", () => {
  const trend = trendOf(inventedSeason("Ilka Brandmoor", 30).jumps);
  expect(trend).toMatchObject({ value: { word: "holding", baselineDays: 6, nowDays: 4 } });
});

test("own dates that hold one or two test days run on to the third: word and figures rest on the same", () => {
  const { jumps } = inventedSeason("Ilka Brandmoor", 30, (s) => (s < 14 ? 1 : 0.92));
  const heights = jumps.filter(({ heightCm }) => heightCm !== null);
  const trend = (to: number, days: number) =>
    squadJumpTrend({
      index: squadIndex({ jumps: heights.slice(0, days) }, end),
      test: "Box jump",
      plates,
      athletes: [athleteRow({ athlete: "Ilka Brandmoor", baselineTo: sessionDay(to) })],
      rules: usualRules,
    })("Ilka Brandmoor");
  const three = [0, 1, 2].reduce((sum, s) => sum + heights[s]!.heightCm!, 0) / 3;
  for (const to of [0, 1, 2]) {
    expect(trend(to, 30)).toMatchObject({
      value: { word: "slipping", baselineDays: 3, baselineCm: expect.closeTo(three, 9) },
    });
    // Of the third test day and one more nothing can be said yet.
    expect(trend(to, 4)).toMatchObject({
      value: { word: "too few rows", baselineDays: 3, nowDays: 1, daysNeeded: 1 },
    });
    expect(trend(to, 5)).toMatchObject({ value: { word: "holding", nowDays: 2 } });
  }
});

test("stacks are read from the gym's plates, highest cleared of the day, with their step said", () => {
  const jumps = Array.from({ length: 12 }, (_, s) => [
    jumpAttempt({ day: sessionDay(s), stackKg: [15, 15, 15] }),
    jumpAttempt({ day: sessionDay(s), stackKg: [15, 15, 15, 5], cleared: s % 2 === 0 }),
  ]).flat();
  const trend = trendOf(jumps);
  expect(trend).toMatchObject({ value: { baselineCm: 19, stepCm: 2 } });
  if (trend.ok) expect(trend.value.notes.map(({ code }) => code)).toContain("read-in-steps");
});

test("the same plates stacked in another order are the same drop, and the same height", () => {
  const thin = [
    [5, 1.2],
    [10, 2.2],
  ].map(([massKg, thicknessCm]) => ({
    row: 2,
    massKg: massKg!,
    thicknessCm: thicknessCm!,
    owned: null,
  }));
  // 1.2 + 2.2 + 1.2 is not 1.2 + 1.2 + 2.2 in floating point.
  const drops = [
    [5, 5, 10],
    [5, 10, 5],
  ].map((dropStackKg) =>
    jumpAttempt({ day: 1, test: "drop jump", dropStackKg, stackKg: dropStackKg, contactS: 0.2 }),
  );
  const [day] = testDays(drops, thin);
  expect(day).toMatchObject({ dropCm: 4.6, heightCm: 4.6, contactS: 0.2 });
  const later = testDays([drops[0]!, { ...drops[1]!, day: 2 }], thin);
  expect(new Set(later.map(({ dropCm }) => dropCm)).size).toBe(1);
});

test("attempts of a day: mean of measured ones, best of stacks; a miss is no height", () => {
  const [measured, stacked] = testDays(
    [
      jumpAttempt({ day: 1, heightCm: 40 }),
      jumpAttempt({ day: 1, heightCm: 44 }),
      jumpAttempt({ day: 2, stackKg: [15, 15] }),
      jumpAttempt({ day: 2, stackKg: [15, 15, 5], cleared: true }),
      jumpAttempt({ day: 2, stackKg: [15, 15, 5, 5], cleared: false }),
    ],
    plates,
  );
  expect(measured).toMatchObject({ heightCm: 42, bestCm: 44, byStack: false, attempts: 2 });
  expect(stacked).toMatchObject({ heightCm: 14, bestCm: 14, byStack: true, attempts: 3 });
});

test("reactive strength is the mean of each attempt's height over contact", () => {
  const [day] = testDays(
    [
      jumpAttempt({ day: 1, heightCm: 40, contactS: 0.2 }),
      jumpAttempt({ day: 1, heightCm: 30, contactS: 0.2 }),
    ],
    plates,
  );
  expect(day!.reactiveStrength).toBeCloseTo(1.75, 12);
});

test.each([
  [0, "athlete-not-in-jumps", "Box jump"],
  [9, "no-such-test", "hop"],
  [9, "test-without-heights", "drop jump"],
])("%i sessions: %s", (sessions, code, test) => {
  const { jumps } = inventedSeason("Ilka Brandmoor", sessions);
  expect(trendOf(jumps, test)).toMatchObject({ ok: false, refusal: { code } });
});

test.each([
  [5, "too few rows", 3],
  [7, "too few rows", 1],
  [8, "holding", 0],
])("%i test days: %s, %i more needed", (days, word, daysNeeded) => {
  const trend = trendOf(inventedSeason("Ilka Brandmoor", days).jumps);
  expect(trend).toMatchObject({ value: { word, daysNeeded } });
});
