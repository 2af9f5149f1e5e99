import type { LineFit, ZeroLoadPrior } from "./line-fit";
import type { LineSettings } from "./line-settings";

/** Own intercepts less sure than this, m/s, say nothing about the squad; fewer than three neither. */
const unsure = 0.4;
const leastAthletes = 3;
/** Athletes that the usual spread is worth. */
const spreadWorth = 3;

/**
 * The squad's speed at zero load and its spread between athletes, to steady each athlete's line:
 * random-effects mean of the athletes' own intercepts (DerSimonian & Laird 1986), its between-athlete
 * variance steadied by the usual spread worth three athletes, its mean by the usual speed, which may
 * be 0.35 m/s out. The mean's own uncertainty widens the prior.
 *
 * @param ownLines each athlete's line without a prior; null where rows cannot tell one
 */
export function squadZeroLoad(
  ownLines: readonly (LineFit | null)[],
  settings: LineSettings,
): ZeroLoadPrior {
  const { zeroLoadSpeed, zeroLoadSpread, zeroLoadDoubt } = settings;
  const sure = ownLines.filter(
    (line): line is LineFit =>
      line !== null && line.slope < 0 && line.interceptVariance <= unsure ** 2,
  );
  const athletes = sure.length;
  if (athletes < leastAthletes) return { speed: zeroLoadSpeed, sd: zeroLoadDoubt };

  const fixed = weightedMean(sure, 0);
  let heterogeneity = 0;
  let squaredWeights = 0;
  for (const { intercept, interceptVariance } of sure) {
    heterogeneity += (intercept - fixed.mean) ** 2 / interceptVariance;
    squaredWeights += 1 / interceptVariance ** 2;
  }
  const between = Math.max(
    0,
    (heterogeneity - (athletes - 1)) / (fixed.weight - squaredWeights / fixed.weight),
  );
  const spread =
    (spreadWorth * zeroLoadSpread ** 2 + (athletes - 1) * between) / (spreadWorth + athletes - 1);

  const random = weightedMean(sure, spread);
  const usualWeight = 1 / zeroLoadDoubt ** 2;
  const weight = random.weight + usualWeight;
  return {
    speed: (random.weight * random.mean + usualWeight * zeroLoadSpeed) / weight,
    sd: Math.sqrt(spread + 1 / weight),
  };
}

function weightedMean(lines: readonly LineFit[], between: number) {
  let weight = 0;
  let sum = 0;
  for (const { intercept, interceptVariance } of lines) {
    weight += 1 / (interceptVariance + between);
    sum += intercept / (interceptVariance + between);
  }
  return { mean: sum / weight, weight };
}
