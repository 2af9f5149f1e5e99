import { jumpMeasure } from "../../../../src/coaching/hold/measures/jump-measure";
import { testDays } from "../../../../src/coaching/jumps/test-day";
import type { JumpAttempt } from "../../../../src/coaching/record/jump-attempt";
import { jumpAttempt } from "../../series/invented-season";

const from = 20_600;
const given = { from, baselineTo: from + 7 };
/** A drop jump so many days after the season's first. */
const drop = (after: number, of: Partial<JumpAttempt> = {}) =>
  jumpAttempt({ day: from + after, test: "drop jump", contactS: 0.2, dropCm: 30, ...of });
const contact = (...attempts: readonly JumpAttempt[]) =>
  jumpMeasure("contact time", "drop jump", testDays(attempts, []), given);
const season = [drop(0), drop(3), drop(7), drop(10, { contactS: 0.21 })];
const percentOf = (contactS: number) => expect.closeTo(-100 * Math.log(contactS), 9);

test("the season's days are its own, and those before it are kept for the wobble alone", () => {
  const measure = contact(drop(-70, { contactS: 0.19 }), drop(-65), ...season)!;
  expect([...measure.percents.keys()]).toEqual([from, from + 3, from + 7, from + 10]);
  expect(measure.earlier).toEqual([[percentOf(0.19), percentOf(0.2)]]);
  expect(contact(...season)!.earlier).toEqual([]);
});

test("days before the season from another drop or without the value say nothing of its wobble", () => {
  const before = [drop(-70, { dropCm: 45 }), drop(-65, { contactS: null }), drop(-60)];
  expect(contact(...before, ...season)!.earlier).toEqual([[percentOf(0.2)]]);
});

test("a longer contact is a loss, and its level leads back to seconds", () => {
  const { percents, valueAt, plainPercent } = contact(...season)!;
  const change = percents.get(from + 10)! - percents.get(from)!;
  expect(change).toBeLessThan(0);
  expect(plainPercent(change)).toBeCloseTo(100 * (0.2 / 0.21 - 1), 9);
  expect(valueAt(percents.get(from + 10)!)).toBeCloseTo(0.21, 9);
});

test("heights not read are counted from the season's first day on", () => {
  const unread = (after: number) => drop(after, { contactS: 0.2, stackKg: [17] });
  expect(contact(unread(0), ...season)!.notes[0]!.facts.attempts).toBe(1);
  expect(contact(unread(-3), ...season)!.notes).toEqual([]);
  expect(contact(...season, unread(12), unread(13), unread(14))!.notes).toEqual([
    { code: "heights-not-read", facts: { test: "drop jump", attempts: 3 } },
  ]);
});

test("another drop height than most of the baseline's is said with its first day", () => {
  // More of the season is from 45 cm by now; the baseline was not.
  const higher = [12, 14, 16, 18, 20].map((after) => drop(after, { dropCm: 45 }));
  const measure = contact(...season, ...higher)!;
  expect(measure.percents.has(from + 12)).toBe(false);
  expect(measure.notes).toEqual([
    {
      code: "drop-height-changed",
      facts: { test: "drop jump", sessions: 5, sinceDay: from + 12, usualCm: 30 },
    },
  ]);
});

test("a test without its value in the baseline is no measure", () => {
  expect(contact(drop(0, { contactS: null }), drop(20, { contactS: 0 }))).toBeNull();
  expect(contact(drop(-9))).toBeNull();
});

test("a test begun after the baseline has its own first three days for one", () => {
  const late = [10, 12, 14].map((after) => drop(after, { dropCm: 45 }));
  const measure = contact(...late, drop(16, { dropCm: 30 }))!;
  expect([...measure.percents.keys()]).toEqual([from + 10, from + 12, from + 14]);
  expect(contact(...late.slice(1))).toBeNull();
});

test("a height typed in whole centimetres goes in steps of one; what is made of it and the contact does not", () => {
  const step = (kind: "jump height" | "reactive strength", ...heights: readonly number[]) =>
    jumpMeasure(
      kind,
      "drop jump",
      testDays(
        heights.map((heightCm, s) => drop(s, { heightCm })),
        [],
      ),
      given,
    )!.stepPercent;
  const whole = [30, 31, 30, 32, 30, 31, 30, 31];
  // The baseline's eight days are 30.625 cm on the mean.
  expect(step("jump height", ...whole)).toBeCloseTo(100 / 30.625, 9);
  expect(step("reactive strength", ...whole)).toBe(0);
  expect(step("jump height", 30, 31.3, 30.8)).toBe(0);
});
