import { theilSen } from "../../src/statistics/theil-sen";
import { mannKendall } from "../reference/mann-kendall";
import { expectWithin, figureOf } from "./figure-of";
import trend from "./trend.json";

type Case = {
  source: string;
  x?: number[];
  y: number[];
  s: number;
  variance?: number;
  z?: number;
  p?: number;
  slope: number;
  intercept?: number;
};

test.each(trend.cases as Case[])("$source", ({ x, y, s, variance, z, p, slope, intercept }) => {
  const kendall = figureOf(mannKendall(y));
  expect(kendall.s).toBe(s);
  if (variance !== undefined) expectWithin(kendall.variance, variance, 1e-6);
  if (z !== undefined) expectWithin(kendall.z, z, 1e-6);
  if (p !== undefined) expectWithin(kendall.p, p, 1e-6);
  const times = x ?? y.map((_, index) => index + 1);
  const line = figureOf(theilSen(times, y));
  expectWithin(line.slope, slope, 1e-6);
  if (intercept !== undefined) expectWithin(line.intercept, intercept, 1e-6);
});
