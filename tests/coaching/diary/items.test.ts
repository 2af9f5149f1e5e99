import { itemsOf } from "../../../src/coaching/diary/diary-item";
import { sessionStarts, writtenAfter } from "../../../src/coaching/diary/written-after";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import { diaryDay, run } from "./constructed";

const asOf = 20_700;
const day = 20_600;
const values = (
  diary: readonly DiaryDay[],
  key: string,
  runs: Parameters<typeof itemsOf>[1] = [],
) => itemsOf(diary, runs, asOf).find((item) => item.key === key)?.values;

test("only what was written down is an item, each in its unit and the step a coach thinks in", () => {
  const diary = [
    diaryDay(day, { sleepH: 7, mood: 3, carbsInSession: false, newToday: "  " }),
    diaryDay(day + 1, { newToday: "new shoes", foodNote: "porridge", note: "58 kg" }),
  ];
  const items = itemsOf(diary, [run(day, 30, 4)], asOf);
  expect(items.map(({ key, kind, unit, step }) => [key, kind, unit, step])).toEqual([
    ["sleep", "amount", "h", 1],
    ["mood", "amount", "points", 1],
    ["run the day before", "amount", "load", 100],
    ["carbs in session", "yes or no", "yes", 1],
    ["something new", "yes or no", "yes", 1],
  ]);
});

test("a yes on a day stands whatever another row of the day says, and a blank is no answer", () => {
  const carbs = (...answers: readonly (boolean | null)[]) =>
    values(
      answers.map((carbsInSession) => diaryDay(day, { carbsInSession })),
      "carbs in session",
    );
  expect(carbs(true, false)).toEqual(new Map([[day, 1]]));
  expect(carbs(false, true)).toEqual(new Map([[day, 1]]));
  expect(carbs(false, null)).toEqual(new Map([[day, 0]]));
  expect(carbs(null)).toBeUndefined();
});

test("something new is asked of every day kept once it was written at all", () => {
  const diary = [diaryDay(day), diaryDay(day + 1, { newToday: "shoes" })];
  expect(values(diary, "something new")).toEqual(
    new Map([
      [day, 0],
      [day + 1, 1],
    ]),
  );
  expect(values([diaryDay(day)], "something new")).toBeUndefined();
  expect(values([diaryDay(day, { newToday: "  " })], "something new")).toBeUndefined();
});

test("yesterday's load is minutes times exertion, runs of a day added, from the first run to the last", () => {
  const runs = [run(day, 30, 4), run(day, 20, 5), run(day + 2, 40, 3)];
  expect(values([], "run the day before", runs)).toEqual(
    new Map([
      [day + 1, 220],
      [day + 2, 0],
      [day + 3, 120],
    ]),
  );
});

test("a day with a run that lacks minutes or exertion is not known, whatever else was run", () => {
  const runs = [
    run(day, 30, 4),
    run(day + 1, 30, null),
    run(day + 1, 30, 5),
    run(day + 2, null, 4),
  ];
  const unclear = values([], "run the day before", [...runs, run(day + 3, 10, 1)]);
  expect(unclear).toEqual(
    new Map([
      [day + 1, 120],
      [day + 4, 10],
    ]),
  );
});

test("runs after the day asked for are not yet known", () => {
  expect(values([], "run the day before", [run(asOf, 30, 4), run(asOf + 1, 60, 5)])).toEqual(
    new Map([[asOf + 1, 120]]),
  );
  expect(values([], "run the day before", [run(asOf + 1, 60, 5)])).toBeUndefined();
});

test("a row is written after the session only when both times say so", () => {
  const starts = sessionStarts([
    { day, minute: 1100 },
    { day, minute: 1080 },
    { day, minute: null },
    { day: day + 1, minute: null },
  ]);
  expect(starts).toEqual(new Map([[day, 1080]]));
  const written = (minute: number | null, on = day) =>
    writtenAfter(diaryDay(on, { minute }), starts);
  expect([1079, 1080, 1081, null].map((minute) => written(minute))).toEqual([
    false,
    false,
    true,
    false,
  ]);
  expect(written(1400, day + 1)).toBe(false);
});
