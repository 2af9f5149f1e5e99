import { studentQuantile } from "../../src/statistics/distributions";
import { studentLimit } from "../../src/statistics/student-series";

/** The general-purpose library's exact quantile is the reference. */
const exact = (percent: 90 | 95, degrees: number) => {
  const quantile = studentQuantile(0.5 + percent / 200, degrees);
  if (!quantile.ok) throw new Error(quantile.refusal.code);
  return quantile.value;
};

test.each([90, 95] as const)("the series keeps to the exact %i %% limit", (percent) => {
  for (let degrees = 4; degrees <= 60; degrees++) {
    const off = Math.abs(studentLimit(percent, degrees) - exact(percent, degrees));
    expect(off).toBeLessThan(degrees < 8 ? 0.01 : 0.001);
  }
});

test("with ever more degrees it becomes the normal limit, from above", () => {
  expect(studentLimit(95, Number.POSITIVE_INFINITY)).toBe(1.959964);
  expect(studentLimit(90, 1e6)).toBeGreaterThan(1.644854);
});
