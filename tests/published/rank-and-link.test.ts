import { jStat } from "jstat";
import { type ComparedDays, type Slope, slopeOf } from "../../src/coaching/diary/link";
import { closestStream } from "../../src/coaching/diary/permutation";
import { seededChance } from "../../src/coaching/diary/seeded-chance";
import { mannKendall } from "../reference/mann-kendall";
import { expectWithin, figureOf } from "./figure-of";
import many from "./many-tests.json";
import published from "./rank-and-link.json";

const centred = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
};
/** Days of one weekday without drift: what is left to compare is the item and the performance. */
const days = (
  item: readonly number[],
  performance: readonly number[],
  strata: readonly (readonly number[])[] = [item.map((_, at) => at)],
): ComparedDays => ({
  days: item.map((_, at) => 20_000 + 7 * at),
  item,
  itemCentred: centred(item),
  itemBeyond: centred(item),
  streams: [{ value: null, beyond: centred(performance), sizes: performance }],
  strata,
});
/** Mean of the p-values of many seeds: the shuffles' own scatter is taken out of the check. */
const seeds = 60;
const meanP = (...given: Parameters<typeof days>) => {
  const compared = days(...given);
  let sum = 0;
  for (let seed = 0; seed < seeds; seed++) {
    sum += closestStream([compared], seededChance(`published ${seed}`)).p;
  }
  return sum / seeds;
};
const ones = (count: number, of: number) => Array.from({ length: of }, (_, at) => +(at < count));

test("a diary link's slope has the published correlation and its p-value", () => {
  const { x, y, pearson, p, freedom, tolerance } = published;
  const compared = days(x, y);
  const slope = slopeOf(compared, compared.streams[0]!) as Slope;
  const t = slope.perUnit / slope.error;
  expect(slope.freedom).toBe(freedom);
  expectWithin(t / Math.sqrt(t * t + freedom), pearson, tolerance);
  expectWithin(2 * (1 - jStat.studentt.cdf(t, freedom)), p, tolerance);
});

test("in order of the one, the other rises in 26 of 36 pairs", () => {
  const { x, y, kendallT, tau, tolerance } = published;
  const order = x.map((_, at) => at).sort((a, b) => x[a]! - x[b]!);
  const pairs = (x.length * (x.length - 1)) / 2;
  const { s } = figureOf(mannKendall(order.map((at) => y[at]!)));
  expect(s).toBe(2 * kendallT - pairs);
  expectWithin(s / pairs, tau, tolerance);
});

/** 1,999 shuffles and the order seen, where dealing does not stop before: within four standard errors. */
function expectAllDealt(p: number, share: number) {
  expectWithin(p, (1 + 1999 * share) / 2000, 4 * Math.sqrt(share / 1999 / seeds));
}
/** Dealing stops after thirty as close: one p-value is good to about a fifth of itself. */
const expectStopped = (p: number, share: number) =>
  expectWithin(p, share, (4 * 0.2 * share) / Math.sqrt(seeds));

test("dealing out the items comes to the share of splits counted by hand", () => {
  const { first, second, ways, of } = many.groups;
  const p = meanP(ones(first.length, first.length + second.length), [...first, ...second]);
  expectAllDealt(p, ways / of);
});

test("dealt out within pairs of days it is the paired test of Darwin's maize", () => {
  const { differences, ways, of } = many.paired;
  const item = differences.flatMap(() => [1, 0]);
  const performance = differences.flatMap((one) => [one, 0]);
  const pairs = differences.map((_, pair) => [2 * pair, 2 * pair + 1]);
  expectStopped(meanP(item, performance, pairs), ways / of);
});

test.each(many.fisher)(
  "with an item that is there or not it is the exact test of a table of four: $source",
  ({ table, twoSided }) => {
    const [a, b, c, d] = table as [number, number, number, number];
    const item = [...ones(a + b, a + b), ...ones(0, c + d)];
    const performance = [...ones(a, a + b), ...ones(c, c + d)];
    const expectP = 1999 * twoSided > 30 ? expectStopped : expectAllDealt;
    expectP(meanP(item, performance), twoSided);
  },
);
