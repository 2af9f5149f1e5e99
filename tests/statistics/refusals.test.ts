import { runLoad, weekLoad } from "../../src/coaching/season/run-load";
import { refuse } from "../../src/outcome";
import { weightedAverages } from "../../src/statistics/control-chart";
import { normalQuantile, studentQuantile } from "../../src/statistics/distributions";
import { adjustedForMany } from "../../src/statistics/false-discovery";
import { fisherExact } from "../../src/statistics/fisher-exact";
import { lagOneAutocorrelation, mean, standardDeviation } from "../../src/statistics/spread";
import { straightLine } from "../../src/statistics/straight-line";
import { mannKendall, theilSen } from "../../src/statistics/trend";

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

test.each([
  ["no values", mean([]), few(0, 1)],
  ["one value has no spread", standardDeviation([3]), few(1, 2)],
  ["not a number", mean([1, Number.NaN]), refuse("value-not-finite", { place: 2 })],
  ["endless", mean([Number.POSITIVE_INFINITY]), refuse("value-not-finite", { place: 1 })],
  ["all equal", lagOneAutocorrelation([2, 2]), refuse("values-all-equal", { found: 2 })],
  ["two rows", straightLine([1, 2], [1, 2]), few(2, 3)],
  ["upright", straightLine([1, 1, 1], [1, 2, 3]), refuse("values-all-equal", { found: 3 })],
  ["unequal", theilSen([1, 2], [1]), refuse("lengths-differ", { first: 2, second: 1 })],
  ["three values", mannKendall([1, 2, 3]), few(3, 4)],
  ["all tied", mannKendall([1, 1, 1, 1]), refuse("values-all-equal", { found: 4 })],
  ["a share of 1", normalQuantile(1), refuse("share-impossible", { share: 1 })],
  ["no degrees", studentQuantile(0.9, 0), refuse("degrees-impossible", { degrees: 0 })],
  ["no weight", weightedAverages([1], 0, 0), refuse("share-impossible", { share: 0 })],
  ["p above 1", adjustedForMany([0.1, 1.1]), refuse("probability-impossible", { place: 2 })],
  ["half a count", fisherExact(1, 2, 0.5, 1), refuse("counts-impossible")],
  ["exertion 11", runLoad(11, 30), refuse("exertion-impossible", { exertion: 11 })],
  ["no minutes", runLoad(5, 0), refuse("minutes-impossible", { minutes: 0 })],
  ["unrated run", weekLoad([run], 20_003), refuse("run-not-rated", { row: 7, day: 20_000 })],
  ["no runs", weekLoad([run], 20_007), refuse("load-unvarying", { days: 7 })],
])("%s is refused", (_, found, expected) => {
  expect(found).toEqual(expected);
});
