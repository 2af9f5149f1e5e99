import { unwellDay } from "../../../src/coaching/diary/unwell-day";
import { diaryDay } from "./constructed";

const asOf = 100;
const of = (day: number, said: Parameters<typeof diaryDay>[1]) =>
  unwellDay([diaryDay(day, said)], asOf);

test("words of pain or illness of the last three days are asked after, the latest of them", () => {
  expect(of(100, { note: "sharp pain in left shin" })).toBe(100);
  expect(of(98, { newToday: "Fieber" })).toBe(98);
  expect(of(97, { note: "fever" })).toBeNull();
  expect(of(101, { note: "fever" })).toBeNull();
  const two = [diaryDay(98, { note: "ill" }), diaryDay(99, { foodNote: "vomited" })];
  expect(unwellDay(two, asOf)).toBe(99);
});

test("soreness alone is rated, not asked after, and a pain denied is none", () => {
  expect(of(100, { note: "legs sore and stiff" })).toBeNull();
  expect(of(100, { note: "Muskelkater" })).toBeNull();
  expect(of(100, { note: "sore, Achilles hurts" })).toBe(100);
  expect(of(100, { note: "no pain" })).toBeNull();
  // Where a foot is sore, or the back, it is asked after.
  expect(of(100, { note: "foot very sore, can't hop" })).toBe(100);
  expect(of(100, { note: "stiff back" })).toBe(100);
  expect(of(100, { note: "back to normal" })).toBeNull();
});

test("a private row gives its day like any other", () => {
  expect(of(100, { note: "chest feels tight", private: true })).toBe(100);
});
