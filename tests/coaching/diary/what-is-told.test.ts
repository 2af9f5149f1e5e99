import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { squadDiffered } from "../../../src/coaching/diary/squad-differed";
import { itemsOfAthlete, whatDiffered } from "../../../src/coaching/diary/what-differed";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import { studentLimit } from "../../../src/statistics/limits";
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
  // The last day's own row, written after its session, is.
  const counted = (on: number) =>
    itemsOfAthlete({
      athlete: "Priya Tellander",
      hold: seasonOf(percents(9)),
      diary: [...nights, diaryDay(gymDay(on), { sleepH: 1, minute: 1200 })],
      runs: [],
      starts: new Map([[gymDay(on), 1080]]),
    }).writtenAfter;
  expect([counted(sessions), counted(sessions - 1)]).toEqual([0, 1]);
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
  // Twice the days, and of each athlete's two weekdays as many means taken out.
  const [one, two] = [alone!.days - 3, 2 * alone!.days - 5];
  const wide = (studentLimit(95, two) / studentLimit(95, one)) * Math.sqrt(one / two);
  expect(both!.high! - both!.low!).toBeCloseTo(wide * (alone!.high! - alone!.low!), 9);
  expect(squadDiffered(own.slice(0, 1), seededChance("told"))).toEqual([]);
});

test("athletes followed by several values are put together by the mean of each day alone", () => {
  const wild = Array.from({ length: sessions }, (_, s) => 4 * wobble(5 * s + 2));
  const own = ["a", "b"].map((name) => laidOut(percents(9), wild, nights, name));
  const [alone] = whatDiffered(own[0]!, seededChance("told"));
  expect(alone!.value).not.toBeNull();
  const [both] = squadDiffered(own, seededChance("told"));
  expect(both).toMatchObject({ item: "sleep", value: null, word: "goes together" });
});

test("an item that the weekday alone decides is the same ever, of so many days of all athletes", () => {
  const squad = ["a", "b"].map((name) => {
    const own = laidOut(percents(9), null, nights, name);
    // Nothing of it is left once each weekday's own mean is taken out.
    const items = own.items.map((days) => ({
      ...days,
      compared: { ...days.compared, itemBeyond: days.compared.itemBeyond.map(() => 0) },
    }));
    return { ...own, items };
  });
  expect(squadDiffered(squad, seededChance("told"))).toMatchObject([
    { item: "sleep", word: "always the same", days: 2 * sessions, p: null, difference: null },
  ]);
});
