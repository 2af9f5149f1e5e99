import { diaryTimeline } from "../../../src/coaching/diary/diary-timeline";
import type { Finding } from "../../../src/coaching/diary/finding";
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { squadDiffered } from "../../../src/coaching/diary/squad-differed";
import { symptomWords } from "../../../src/coaching/diary/symptom-words";
import { stoodOutOn, unusualDays } from "../../../src/coaching/diary/unusual-day";
import { itemsOfAthlete, whatDiffered } from "../../../src/coaching/diary/what-differed";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import { diaryDay, gymDay, seasonOf } from "./constructed";

const season = (length: number, odd: Readonly<Record<number, number>> = {}) =>
  Array.from({ length }, (_, s) => odd[s] ?? (s % 3 === 0 ? 1 : -0.5));
const unusual = (
  percents: readonly (number | null)[],
  diary: readonly DiaryDay[] = [],
  jump: readonly (number | null)[] | null = null,
) => unusualDays({ hold: seasonOf(percents, gymDay, jump), diary, runs: [], races: [] });
const outOn = (values: readonly (readonly [day: number, value: number])[], day: number) =>
  stoodOutOn(
    [{ key: "soreness", kind: "amount", values: new Map(values), step: 1, unit: "points" }],
    day,
  );

test("a value that never differed before stands out as far as can be", () => {
  // Soreness 2 on every other day leaves no spread: 4 is far out, and which way is said.
  const days = Array.from({ length: 8 }, (_, at) => [gymDay(at), at === 7 ? 4 : 2] as const);
  expect(outOn(days, gymDay(7))).toEqual([
    { item: "soreness", unit: "points", value: 4, usual: 2, spreads: 9 },
  ]);
  expect(outOn(days, gymDay(6))).toEqual([]);
  const less = days.map(([day, value]) => [day, value === 4 ? 1 : value] as const);
  expect(outOn(less, gymDay(7))[0]).toMatchObject({ value: 1, spreads: -9 });
});

test("four other days are needed before anything stands out", () => {
  const days = [0, 1, 2, 3].map((at) => [gymDay(at), at === 3 ? 9 : 2] as const);
  expect(outOn(days, gymDay(3))).toEqual([]);
  expect(outOn([...days, [gymDay(4), 2]], gymDay(3))).toHaveLength(1);
});

test("four days of the same weekday are the usual to hold against; with fewer all days are", () => {
  // Tuesdays at 6, Thursdays at 2, each with half a point of difference; a Thursday of 4.
  const level = (at: number) => (at % 2 === 0 ? 6 : 2) + 0.5 * ((at >> 1) % 2);
  const until = (length: number) =>
    Array.from({ length }, (_, at) => [gymDay(at), at === length - 1 ? 4 : level(at)] as const);
  // Five Thursdays, four of them before: 2, 2.5, 2, 2.5.
  expect(outOn(until(10), gymDay(9))[0]).toMatchObject({ usual: 2.25, value: 4 });
  // Three before: all seven other days together, whose spread hides it.
  expect(outOn(until(8), gymDay(7))).toEqual([]);
});

test("of two values on a day the one further out is named when it alone says so", () => {
  // The bar as ever, the jump 14 % down.
  const [day] = unusual(season(16), [], season(16, { 10: -14 }));
  expect(day).toMatchObject({ day: gymDay(10), value: { kind: "jump height", of: "box jump" } });
  expect(day!.size).toBeLessThan(0);
  const [other] = unusual(season(16, { 10: -14 }), [], season(16));
  expect(other).toMatchObject({ day: gymDay(10), value: { kind: "bar speed" } });
  expect(other!.size).toBeCloseTo(day!.size, 9);
});

test("two values a little out on the same day are unusual together, and the further one is named", () => {
  const alone = unusual(season(16, { 10: -6 }), [], season(16));
  const both = unusual(season(16, { 10: -6 }), [], season(16, { 10: -7 }));
  expect(alone).toEqual([]);
  expect(both).toMatchObject([{ day: gymDay(10), value: { kind: "jump height" } }]);
  const other = unusual(season(16, { 10: -7 }), [], season(16, { 10: -6 }));
  expect(other).toMatchObject([{ day: gymDay(10), value: { kind: "bar speed" } }]);
});

test("an unusual day may be a good one, above the line of the timeline", () => {
  const good = unusual(season(16, { 10: 10 }));
  expect(good.map(({ size }) => Math.sign(size))).toEqual([1]);
  const diary = { athlete: "Priya Tellander", diary: [], runs: [], starts: new Map() };
  const { sessions } = diaryTimeline(
    { ...diary, hold: seasonOf(season(16, { 10: 10, 4: -10 })) },
    unusual(season(16, { 10: 10, 4: -10 })),
  );
  expect(sessions.filter(({ side }) => side !== 0).map(({ day, side }) => [day, side])).toEqual([
    [gymDay(4), -1],
    [gymDay(10), 1],
  ]);
});

test("a season without sessions has no timeline, whatever the diary holds", () => {
  const rows = [diaryDay(gymDay(0), { note: "shin sore" })];
  const empty = { ...seasonOf(season(7)), sessions: [] };
  expect(
    diaryTimeline(
      { athlete: "Priya Tellander", hold: empty, diary: rows, runs: [], starts: new Map() },
      [],
    ),
  ).toEqual({ sessions: [], marks: [] });
});

test("a word of pain written twice is said once", () => {
  expect(symptomWords("Calf sore, then sore again, Sore at night")).toEqual(["sore"]);
});

const laidOut = (athlete: string, percents: readonly number[], diary: readonly DiaryDay[]) =>
  itemsOfAthlete({ athlete, hold: seasonOf(percents), diary, runs: [], starts: new Map() });
const word = (findings: readonly Finding[], item: string) =>
  findings.find((finding) => finding.item === item)?.word;

test("an amount that was other than ever on fewer than four days decides nothing", () => {
  const nights = (odd: number) =>
    season(20).map((_, s) => diaryDay(gymDay(s), { sleepH: s % 5 === 2 && s < 5 * odd ? 6 : 8 }));
  const said = (odd: number) =>
    word(whatDiffered(laidOut("a", season(20), nights(odd)), seededChance("few")), "sleep");
  expect([said(0), said(3)]).toEqual(["always the same", "not enough days"]);
  expect(said(4)).toBe("no link seen");
});

test("athletes are put together for items that two of them have days enough of, and no other", () => {
  const percents = Array.from({ length: 20 }, (_, s) => (s % 5 === 2 ? -8 : s % 2));
  const diary = (soreness: boolean) =>
    percents.map((_, s) =>
      diaryDay(gymDay(s), {
        sleepH: s % 5 === 2 ? 6 : 8 + 0.1 * (s % 3),
        soreness: soreness ? 2 + (s % 4) : null,
      }),
    );
  const squad = [laidOut("a", percents, diary(true)), laidOut("b", percents, diary(false))];
  const found = squadDiffered(squad, seededChance("two"));
  expect(found.map(({ item, athletes, days }) => [item, athletes, days])).toEqual([
    ["sleep", 2, 40],
  ]);
  // Five days of it are not enough to be one of two.
  const few = diary(true).map((row, s) => (s < 5 ? row : { ...row, soreness: null }));
  expect(
    squadDiffered([squad[0]!, laidOut("b", percents, few)], seededChance("two")).map(
      ({ item }) => item,
    ),
  ).toEqual(["sleep"]);
});
