import { refuse } from "../../src/outcome";
import {
  cumulativeSums,
  individualsChart,
  sumsPlan,
  weightedAverageLimit,
  weightedAverages,
} from "../reference/control-chart";
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

test("individuals chart with the exact constant 2/√π", () => {
  const { values, exactConstant } = charts.individuals;
  const found = figureOf(individualsChart(values, 2 / Math.sqrt(Math.PI)));
  expectWithin(found.high, exactConstant.high, 1e-6);
  expectWithin(found.low, exactConstant.low, 1e-6);
});

test("limits of weighted averages, settled and while they start", () => {
  const { start, weight, limits } = charts.averages;
  const settled = figureOf(weightedAverageLimit(limits.sd, weight, limits.width));
  expectWithin(start + settled, limits.high, limits.tolerance);
  expectWithin(start - settled, limits.low, limits.tolerance);
  for (const [rows, half] of limits.starting) {
    expectWithin(
      figureOf(weightedAverageLimit(limits.sd, weight, limits.width, rows)),
      half!,
      1e-6,
    );
  }
});

test("slack and limit of the cumulative sums follow from the shift to be found", () => {
  const { plan, slack, limit } = charts.sums;
  const sdOfMeans = plan.sdOfOne / Math.sqrt(plan.ofMeans);
  const found = figureOf(sumsPlan(sdOfMeans, sdOfMeans, plan.falseShare));
  expectWithin(found.slack, plan.slack, 1e-9);
  expectWithin(found.limit, plan.limit, plan.tolerance);
  expectWithin(found.slack, slack, 1e-9);
  expectWithin(found.limit, limit, plan.tolerance);
  // A shift of two SDs is found sooner: half the square of a half, times ln(1/share), times one SD.
  expect(figureOf(sumsPlan(2, 1, plan.falseShare)).limit).toBeCloseTo(
    0.5 * Math.log(1 / plan.falseShare),
    12,
  );
});

test("a weight or a share that cannot be is refused", () => {
  const impossible = (share: number) => refuse("share-impossible", { share });
  for (const share of [0, 1.1])
    expect(weightedAverageLimit(1, share, 3)).toEqual(impossible(share));
  for (const share of [0, 1, -0.5]) expect(sumsPlan(1, 1, share)).toEqual(impossible(share));
});

test("with a weight of one the average is the value itself, and strays as far as one value does", () => {
  expect(figureOf(weightedAverages([4, 7, 5], 1, 1))).toEqual([4, 7, 5]);
  expect(figureOf(weightedAverageLimit(2, 1, 3))).toBe(6);
});
