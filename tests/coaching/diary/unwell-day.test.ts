import { writtenIn } from "../../../src/coaching/diary/symptom-day";
import { unwellDay, type Written } from "../../../src/coaching/diary/unwell-day";
import { diaryDay } from "./constructed";

const asOf = 100;
const at3 = { beside: "diary", from: 0, at: () => ({ place: "Diary L3", words: "" }) } as const;
const dayOf = (written: readonly Written[], spells: { from: number }[] = []) =>
  unwellDay(written, spells, asOf)?.day ?? null;
const of = (day: number, said: Parameters<typeof diaryDay>[1], spells: { from: number }[] = []) =>
  dayOf([{ ...at3, day, text: writtenIn(diaryDay(day, said)) }], spells);

test("words of pain or illness of the last three days are asked after, the latest of them", () => {
  expect(of(100, { note: "sharp pain in left shin" })).toBe(100);
  expect(of(98, { newToday: "Fieber" })).toBe(98);
  expect(of(97, { note: "fever" })).toBeNull();
  expect(of(101, { note: "fever" })).toBeNull();
  const two = [
    { ...at3, day: 99, text: "vomited", at: () => ({ place: "Diary L4", words: "" }) },
    { ...at3, day: 98, text: "ill" },
  ] as const;
  expect(unwellDay(two, [], asOf)).toEqual({ day: 99, place: "Diary L4" });
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

test("what Availability has said since, or on the day, is an answer; a row of before or still to come is none", () => {
  const hurts = { note: "knee hurts" };
  expect(of(98, hurts, [{ from: 98 }])).toBeNull();
  expect(of(98, hurts, [{ from: 10 }, { from: 100 }])).toBeNull();
  expect(of(98, hurts, [{ from: 97 }])).toBe(98);
  expect(of(98, hurts, [{ from: 101 }])).toBe(98);
});

test("beside a set pain counts as in the diary; a cue or a cold bar is no illness", () => {
  const besideSet = (text: string) => dayOf([{ ...at3, day: 99, text, beside: "set" }]);
  expect(besideSet("knee pain, stopped")).toBe(99);
  expect(besideSet("chest up, cold hall, Brustbein hoch")).toBeNull();
  expect(of(99, { note: "chest tight, cold" })).toBe(99);
});
