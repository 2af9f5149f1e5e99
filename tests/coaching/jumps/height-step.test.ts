import { heightStep } from "../../../src/coaching/jumps/height-step";
import { type TestDay, testDays } from "../../../src/coaching/jumps/test-day";
import { jumpAttempt } from "../series/invented-season";

const [measured] = testDays([jumpAttempt({ day: 1, heightCm: 40 })], []);
const heights = (values: readonly (number | null)[], of: Partial<TestDay> = {}) =>
  values.map((heightCm) => ({ ...measured!, heightCm, ...of }));
const step = (...values: (number | null)[]) => heightStep(heights(values));

test("six heights on a grid were read to its step, five or one beside it were not", () => {
  expect(step(40, 45, 50, 45, 60, 40)).toBe(5);
  expect(step(40, null, 45, 50, 45, 60, 40)).toBe(5);
  expect(step(40, 45, 50, 45, 60)).toBeNull();
  expect(step(40, 45, 50, 45, 60, 47)).toBeNull();
  expect(step(40.5, 43, 45.5, 43, 48, 40.5)).toBe(2.5);
  // A day without a height lies on no grid, and the order of days does not matter.
  expect(step(41, null, 46, 51, 46, 61, 41)).toBe(5);
  expect(step(40, 60, 45, 65, 40, 60)).toBe(5);
});

test("one height all along has no step", () => {
  expect(step(40, 40, 40, 40, 40, 40)).toBeNull();
  expect(step()).toBeNull();
  // Thicknesses added in another order: 0.1 + 0.2 is not 0.3 to the last digit.
  expect(heightStep(heights([0.3, 0.1 + 0.2], { byStack: true }))).toBeNull();
});

test("of stacks two days are enough for the smallest step seen", () => {
  expect(heightStep(heights([30, 36, 38], { byStack: true }))).toBe(2);
  const once = [...heights([30, 36]), ...heights([38], { byStack: true })];
  expect(heightStep(once)).toBe(2);
  expect(heightStep(heights([30, 36, 38]))).toBeNull();
});
