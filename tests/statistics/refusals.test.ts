import { agreement } from "../../src/coaching/reliability/agreement";
import { intraclass } from "../../src/coaching/reliability/intraclass";
import { trialReliability } from "../../src/coaching/reliability/trial-reliability";
import { likeness, runLoad, weekLoad } from "../../src/coaching/season/run-load";
import { certain, refuse } from "../../src/outcome";
import {
  chiSquareQuantile,
  normalQuantile,
  studentQuantile,
  varianceRatioQuantile,
} from "../../src/statistics/distributions";
import { adjustedForMany } from "../../src/statistics/false-discovery";
import { mean, standardDeviation } from "../../src/statistics/spread";
import { theilSen } from "../../src/statistics/theil-sen";
import { cumulativeSums, individualsChart, weightedAverages } from "../reference/control-chart";
import { mannKendall } from "../reference/mann-kendall";

const few = (found: number, needed: number) => refuse("values-too-few", { found, needed });
const run = {
  row: 7,
  day: 20_000,
  minute: null,
  athlete: "Runner one",
  kind: null,
  minutes: 40,
  exertion: null,
  km: null,
};

const bad = (place: number) => refuse("value-not-finite", { place });

test.each([
  [
    "no error between trials",
    () =>
      trialReliability([
        [1, 2],
        [3, 4],
      ]),
    refuse("trials-without-error"),
  ],
  [
    "endless degrees",
    () => studentQuantile(0.9, Number.POSITIVE_INFINITY),
    refuse("degrees-impossible", { degrees: Number.POSITIVE_INFINITY }),
  ],
  [
    "one trial each",
    () => trialReliability([[1], [2]]),
    refuse("trials-too-few", { athletes: 2, trials: 1 }),
  ],
  ["no values", () => mean([]), few(0, 1)],
  ["a chart of one value", () => individualsChart([3]), few(1, 2)],
  ["an endless start", () => weightedAverages([1], Number.POSITIVE_INFINITY, 0.3), bad(1)],
  [
    "a weight above 1",
    () => weightedAverages([1], 0, 1.1),
    refuse("share-impossible", { share: 1.1 }),
  ],
  ["an endless aim", () => cumulativeSums([1], Number.NaN, 1), bad(1)],
  ["a share of 0", () => chiSquareQuantile(0, 3), refuse("share-impossible", { share: 0 })],
  [
    "upper degrees below 0",
    () => varianceRatioQuantile(0.9, -1, 3),
    refuse("degrees-impossible", { degrees: -1 }),
  ],
  [
    "lower degrees of 0",
    () => varianceRatioQuantile(0.9, 3, 0),
    refuse("degrees-impossible", { degrees: 0 }),
  ],
  ["a trend straight up", () => theilSen([2, 2], [1, 3]), refuse("values-all-equal", { found: 2 })],
  ["x not a number", () => theilSen([1, Number.NaN], [1, 2]), bad(2)],
  ["y not a number", () => theilSen([1, 2], [1, Number.NaN]), bad(2)],
  ["p below 0", () => adjustedForMany([-0.1]), refuse("probability-impossible", { place: 1 })],
  [
    "unequal trials",
    () => agreement([1, 2], [1]),
    refuse("lengths-differ", { first: 2, second: 1 }),
  ],
  ["no athletes", () => intraclass([]), refuse("trials-too-few", { athletes: 0, trials: 0 })],
  [
    "a trial missing",
    () => intraclass([[1, 2], [3]]),
    refuse("lengths-differ", { first: 2, second: 1 }),
  ],
  [
    "a trial not a number",
    () =>
      intraclass([
        [1, 2],
        [3, Number.NaN],
      ]),
    bad(4),
  ],
  [
    "all trials equal",
    () =>
      intraclass([
        [2, 2],
        [2, 2],
      ]),
    refuse("values-all-equal", { found: 4 }),
  ],
  ["no days", () => likeness([]), few(0, 1)],
  ["a single day", () => likeness([300]), few(1, 2)],
  [
    "a run past all effort",
    () => weekLoad([{ ...run, exertion: 12 }], 20_003),
    refuse("exertion-impossible", { exertion: 12, row: 7 }),
  ],
  ["one value has no spread", () => standardDeviation([3]), few(1, 2)],
  ["not a number", () => mean([1, Number.NaN]), refuse("value-not-finite", { place: 2 })],
  ["endless", () => mean([Number.POSITIVE_INFINITY]), refuse("value-not-finite", { place: 1 })],
  ["unequal", () => theilSen([1, 2], [1]), refuse("lengths-differ", { first: 2, second: 1 })],
  ["three values", () => mannKendall([1, 2, 3]), few(3, 4)],
  ["all tied", () => mannKendall([1, 1, 1, 1]), refuse("values-all-equal", { found: 4 })],
  ["a share of 1", () => normalQuantile(1), refuse("share-impossible", { share: 1 })],
  ["no degrees", () => studentQuantile(0.9, 0), refuse("degrees-impossible", { degrees: 0 })],
  ["no weight", () => weightedAverages([1], 0, 0), refuse("share-impossible", { share: 0 })],
  ["p above 1", () => adjustedForMany([0.1, 1.1]), refuse("probability-impossible", { place: 2 })],
  ["exertion 11", () => runLoad(11, 30), refuse("exertion-impossible", { exertion: 11 })],
  ["no minutes", () => runLoad(5, 0), refuse("minutes-impossible", { minutes: 0 })],
  ["unrated run", () => weekLoad([run], 20_003), refuse("run-not-rated", { row: 7, day: 20_000 })],
  ["no runs", () => likeness(Array(7).fill(0)), refuse("load-unvarying", { days: 7 })],
])("%s is refused", (_, ask, expected) => {
  expect(ask()).toEqual(expected);
});

test("a figure that cannot be refused throws when it is, as that is our own mistake", () => {
  expect(certain(mean([1, 3]))).toBe(2);
  expect(() => certain(mean([]))).toThrow("values-too-few");
});
