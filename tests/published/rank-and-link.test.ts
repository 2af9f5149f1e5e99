import { jStat } from "jstat";
import { type ComparedDays, type Slope, slopeOf } from "../../src/coaching/diary/link";
import { closestStream } from "../../src/coaching/diary/permutation";
import { seededChance } from "../../src/coaching/diary/seeded-chance";
import { mannKendall } from "../../src/statistics/mann-kendall";
import { expectWithin, figureOf } from "./figure-of";
import many from "./many-tests.json";
import published from "./rank-and-link.json";

const centred = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
};
/** Days of one weekday without drift: what is left to compare is the item and the performance. */
const days = (item: readonly number[], performance: readonly number[]): ComparedDays => ({
  days: item.map((_, at) => 20_000 + 7 * at),
  item,
  itemCentred: centred(item),
  itemBeyond: centred(item),
  streams: [{ value: null, beyond: centred(performance), sizes: performance }],
  strata: [item.map((_, at) => at)],
});
/** Mean of the p-values of many seeds: the shuffles' own scatter is taken out of the check. */
const seeds = 60;
const meanP = (item: readonly number[], performance: readonly number[]) => {
  const compared = days(item, performance);
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

test("dealing out the items comes to the share of splits counted by hand", () => {
  const { first, second, ways, of } = many.groups;
  const p = meanP(ones(first.length, first.length + second.length), [...first, ...second]);
  // 1,999 shuffles and the order seen: four standard errors of the mean of the seeds.
  const error = Math.sqrt(ways / of / 1999 / seeds);
  expectWithin(p, (1 + (1999 * ways) / of) / 2000, 4 * error);
});

test("with an item that is there or not it is the exact test of a table of four", () => {
  const [tea, right] = many.fisher;
  for (const { table, twoSided } of [tea!, right!]) {
    const [a, b, c, d] = table as [number, number, number, number];
    const item = [...ones(a + b, a + b), ...ones(0, c + d)];
    const performance = [...ones(a, a + b), ...ones(c, c + d)];
    // Dealing stops after thirty as close: one p-value is good to about a fifth of itself.
    expectWithin(meanP(item, performance), twoSided, (4 * 0.2 * twoSided) / Math.sqrt(seeds));
  }
});
