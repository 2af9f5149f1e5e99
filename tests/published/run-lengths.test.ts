import {
  cumulativeSums,
  weightedAverageLimit,
  weightedAverages,
} from "../../src/statistics/control-chart";
import { normalTwoSided } from "../../src/statistics/distributions";
import { chance } from "../bench/seasons/chance";
import { expectWithin, figureOf } from "./figure-of";
import lengths from "./run-lengths.json";

const piece = 256;

/** Mean length of so many runs until the first signal, and the standard error of that mean. */
function runLength(
  seed: number,
  shift: number,
  signals: (values: readonly number[]) => number,
): { mean: number; error: number } {
  const random = chance(seed);
  const found: number[] = [];
  for (let run = 0; run < lengths.runs; run++) {
    const values: number[] = [];
    let first = -1;
    for (let more = piece; first < 0; more = values.length) {
      for (let i = 0; i < more; i++) values.push(shift + random.normal());
      first = signals(values);
    }
    found.push(first + 1);
  }
  const mean = found.reduce((sum, one) => sum + one, 0) / found.length;
  const squares = found.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return { mean, error: Math.sqrt(squares) / found.length };
}

test.each(lengths.sums)(
  "two-sided sums, slack $slack, limit $limit, shift $shift: $mean",
  (given) => {
    const { slack, limit, shift, mean } = given;
    const found = runLength(61_000 + 10 * limit + shift, shift, (values) => {
      const { above, below } = figureOf(cumulativeSums(values, 0, slack));
      return above.findIndex((sum, i) => sum > limit || below[i]! > limit);
    });
    expectWithin(found.mean, mean, 4 * found.error);
  },
);

test.each(lengths.averages)("weighted averages, weight $weight, $width SD: $mean", (given) => {
  const { weight, width, mean } = given;
  const limit = figureOf(weightedAverageLimit(1, weight, width));
  const found = runLength(62_000 + 100 * weight, 0, (values) =>
    figureOf(weightedAverages(values, 0, weight)).findIndex((one) => Math.abs(one) > limit),
  );
  expectWithin(found.mean, mean, 4 * found.error);
});

test.each(lengths.threeSd)("single values three SD out, shift %d SD: one in %d", (shift, mean) => {
  const upper = figureOf(normalTwoSided(3 - shift!)) / 2;
  const lower = figureOf(normalTwoSided(3 + shift!)) / 2;
  expectWithin(1 / (upper + lower), mean!, lengths.threeSdTolerance);
});
