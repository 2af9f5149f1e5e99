import { cumulativeSums, weightedAverageLimit, weightedAverages } from "../reference/control-chart";
import { normalTwoSided } from "../reference/normal-two-sided";
import { expectWithin, figureOf } from "./figure-of";
import { lengthAboveZero, lengthBothSides } from "./run-length-chain";
import lengths from "./run-lengths.json";

test.each(lengths.sums)(
  "two-sided sums, slack $slack, limit $limit, shift $shift: $mean",
  ({ slack, limit, shift, mean }) => {
    // The first value brings the sum to where it stands.
    const above = (standing: number, value: number) =>
      figureOf(cumulativeSums([standing + slack, value], 0, slack)).above[1]!;
    const below = (standing: number, value: number) =>
      figureOf(cumulativeSums([-standing - slack, -value], 0, slack)).below[1]!;
    // Either side alone; together they signal as often as both (Kemp 1961).
    const up = lengthAboveZero(above, limit, shift);
    const down = lengthAboveZero(below, limit, -shift);
    expectWithin(1 / (1 / up + 1 / down), mean, lengths.sumsTolerance);
  },
);

test.each(lengths.averages)("weighted averages, weight $weight, $width SD: $mean", (given) => {
  const { weight, width, mean } = given;
  const step = (standing: number, value: number) =>
    figureOf(weightedAverages([value], standing, weight))[0]!;
  const limit = figureOf(weightedAverageLimit(1, weight, width));
  expectWithin(lengthBothSides(step, limit, 0), mean, lengths.averagesTolerance);
});

test.each(lengths.threeSd)("single values three SD out, shift %d SD: one in %d", (shift, mean) => {
  const upper = normalTwoSided(3 - shift!) / 2;
  const lower = normalTwoSided(3 + shift!) / 2;
  expectWithin(1 / (upper + lower), mean!, lengths.threeSdTolerance);
});
