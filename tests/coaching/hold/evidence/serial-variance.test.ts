import {
  runInflation,
  runsApartVariance,
} from "../../../../src/coaching/hold/evidence/serial-variance";

/** Variance of a weighted sum by its definition, every pair of readings in turn. */
function byPairs(shares: readonly number[], serial: number): number {
  let sum = 0;
  shares.forEach((a, i) => {
    shares.forEach((b, j) => {
      sum += a * b * serial ** Math.abs(i - j);
    });
  });
  return sum;
}
const run = (readings: number) => Array.from({ length: readings }, () => 1 / readings);

test.each([
  [2, 0.4],
  [5, 0.2],
  [20, 0.6],
])("a mean of %i readings, each error %d of the last, by its definition", (readings, serial) => {
  expect(runInflation(readings, serial) / readings).toBeCloseTo(byPairs(run(readings), serial), 10);
});

test("two neighbouring runs' means apart, by the definition", () => {
  const shares = [...run(7).map((share) => -share), ...run(3)];
  expect(runsApartVariance([3, 7], [3, 7], 0.4)).toBeCloseTo(byPairs(shares, 0.4), 10);
  // Readings that weigh twice as much err half as much.
  expect(runsApartVariance([3, 7], [6, 14], 0.4)).toBeCloseTo(byPairs(shares, 0.4) / 2, 10);
});

test("independent readings are not widened", () => {
  expect(runInflation(4, 0)).toBe(1);
  expect(runsApartVariance([3, 7], [3, 7], 0)).toBeCloseTo(1 / 3 + 1 / 7, 12);
});
