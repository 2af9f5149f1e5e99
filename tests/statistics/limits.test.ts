import { jStat } from "jstat";
import { normalQuantile } from "../../src/statistics/distributions";
import { normalDeviate, studentLimit } from "../../src/statistics/limits";
import { mean, meanIfAny, standardDeviation } from "../../src/statistics/spread";

/**
 * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2: upper critical values of Student's t, to
 * the three decimals printed; its last row is the normal limit.
 */
test.each([
  [80, 1, 3.078],
  [80, 12, 1.356],
  [90, 1, 6.314],
  [90, 4, 2.132],
  [90, 12, 1.782],
  [90, 30, 1.697],
  [95, 2, 4.303],
  [95, 10, 2.228],
  [95, 60, 2.0],
  [98, 9, 2.821],
  [99, 20, 2.845],
])("%i %% limit, %i degrees of freedom", (percent, degrees, printed) => {
  expect(Math.abs(studentLimit(percent, degrees) - printed)).toBeLessThanOrEqual(0.0005);
});

test.each([
  [0.9, 1.282],
  [0.95, 1.645],
  [0.975, 1.96],
  [0.99, 2.326],
  [0.995, 2.576],
])("normal deviate with a share of %d below", (share, printed) => {
  expect(Math.abs(normalDeviate(share) - printed)).toBeLessThanOrEqual(0.0005);
  expect(normalDeviate(1 - share)).toBeCloseTo(-normalDeviate(share), 9);
  expect(normalQuantile(share)).toEqual({ ok: true, value: normalDeviate(share) });
});

test("the share outside the limit is the one asked for, parts of degrees included", () => {
  for (const degrees of [1, 2.5, 9, 12, 33.3, 400]) {
    for (const percent of [80, 90, 95, 98.8]) {
      const above = 1 - jStat.studentt.cdf(studentLimit(percent, degrees), degrees);
      expect(above).toBeCloseTo(0.5 - percent / 200, 7);
    }
  }
});

test("a limit asked for again, and after thousands of others, is the same", () => {
  const first = studentLimit(90, 12);
  expect(studentLimit(90, 12)).toBe(first);
  for (let degrees = 1; degrees <= 2500; degrees++) studentLimit(90, degrees);
  expect(studentLimit(90, 12)).toBe(first);
  expect(studentLimit(91, 12)).toBeGreaterThan(first);
  expect(studentLimit(9, 12)).toBeLessThan(first);
});

test("a mean of none is none", () => {
  expect(meanIfAny([])).toBeNull();
  expect(meanIfAny([2, 4])).toBe(3);
});

test("a mean is right to its last digit, and a spread though it lies far from zero", () => {
  expect(mean([8.4, 3.6, 4.2])).toEqual({ ok: true, value: 5.4 });
  expect(mean([4.4, 5.9, 7.4])).toEqual({ ok: true, value: 5.9 });
  // 0, 1 and 1: mean 2/3, squares 2/3 over two; the mean beside 10¹⁵ is known to an eighth only.
  const far = standardDeviation([1e15, 1e15 + 1, 1e15 + 1]);
  expect(far).toEqual({ ok: true, value: expect.closeTo(Math.sqrt(1 / 3), 12) });
});
