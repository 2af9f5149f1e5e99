import { agreement } from "../../../src/coaching/reliability/agreement";
import { trialReliability } from "../../../src/coaching/reliability/trial-reliability";
import { refuse } from "../../../src/outcome";
import { figureOf } from "../../published/figure-of";
import published from "../../published/reliability.json";

test("limits of a typical error rest on athletes and trials together", () => {
  const { rows } = published.intraclass;
  const { typicalError, low, high } = figureOf(trialReliability(rows));
  // Chi-square with 5·3 degrees of freedom: 27.488 and 6.262 (NIST/SEMATECH e-Handbook 1.3.6.7.4, from memory).
  expect(low / typicalError).toBeCloseTo(Math.sqrt(15 / 27.488), 4);
  expect(high / typicalError).toBeCloseTo(Math.sqrt(15 / 6.262), 4);
});

test.each([
  [
    "none above 0",
    [
      [-1, 0.5],
      [0, -3],
    ],
  ],
  [
    "one at 0",
    [
      [1, 2],
      [0, 3],
      [4, 4],
    ],
  ],
  [
    "one below 0",
    [
      [1, 2],
      [2, 3.5],
      [4, -4],
    ],
  ],
])("a percent is of values above 0 alone: %s", (_, rows) => {
  expect(figureOf(trialReliability(rows)).percentError).toBeNull();
});

test("a percent is nought where all change by one factor, else it is of the factors' spread", () => {
  const one = [10, 11];
  const two = [20, 22];
  expect(figureOf(trialReliability([one, two, [30, 33]])).percentError).toBeCloseTo(0, 9);
  // Of a, a and b the SD is |a − b|/√3; over √2, that is /√6.
  const error = Math.log(1.1 / 1.01) / Math.sqrt(6);
  const { percentError } = figureOf(trialReliability([one, two, [30, 30.3]]));
  expect(percentError).toBeCloseTo(100 * Math.expm1(error), 9);
});

test.each([
  [
    "a column copied",
    [
      [30.1, 30.1],
      [28.4, 28.4],
      [0.3, 0.3],
    ],
  ],
  [
    "the same gain for all",
    [
      [30.1, 31.2],
      [28.4, 29.5],
      [0.1, 1.2],
    ],
  ],
  [
    "the same gain, and readings below 0",
    [
      [-300.1, -301.2],
      [-0.1, -1.2],
    ],
  ],
  [
    "the same gain, from nought",
    [
      [30.1, 31.2],
      [28.4, 29.5],
      [0, 1.1],
    ],
  ],
  [
    "three trials a constant apart",
    [
      [1.1, 1.2, 1.4],
      [7.3, 7.4, 7.6],
    ],
  ],
])("what rounding leaves is no error: %s", (_, rows) => {
  expect(trialReliability(rows)).toEqual(refuse("trials-without-error"));
});

test("a thousandth more for one athlete is an error, and is told", () => {
  const rows = [
    [30.1, 31.2],
    [28.4, 29.501],
    [33, 34.1],
  ];
  expect(figureOf(trialReliability(rows)).typicalError).toBeCloseTo(0.001 / Math.sqrt(6), 9);
});

test("an agreement between trials that is not above 0 has no limits", () => {
  const apart = [
    [1, 5],
    [5, 1],
    [3, 3.5],
  ];
  const { correlations, limits } = figureOf(trialReliability(apart));
  expect(correlations.agreement).toBeLessThan(0);
  expect(limits.agreement).toBeNull();
  expect(limits.consistency.low).toBeLessThan(limits.consistency.high);
});

test("two devices need two readings each", () => {
  expect(agreement([1], [2])).toEqual(refuse("values-too-few", { found: 1, needed: 2 }));
  expect(agreement([1, Number.NaN], [2, 3])).toEqual(refuse("value-not-finite", { place: 2 }));
});
