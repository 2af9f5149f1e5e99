import { askAbout } from "../../../src/coaching/diary/ask-about";
import { diaryTimeline } from "../../../src/coaching/diary/diary-timeline";
import { type UnusualDay, unusualDays } from "../../../src/coaching/diary/unusual-day";
import { diaryDay, gymDay, seasonOf } from "./constructed";

const asOf = 20_600;
const odd = (ago: number, size: number, symptoms: readonly string[] = []): UnusualDay => ({
  day: asOf - ago,
  value: { kind: "bar speed", of: "back squat" },
  valuePercent: 3 * size,
  size,
  stoodOut: [],
  written: symptoms.length > 0 ? [{ day: asOf - ago, kind: "note", text: "…", symptoms }] : [],
  privateRows: 0,
  race: null,
});
const asked = (...days: readonly UnusualDay[]) => askAbout(days, asOf).map(({ day }) => asOf - day);

test("days still remembered come before larger old ones", () => {
  expect(asked(odd(60, -4), odd(28, 1.4), odd(29, -3), odd(3, -1.5))).toEqual([3, 28, 60]);
});

test("among them words of pain or illness come first, then the furthest from usual either way", () => {
  expect(asked(odd(2, -2.5), odd(4, 3), odd(9, -1.4, ["sore"]))).toEqual([9, 4, 2]);
  // Words of anything else do not make a day come first.
  const exam = odd(9, -1.4, ["sore"]);
  const written = exam.written.map((one) => ({ ...one, symptoms: [] }));
  expect(asked(odd(2, -2.5), odd(4, 3), { ...exam, written })).toEqual([4, 2, 9]);
});

test("fewer than three are given as they are, equal sizes latest first, and nothing is reordered", () => {
  const days = [odd(9, -2), odd(5, 2)];
  expect(asked(...days)).toEqual([5, 9]);
  expect(days.map(({ day }) => asOf - day)).toEqual([9, 5]);
  expect(asked()).toEqual([]);
});

const percents = Array.from({ length: 20 }, (_, s) => (s === 12 ? -14 : 0.5 * (s % 3)));
const timeline = (diary: readonly ReturnType<typeof diaryDay>[]) => {
  const own = { athlete: "Priya Tellander", hold: seasonOf(percents), diary, runs: [] };
  const unusual = unusualDays({ ...own, races: [] });
  return diaryTimeline({ ...own, starts: new Map() }, unusual);
};

test("the timeline's sessions are all there, and the unusual one has its side", () => {
  const { sessions } = timeline([]);
  expect(sessions).toHaveLength(percents.length);
  expect(sessions.filter(({ side }) => side !== 0)).toEqual([
    { day: gymDay(12), size: expect.any(Number), side: -1 },
  ]);
});

test("a night far from the athlete's own is marked, an ordinary one is not", () => {
  const nights = percents.map((_, s) =>
    diaryDay(gymDay(s), { sleepH: s === 12 ? 4 : 7.5 + 0.2 * (s % 4) }),
  );
  expect(timeline(nights).marks).toEqual([{ day: gymDay(12), kind: "figure" }]);
});

test("notes and new things are marked, food, carbohydrate and private rows are not", () => {
  const { marks } = timeline([
    diaryDay(gymDay(3), { note: "exam" }),
    diaryDay(gymDay(4), { newToday: "shoes" }),
    diaryDay(gymDay(5), { foodNote: "no breakfast" }),
    diaryDay(gymDay(6), { carbsInSession: true }),
    diaryDay(gymDay(7), { note: "exam", private: true }),
    diaryDay(gymDay(9), { note: " ", newToday: "  " }),
    diaryDay(gymDay(8), { note: "knee sore", private: true }),
  ]);
  expect(marks).toEqual([
    { day: gymDay(8), kind: "pain or illness" },
    { day: gymDay(3), kind: "note" },
    { day: gymDay(4), kind: "note" },
  ]);
});

test("days outside the season's sessions make no mark", () => {
  const { marks } = timeline([
    diaryDay(gymDay(0) - 2, { note: "before" }),
    diaryDay(gymDay(0) - 1, { note: "the evening before" }),
    diaryDay(gymDay(19) + 1, { note: "after" }),
  ]);
  expect(marks.map(({ day }) => day)).toEqual([gymDay(0) - 1]);
});

test("what was written since the last session, up to the day asked about, is marked as well", () => {
  const hold = { ...seasonOf(percents), asOf: gymDay(19) + 2 };
  const diary = [1, 2, 3].map((days) => diaryDay(gymDay(19) + days, { note: "achilles 3/10" }));
  const own = { athlete: "Priya Tellander", hold, diary, runs: [], starts: new Map() };
  expect(diaryTimeline(own, []).marks).toEqual(
    ["pain or illness", "note"].flatMap((kind) =>
      [1, 2].map((days) => ({ day: gymDay(19) + days, kind })),
    ),
  );
});

test("marks of one kind stand in order of day, the last session's own among them", () => {
  const { marks } = timeline([
    diaryDay(gymDay(19), { note: "knee sore" }),
    diaryDay(gymDay(11), { note: "exam" }),
    diaryDay(gymDay(4), { note: "calf sore" }),
    diaryDay(gymDay(2), { note: "exam" }),
  ]);
  expect(marks.map(({ day, kind }) => [day, kind])).toEqual([
    [gymDay(4), "pain or illness"],
    [gymDay(19), "pain or illness"],
    ...[2, 4, 11, 19].map((s) => [gymDay(s), "note"]),
  ]);
});
