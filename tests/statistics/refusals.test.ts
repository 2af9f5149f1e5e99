import { agreement } from "../../src/coaching/reliability/agreement";
import { intraclass } from "../../src/coaching/reliability/intraclass";
import { intraclassLimits } from "../../src/coaching/reliability/intraclass-limits";
import { percentTypicalError, twoTrials } from "../../src/coaching/reliability/typical-error";
import { likeness, runLoad, weekLoad } from "../../src/coaching/season/run-load";
import { certain, refuse } from "../../src/outcome";
import {
  cumulativeSums,
  individualsChart,
  weightedAverages,
} from "../../src/statistics/control-chart";
import {
  chiSquareQuantile,
  normalQuantile,
  normalTwoSided,
  studentQuantile,
  studentTwoSided,
  varianceRatioQuantile,
} from "../../src/statistics/distributions";
import { adjustedForMany } from "../../src/statistics/false-discovery";
import { fisherExact } from "../../src/statistics/fisher-exact";
import { mannKendall } from "../../src/statistics/mann-kendall";
import { groupPermutation, pairedPermutation } from "../../src/statistics/permutation";
import {
  lagOneAutocorrelation,
  mean,
  median,
  standardDeviation,
} from "../../src/statistics/spread";
import { lineInterval, straightLine } from "../../src/statistics/straight-line";
import { theilSen } from "../../src/statistics/theil-sen";
import { figureOf } from "../published/figure-of";

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
const none = () => 0;
const line = figureOf(straightLine([1, 2, 3, 4], [2, 3, 5, 6]));

test.each([
  ["no values", () => mean([]), few(0, 1)],
  ["an endless x", () => straightLine([1, Number.NaN, 3], [1, 2, 3]), bad(2)],
  [
    "a share above 1",
    () => lineInterval(line, 1, 2, "row"),
    refuse("share-impossible", { share: 2 }),
  ],
  ["no middle value", () => median([]), few(0, 1)],
  ["a chart of one value", () => individualsChart([3]), few(1, 2)],
  ["an endless start", () => weightedAverages([1], Number.POSITIVE_INFINITY, 0.3), bad(1)],
  [
    "a weight above 1",
    () => weightedAverages([1], 0, 1.1),
    refuse("share-impossible", { share: 1.1 }),
  ],
  ["an endless aim", () => cumulativeSums([1], Number.NaN, 1), bad(1)],
  ["no differences", () => pairedPermutation([], none), few(0, 1)],
  ["no first group", () => groupPermutation([], [1], none), few(0, 1)],
  ["no second group", () => groupPermutation([1], [], none), few(0, 1)],
  ["one value has no next", () => lagOneAutocorrelation([2]), few(1, 2)],
  ["an endless t", () => studentTwoSided(Number.NaN, 3), bad(1)],
  [
    "endless degrees",
    () => studentTwoSided(1, Number.POSITIVE_INFINITY),
    refuse("degrees-impossible", { degrees: Number.POSITIVE_INFINITY }),
  ],
  ["an endless z", () => normalTwoSided(Number.NaN), bad(1)],
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
  ["an interval nowhere", () => lineInterval(line, Number.NaN, 0.9, "row"), bad(1)],
  [
    "an interval of all",
    () => lineInterval(line, 1, 1, "row"),
    refuse("share-impossible", { share: 1 }),
  ],
  [
    "an interval of none",
    () => lineInterval(line, 1, 0, "row"),
    refuse("share-impossible", { share: 0 }),
  ],
  [
    "a line of two rows",
    () => lineInterval({ ...line, rows: 2 }, 1, 0.9, "row"),
    refuse("degrees-impossible", { degrees: 0 }),
  ],
  ["a trend straight up", () => theilSen([2, 2], [1, 3]), refuse("values-all-equal", { found: 2 })],
  ["y not a number", () => theilSen([1, 2], [1, Number.NaN]), bad(2)],
  ["p below 0", () => adjustedForMany([-0.1]), refuse("probability-impossible", { place: 1 })],
  ["a count below 0", () => fisherExact(1, -1, 2, 1), refuse("counts-impossible")],
  [
    "unequal trials",
    () => agreement([1, 2], [1]),
    refuse("lengths-differ", { first: 2, second: 1 }),
  ],
  ["one athlete twice", () => twoTrials([1], [2]), few(1, 2)],
  ["one athlete in percent", () => percentTypicalError([1], [2]), few(1, 2)],
  ["no athletes", () => intraclass([]), few(0, 2)],
  ["one trial each", () => intraclassLimits([[1], [2]]), few(1, 2)],
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
  [
    "no error between trials",
    () =>
      intraclassLimits([
        [1, 2],
        [3, 4],
      ]),
    refuse("degrees-impossible", { degrees: Number.NaN }),
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
  ["all equal", () => lagOneAutocorrelation([2, 2]), refuse("values-all-equal", { found: 2 })],
  ["two rows", () => straightLine([1, 2], [1, 2]), few(2, 3)],
  ["upright", () => straightLine([1, 1, 1], [1, 2, 3]), refuse("values-all-equal", { found: 3 })],
  ["unequal", () => theilSen([1, 2], [1]), refuse("lengths-differ", { first: 2, second: 1 })],
  ["three values", () => mannKendall([1, 2, 3]), few(3, 4)],
  ["all tied", () => mannKendall([1, 1, 1, 1]), refuse("values-all-equal", { found: 4 })],
  ["a share of 1", () => normalQuantile(1), refuse("share-impossible", { share: 1 })],
  ["no degrees", () => studentQuantile(0.9, 0), refuse("degrees-impossible", { degrees: 0 })],
  ["no weight", () => weightedAverages([1], 0, 0), refuse("share-impossible", { share: 0 })],
  ["p above 1", () => adjustedForMany([0.1, 1.1]), refuse("probability-impossible", { place: 2 })],
  ["half a count", () => fisherExact(1, 2, 0.5, 1), refuse("counts-impossible")],
  ["exertion 11", () => runLoad(11, 30), refuse("exertion-impossible", { exertion: 11 })],
  ["no minutes", () => runLoad(5, 0), refuse("minutes-impossible", { minutes: 0 })],
  ["unrated run", () => weekLoad([run], 20_003), refuse("run-not-rated", { row: 7, day: 20_000 })],
  ["no runs", () => likeness(Array(7).fill(0)), refuse("load-unvarying", { days: 7 })],
])("%s is refused", (_, ask, expected) => {
  expect(ask()).toEqual(expected);
});

test("a flat line accounts for all of what never changes", () => {
  expect(figureOf(straightLine([1, 2, 3], [5, 5, 5]))).toMatchObject({ slope: 0, rSquared: 1 });
});

test("a figure that cannot be refused throws when it is, as that is our own mistake", () => {
  expect(certain(mean([1, 3]))).toBe(2);
  expect(() => certain(mean([]))).toThrow("values-too-few");
});
