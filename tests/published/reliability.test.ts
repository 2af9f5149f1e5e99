import { intraclass } from "../../src/coaching/reliability/intraclass";
import { mean, standardDeviation } from "../../src/statistics/spread";
import { reliabilityLabels as label } from "../../src/words/reliability";
import { column, expectWithin, figureOf, formula, namedFigures } from "./figure-of";
import published from "./reliability.json";

const twoTrials = published.twoTrials.first.map((first, at) => [
  first,
  published.twoTrials.second[at]!,
]);

test("typical error, its limits and the detectable change of two trials", () => {
  const { expected, tolerance } = published.twoTrials;
  const found = namedFigures("RELIABILITY", twoTrials);
  expectWithin(found.get(label.meanChange)![0], expected.meanChange, tolerance);
  const [error, low, high] = found.get(label.typicalError)!;
  expectWithin(error, expected.typicalError, tolerance);
  expectWithin(low, expected.low, tolerance);
  expectWithin(high, expected.high, tolerance);
  // The changes' own spread is √2 times the error of one trial.
  expectWithin(Math.SQRT2 * error, expected.changeSd, 2 * tolerance);
  expectWithin(found.get(label.detectableChange)![0], expected.detectableChange, tolerance);
});

test("typical error of two trials in percent, from logarithms", () => {
  const { expected, tolerance } = published.percent;
  const found = namedFigures("RELIABILITY", twoTrials);
  expectWithin(found.get(label.percentError)![0], expected, tolerance);
});

test("one person's six trials", () => {
  const { values, mean: middle, sd, tolerance } = published.sixTrials;
  expectWithin(figureOf(mean(values)), middle, tolerance);
  expectWithin(figureOf(standardDeviation(values)), sd, tolerance);
});

test("limits of agreement of two meters", () => {
  const { first, second, expected, tolerance } = published.agreement;
  const [found] = formula("AGREEMENT", column(first), column(second)) as number[][];
  expectWithin(found![0]!, expected.bias, tolerance);
  expectWithin(found![1]!, expected.low, tolerance);
  expectWithin(found![2]!, expected.high, tolerance);
});

const correlations = [
  "oneWay",
  "agreement",
  "consistency",
  "oneWayMean",
  "agreementMean",
  "consistencyMean",
] as const;
test.each(correlations)("intraclass correlation of four judges: %s", (name) => {
  const { rows, expected, tolerance } = published.intraclass;
  expectWithin(namedFigures("RELIABILITY", rows).get(label[name])![0], expected[name], tolerance);
});

test("typical error of four trials is the root of their error mean square", () => {
  const { rows, expected, tolerance } = published.intraclass;
  const [error] = namedFigures("RELIABILITY", rows).get(label.typicalError)!;
  expectWithin(error, expected.typicalError, tolerance);
  const squares = figureOf(intraclass(rows));
  for (const name of ["between", "within", "trials", "error"] as const)
    expectWithin(squares[name], expected[name], tolerance);
});

test.each(["oneWay", "agreement", "consistency"] as const)(
  "95 % limits of an intraclass correlation: %s",
  (name) => {
    const { expected, tolerance } = published.intraclassLimits;
    const [, low, high] = namedFigures("RELIABILITY", published.intraclass.rows).get(label[name])!;
    expectWithin(low, expected[name][0]!, tolerance);
    expectWithin(high, expected[name][1]!, tolerance);
  },
);
