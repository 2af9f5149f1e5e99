import { reactiveStrength } from "../../../src/coaching/jumps/reactive-strength";
import { squadJumpTrend } from "../../../src/coaching/jumps/squad-jump-trend";
import type { Athlete } from "../../../src/coaching/record/athlete";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { refuse } from "../../../src/outcome";
import { figureOf } from "../../published/figure-of";
import { athleteRow, inventedSeason, jumpAttempt, sessionDay } from "../series/invented-season";

const name = "Ilka Brandmoor";
const asked = (jumps: readonly JumpAttempt[], athletes: readonly Athlete[] = []) =>
  squadJumpTrend({
    index: squadIndex({ jumps }, sessionDay(40)),
    test: "Box Jump",
    plates: [],
    athletes,
    rules: usualRules,
  });
const trendOf = (jumps: readonly JumpAttempt[], of: Partial<Athlete> | null = null) =>
  figureOf(asked(jumps, of ? [athleteRow({ athlete: name, ...of })] : [])(name));
const heights = (...cm: readonly number[]) =>
  cm.map((heightCm, s) => jumpAttempt({ day: sessionDay(s), heightCm }));
const six = [40, 42, 41, 40, 42, 41] as const;

test("after the baseline alone there is no now and no change, and two more days are needed", () => {
  expect(trendOf(heights(...six))).toMatchObject({
    word: "too few rows",
    baselineCm: 41,
    baselineDays: 6,
    nowCm: null,
    nowDays: 0,
    change: null,
    smallestChange: null,
    sinceDay: null,
    daysNeeded: 2,
  });
});

test("now is the last four test days, and the smallest change follows from wobble and both counts", () => {
  const trend = trendOf(heights(...six, 50, 40.5, 41.5, 42.5, 41.5));
  expect(trend).toMatchObject({ nowCm: 41.5, nowDays: 4, baselineCm: 41 });
  expect(trend.change).toBeCloseTo(41.5 / 41 - 1, 12);
  // Two-sided 90 %: 1.644854 standard errors (NIST/SEMATECH e-Handbook 1.3.6.7.1).
  expect(trend.smallestChange! / trend.wobble!).toBeCloseTo(1.644854 * Math.sqrt(1 / 6 + 1 / 4), 5);
});

test("once it slips, now is every test day since, and no day before", () => {
  const { jumps } = inventedSeason(name, 30, (s) => (s < 14 ? 1 : 0.9));
  const trend = trendOf(jumps);
  const since = jumps.filter(
    ({ day, test }) => test === "box jump" && day >= (trend.sinceDay ?? Number.POSITIVE_INFINITY),
  );
  expect(trend.word).toBe("slipping");
  expect(trend.nowDays).toBe(since.length);
  expect(since.length).toBeLessThan(20);
  expect(trend.nowCm).toBeCloseTo(
    since.reduce((sum, { heightCm }) => sum + heightCm!, 0) / since.length,
    9,
  );
});

test("the Athletes table gives the baseline's dates, and a novice who holds is level", () => {
  const rows = heights(...six, 44, 45, 44, 45, 44, 45);
  expect(
    trendOf(rows, { baselineFrom: sessionDay(6), baselineTo: sessionDay(9), experience: "novice" }),
  ).toMatchObject({ word: "level", baselineDays: 4, baselineCm: 44.5 });
  // How often the athlete comes to the gym says nothing about how often this test is taken.
  const [once, often] = [1, 5].map((sessionsAWeek) => trendOf(rows, { sessionsAWeek }));
  expect(often).toEqual(once);
});

test("a baseline of the coach's own dates with one test day, or none, leaves no change to be told", () => {
  const rows = heights(...six, 44, 45, 44, 45);
  const own = (from: number, to: number) =>
    trendOf(rows, { baselineFrom: sessionDay(from), baselineTo: sessionDay(to) });
  expect(own(8, 8)).toMatchObject({ baselineDays: 1, nowCm: 45, wobble: null });
  expect(own(8, 8).smallestChange).toBeNull();
  const none = trendOf(rows, { baselineFrom: sessionDay(0) - 9, baselineTo: sessionDay(0) - 2 });
  expect(none).toMatchObject({ baselineDays: 0, baselineCm: null, change: null });
});

test("the squad's test days steady an athlete's wobble", () => {
  const own = heights(...six, 41, 42, 41);
  const wild = heights(40, 60, 40, 60, 40, 60).map((jump) => ({
    ...jump,
    athlete: "Wren Castellow",
  }));
  expect(trendOf([...own, ...wild]).wobble!).toBeGreaterThan(1.5 * trendOf(own).wobble!);
});

test("a height of the day that was not read is said beside the trend", () => {
  const rows = [...heights(...six, 41, 42, 41), jumpAttempt({ day: sessionDay(8), stackKg: [17] })];
  expect(trendOf(rows).notes).toContainEqual({
    code: "heights-not-read",
    facts: { test: "Box Jump", attempts: 1 },
  });
});

test("a day on which no height was cleared is no test day, and refuses no other", () => {
  const missed = [7, 8].map((s) =>
    jumpAttempt({ day: sessionDay(0) - s, stackKg: [15], cleared: false }),
  );
  const between = [1, 2, 3].map((s) =>
    jumpAttempt({ day: sessionDay(s) + 1, stackKg: [15], cleared: false }),
  );
  const plain = trendOf(heights(...six, 41, 42, 41));
  expect(trendOf([...heights(...six, 41, 42, 41), ...missed, ...between])).toEqual(plain);
  expect(plain.notes).toEqual([]);
});

test("the step between heights is this season's, whatever last season's were read to", () => {
  const now = heights(40, 42, 40, 44, 42, 40, 42, 44);
  const before = [40.5, 41, 43.5].map((heightCm, s) =>
    jumpAttempt({ day: sessionDay(0) - 100 + s, heightCm }),
  );
  expect(trendOf(now).stepCm).toBe(2);
  expect(trendOf([...before, ...now]).stepCm).toBe(2);
});

test("who or what is not in the rows is refused by name", () => {
  const of = asked([
    ...heights(...six),
    jumpAttempt({ day: 1, athlete: "Wren Castellow", test: "hop" }),
    jumpAttempt({ day: 1, athlete: "Tomas Reyerson", contactS: 0.2 }),
  ]);
  expect(of("Nobody Known")).toEqual(refuse("athlete-not-in-jumps", { athlete: "Nobody Known" }));
  expect(of("wren castellow")).toEqual(
    refuse("no-such-test", { athlete: "Wren Castellow", test: "Box Jump" }),
  );
  expect(of("tomas reyerson")).toEqual(
    refuse("test-without-heights", { athlete: "Tomas Reyerson", test: "Box Jump" }),
  );
});

test.each([0, -1, Number.NaN])("a height of %p gives no reactive strength", (heightCm) => {
  expect(reactiveStrength(heightCm, 0.2)).toEqual(refuse("height-impossible", { heightCm }));
});
