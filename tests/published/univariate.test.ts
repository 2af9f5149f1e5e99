import { usualHoldSettings } from "../../src/coaching/hold/hold-settings";
import { ownTypicalErrors } from "../../src/coaching/hold/yardsticks/own-typical-error";
import { mean, standardDeviation } from "../../src/statistics/spread";
import { expectDigits, figureOf } from "./figure-of";
import nist from "./nist-univariate.json";

test.each(nist.sets)("$name keeps its certified mean and standard deviation", (set) => {
  expectDigits(figureOf(mean(set.values)), set.mean, nist.tolerance);
  expectDigits(figureOf(standardDeviation(set.values)), set.standardDeviation, nist.tolerance);
});

const withLag = nist.sets.flatMap(({ lagOne, name, values }) =>
  lagOne === undefined ? [] : [{ name, values, lagOne }],
);
/** One athlete's own typical error after all rows, with nothing of a squad in it. */
const plain = { ...usualHoldSettings, squadWorth: 0, leastError: 0, serial: 0 };
test.each(withLag)(
  "$name keeps its lag-1 autocorrelation by a typical error from successive differences",
  ({ values, lagOne }) => {
    const error = ownTypicalErrors(values, 0, plain).at(-1)!;
    const middle = figureOf(mean(values));
    const squares = (values.length - 1) * figureOf(standardDeviation(values)) ** 2;
    // Σ(x − x̄)(next − x̄) is all squares less half the two ends' and half the squared differences
    // (von Neumann 1941).
    const ends = (values[0]! - middle) ** 2 + (values.at(-1)! - middle) ** 2;
    const differences = (values.length - 1) * error ** 2;
    expectDigits(1 - (ends / 2 + differences) / squares, lagOne, 1e-11);
  },
);

// Constructed after the NumAcc idea; mean and SD follow by arithmetic: 1001 values, 500 at each side 0.1 off.
test.each([
  [1, 1e-12],
  [1_000_000, 1e-8],
  [10_000_000, 1e-7],
])("1001 values 0.1 about %d have SD 0.1 and do not drown in their own mean", (base, share) => {
  const pairs = Array.from({ length: 500 }, () => [base + 0.1, base + 0.3]).flat();
  const values = [base + 0.2, ...pairs];
  expectDigits(figureOf(mean(values)), base + 0.2, 1e-14);
  expectDigits(figureOf(standardDeviation(values)), 0.1, share);
});
