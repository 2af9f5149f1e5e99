import {
  cumulativeSums,
  individualsChart,
  weightedAverages,
} from "../../src/statistics/control-chart";
import charts from "./control-charts.json";
import { expectWithin, figureOf } from "./figure-of";

test("individuals chart: centre and limits from moving ranges", () => {
  const { values, centre, meanRange, low, high } = charts.individuals;
  const found = figureOf(individualsChart(values));
  expectWithin(found.centre, centre, 1e-9);
  expectWithin(found.meanRange, meanRange, 1e-6);
  expectWithin(found.low, low, 1e-6);
  expectWithin(found.high, high, 1e-6);
});

test("weighted averages as printed", () => {
  const { values, start, weight, printed } = charts.averages;
  const found = figureOf(weightedAverages(values, start, weight));
  expect(found).toHaveLength(printed.length);
  found.forEach((average, i) => {
    expectWithin(average, printed[i]!, 5e-3);
  });
});

test("cumulative sums, and the first of them past the limit", () => {
  const { values, aim, slack, limit, above, below, firstSignal } = charts.sums;
  const found = figureOf(cumulativeSums(values, aim, slack));
  expect(found.above).toHaveLength(above.length);
  found.above.forEach((sum, i) => {
    expectWithin(sum, above[i]!, 1e-6);
    expectWithin(found.below[i]!, below[i]!, 1e-6);
  });
  expect(found.above.findIndex((sum) => sum > limit) + 1).toBe(firstSignal);
});
