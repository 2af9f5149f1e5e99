import fc from "fast-check";
import { blockText, rotation } from "../../../src/coaching/blocks/block";
import { ladder } from "../../../src/coaching/blocks/ladder";

const loads = (found: ReturnType<typeof ladder>) => found.steps.map(({ loadKg }) => loadKg);
const from = (over: Partial<Parameters<typeof ladder>[0]> = {}) =>
  ladder({
    block: rotation[0]!,
    loadKg: 70,
    guardKg: 100,
    stepKg: 2.5,
    largestStep: 0.05,
    ...over,
  });

test("from 5×5 at 70 of 100 kg each step adds one plate step", () => {
  const found = from();
  expect(found.steps.map(({ block }) => blockText(block))).toEqual(["5×5", "3×5", "5×3", "3×3"]);
  expect(loads(found)).toEqual([70, 72.5, 75, 77.5]);
  expect(found.lowered).toBeNull();
});

test("just two repetitions in reserve are enough: 3×3 at 87 of 100 kg, where the chart has five", () => {
  const found = from({ block: rotation[3]!, loadKg: 87 });
  expect(found).toEqual({
    steps: [{ block: rotation[3], loadKg: 87, reserve: 2 }],
    lowered: null,
  });
});

test("steps of 10 % from 75 would end at the best single: the start comes down", () => {
  // 75 × 1.331 is 99.8. On the chart 5 repetitions stand at 87 %: 3×3 with two in reserve is 87 kg
  // at most, 3×5 with two (seven repetitions, 83 %) 83 kg at most.
  const found = from({ loadKg: 75, stepKg: 7.5, largestStep: 0.1 });
  expect(found.steps.every(({ reserve }) => reserve! >= 2)).toBe(true);
  expect(found.lowered).not.toBeNull();
  expect(Math.max(...loads(found))).toBeLessThanOrEqual(87);
});

test("a plate step beyond the largest step keeps the load level", () => {
  expect(loads(from({ loadKg: 25, guardKg: 60 }))).toEqual([25, 25, 25, 25]);
});

test("every step leaves two repetitions, never starts above the load, and never falls", () => {
  const kg = fc.integer({ min: 8, max: 80 }).map((n) => 2.5 * n);
  fc.assert(
    fc.property(
      fc.constantFrom(...rotation),
      kg,
      kg,
      fc.constantFrom(0.025, 0.05, 0.1),
      (block, loadKg, guardKg, largestStep) => {
        const { steps } = from({ block, loadKg, guardKg, largestStep });
        for (const [i, step] of steps.entries()) {
          expect(step.reserve!).toBeGreaterThanOrEqual(2);
          expect(step.loadKg).toBeLessThan(guardKg);
          const before = steps[i - 1]?.loadKg ?? step.loadKg;
          expect(step.loadKg).toBeGreaterThanOrEqual(before);
          expect(step.loadKg).toBeLessThanOrEqual(before * (1 + largestStep) + 1e-9);
        }
        if (steps[0]) expect(steps[0].loadKg).toBeLessThanOrEqual(loadKg);
      },
    ),
  );
});
