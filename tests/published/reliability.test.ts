import { agreement } from "../../src/coaching/reliability/agreement";
import { intraclass } from "../../src/coaching/reliability/intraclass";
import { intraclassLimits } from "../../src/coaching/reliability/intraclass-limits";
import { percentTypicalError, twoTrials } from "../../src/coaching/reliability/typical-error";
import { mean, standardDeviation } from "../../src/statistics/spread";
import { expectWithin, figureOf } from "./figure-of";
import published from "./reliability.json";

function expectAll(found: object, expected: Record<string, number>, tolerance: number) {
  for (const [name, value] of Object.entries(expected)) {
    expectWithin((found as Record<string, number>)[name]!, value, tolerance);
  }
}

test("typical error, its limits and the detectable change of two trials", () => {
  const { first, second, expected, tolerance } = published.twoTrials;
  expectAll(figureOf(twoTrials(first, second)), expected, tolerance);
});

test("one person's six trials", () => {
  const { values, mean: middle, sd, tolerance } = published.sixTrials;
  expectWithin(figureOf(mean(values)), middle, tolerance);
  expectWithin(figureOf(standardDeviation(values)), sd, tolerance);
});

test("limits of agreement of two meters", () => {
  const { first, second, expected, tolerance } = published.agreement;
  expectAll(figureOf(agreement(first, second)), expected, tolerance);
});

test("six intraclass correlations and their mean squares", () => {
  const { rows, expected, tolerance } = published.intraclass;
  expectAll(figureOf(intraclass(rows)), expected, tolerance);
});

test("typical error of two trials in percent, from logarithms", () => {
  const { first, second } = published.twoTrials;
  const { expected, tolerance } = published.percent;
  expectWithin(figureOf(percentTypicalError(first, second)), expected, tolerance);
  expect(percentTypicalError([1, 0], [1, 1])).toMatchObject({
    refusal: { code: "value-not-above-zero", facts: { place: 2 } },
  });
});

test("95 % limits of three intraclass correlations", () => {
  const { expected, tolerance } = published.intraclassLimits;
  const limits = figureOf(intraclassLimits(published.intraclass.rows));
  for (const [name, [low, high]] of Object.entries(expected)) {
    const found = limits[name as keyof typeof limits];
    expectWithin(found.low, low!, tolerance);
    expectWithin(found.high, high!, tolerance);
  }
});
