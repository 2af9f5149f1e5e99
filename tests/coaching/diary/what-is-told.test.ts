import { performanceDays } from "../../../src/coaching/diary/performance-day";
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { squadDiffered } from "../../../src/coaching/diary/squad-differed";
import { symptomDays } from "../../../src/coaching/diary/symptom-day";
import { unusualDays } from "../../../src/coaching/diary/unusual-day";
import { itemsOfAthlete, whatDiffered } from "../../../src/coaching/diary/what-differed";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import { wobble } from "../series/invented-season";
import { diaryDay, gymDay, seasonOf } from "./constructed";

const sessions = 28;
const small = (s: number) => 1.5 * wobble(s);
const short = (s: number) => s % 4 === 1;
const nights = Array.from({ length: sessions }, (_, s) =>
  diaryDay(gymDay(s), { sleepH: (short(s) ? 5.5 : 7.5) + 0.3 * wobble(3 * s) }),
);
const percents = (loss: number) =>
  Array.from({ length: sessions }, (_, s) => small(s) - (short(s) ? loss : 0));
const laidOut = (
  speed: readonly number[],
  jump: readonly number[] | null,
  diary: readonly DiaryDay[] = nights,
  athlete = "Priya Tellander",
) =>
  itemsOfAthlete({
    athlete,
    hold: seasonOf(speed, gymDay, jump),
    diary,
    runs: [],
    starts: new Map(),
  });
const sleepOf = (...given: Parameters<typeof laidOut>) =>
  whatDiffered(laidOut(...given), seededChance("told")).find(({ item }) => item === "sleep")!;

test("the value that goes with short nights is named, one of two or the only one's day", () => {
  const wild = Array.from({ length: sessions }, (_, s) => 4 * wobble(5 * s + 2));
  expect(sleepOf(percents(9), wild).value).toEqual({ kind: "bar speed", of: "back squat" });
  expect(sleepOf(wild, percents(9)).value).toEqual({ kind: "jump height", of: "box jump" });
  expect(sleepOf(percents(9), null).value).toBeNull();
});

test("an item that goes with performance is told before those that do not, unknown ones last", () => {
  const diary = nights.map((row, s) => ({
    ...row,
    mood: 3 + Math.round(wobble(7 * s + 1)),
    stress: s < 5 ? 2 : null,
  }));
  const told = whatDiffered(laidOut(percents(9), null, diary), seededChance("told"));
  expect(told.map(({ item, word }) => [item, word])).toEqual([
    ["sleep", "goes together"],
    ["mood", "no link seen"],
    ["stress", "not enough days"],
  ]);
  expect(told.map(({ itemsLookedAt }) => itemsLookedAt)).toEqual([2, 2, 2]);
});

test("diary rows after the day asked for are neither compared nor counted as written after", () => {
  const later = diaryDay(gymDay(sessions), { sleepH: 1, minute: 1200 });
  const rows = [...nights, later];
  expect(sleepOf(percents(9), null, rows)).toEqual(sleepOf(percents(9), null));
});

test("two rows of one day written after its session are one day", () => {
  const after = [1, 1, 2].map((s) => diaryDay(gymDay(s), { mood: 3, minute: 1200 }));
  const { writtenAfter } = itemsOfAthlete({
    athlete: "Priya Tellander",
    hold: seasonOf(percents(0)),
    diary: [...nights, ...after],
    runs: [],
    starts: new Map([1, 2].map((s) => [gymDay(s), 1080])),
  });
  expect(writtenAfter).toBe(2);
});

test("of a squad together days, odd days and days written after add up, and no athlete is named", () => {
  const own = ["a", "b"].map((name) => laidOut(percents(9), null, nights, name));
  const [alone] = whatDiffered(own[0]!, seededChance("told"));
  const [both] = squadDiffered(
    own.map((one, at) => ({ ...one, writtenAfter: 2 + at })),
    seededChance("told"),
  );
  expect(both).toMatchObject({
    athlete: "",
    athletes: 2,
    word: "goes together",
    writtenAfter: 5,
    border: null,
    side: "under",
    value: null,
    days: 2 * alone!.days,
    daysWith: 2 * alone!.daysWith,
    oddDays: 2 * alone!.oddDays,
    oddDaysWith: 2 * alone!.oddDaysWith,
    otherDays: 2 * alone!.otherDays,
    otherDaysWith: 2 * alone!.otherDaysWith,
  });
  expect(both!.difference).toBeCloseTo(alone!.difference!, 9);
  // Twice the days, as many means taken out of each athlete's.
  expect(both!.high! - both!.low!).toBeLessThan(alone!.high! - alone!.low!);
  expect(squadDiffered(own.slice(0, 1), seededChance("told"))).toEqual([]);
});

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
