import fc from "fast-check";
import { rotation } from "../../../src/coaching/blocks/block";
import { stepSizeOf } from "../../../src/coaching/blocks/step-size";
import { stepUpKg } from "../../../src/coaching/blocks/step-up";
import { weeksToHold } from "../../../src/coaching/blocks/weeks-to-hold";
import { usualRules } from "../../../src/coaching/record/squad-rules";

const up = (loadKg: number, wanted: number, largestStep: number) =>
  stepUpKg(loadKg, { stepKg: 2.5, wanted, largestStep });

test("whole plate steps, no more than asked for, one at least", () => {
  // 8 % of 85 is 6.8: two steps of 2.5. 2.5 % of 85 is 2.1: one step, 2.9 %.
  expect(up(85, 0.08, 0.1)).toBe(5);
  expect(up(85, 0.025, 0.05)).toBe(2.5);
  expect(up(85, 0, 0.05)).toBe(0);
});

test("none where one plate step would be more than the largest", () => {
  expect(up(40, 0.025, 0.05)).toBe(0);
  expect(up(40, 0.025, 0.1)).toBe(2.5);
  expect(up(25, 0.1, 0.1)).toBe(2.5);
});

test("from no load, or less than none, there is no step", () => {
  for (const loadKg of [0, -20, Number.NaN]) expect(up(loadKg, 0.05, 0.1)).toBe(0);
});

test("an athlete's own step stands before the squad's, and may be larger than its largest", () => {
  const size = (over: Parameters<typeof stepSizeOf>[0]) => stepSizeOf(over, usualRules, 2.5);
  expect(size(null)).toEqual({ stepKg: 2.5, wanted: 0.025, largestStep: 0.05 });
  expect(size({ experience: "novice" }).largestStep).toBe(0.1);
  expect(size({ experience: "trained", stepShare: 0.08 })).toEqual({
    stepKg: 2.5,
    wanted: 0.08,
    largestStep: 0.08,
  });
  expect(stepUpKg(85, size({ experience: "trained", stepShare: 0 }))).toBe(0);
});

test("the season's first 5×5 has weeks of its own", () => {
  const rules = { ...usualRules, firstHold: 4, holdWeeks: 2 };
  expect(weeksToHold(rotation[0]!, true, rules)).toBe(4);
  expect(weeksToHold(rotation[0]!, false, rules)).toBe(2);
  expect(weeksToHold(rotation[1]!, true, rules)).toBe(2);
  expect(weeksToHold(rotation[1]!, true, { ...rules, stepBySession: 1 })).toBe(1);
  expect(weeksToHold(rotation[1]!, true, { ...rules, stepBySession: 0.5 })).toBe(1);
});

test("a step is whole plate steps, never past the largest, never down", () => {
  const share = fc.integer({ min: 0, max: 100 }).map((n) => n / 1000);
  fc.assert(
    fc.property(fc.integer({ min: 4, max: 200 }), share, share, (steps, wanted, largestStep) => {
      const loadKg = steps * 2.5;
      const kg = up(loadKg, wanted, largestStep);
      expect((kg / 2.5) % 1).toBe(0);
      expect(kg).toBeGreaterThanOrEqual(0);
      expect(kg / loadKg).toBeLessThanOrEqual(largestStep + 1e-9);
      expect(kg).toBeLessThanOrEqual(Math.max(2.5, wanted * loadKg) + 1e-9);
    }),
  );
});
