import type { LineFit, ZeroLoadPrior } from "./line-fit";
import type { LineSettings } from "./line-settings";

/** Fewer athletes than this say nothing about the squad. */
const leastAthletes = 3;
/** Athletes that the usual spread is worth. */
const spreadWorth = 3;

/** Which of the athletes' own lines are pooled. */
export type ZeroLoadChoice = {
  /** Largest standard error of an intercept, m/s. */
  readonly unsure: number;
  /** Leave out lines that do not fall with load. */
  readonly onlyFalling: boolean;
  /**
   * How far, (m/s)², the usual between-athlete variance may be out when it is weighed against the
   * squad's by precision; null weighs it as so many athletes instead.
   */
  readonly varianceDoubt: number | null;
};

/** Lines of a few weeks: those that can stand alone. */
export const sureLines: ZeroLoadChoice = { unsure: 0.4, onlyFalling: true, varianceDoubt: null };

/**
 * Lines of a season: also those that say little alone, for twenty of them say much together; leaving
 * out the rising ones would push the rest's mean up.
 */
export const allLines: ZeroLoadChoice = { unsure: 2, onlyFalling: false, varianceDoubt: 0.02 };

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
  { unsure, onlyFalling, varianceDoubt }: ZeroLoadChoice = sureLines,
): ZeroLoadPrior {
  const { zeroLoadSpeed, zeroLoadSpread, zeroLoadDoubt } = settings;
  const sure = ownLines.filter(
    (line): line is LineFit =>
      line !== null && (line.slope < 0 || !onlyFalling) && line.interceptVariance <= unsure ** 2,
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
  const information = fixed.weight - squaredWeights / fixed.weight;
  const between = Math.max(0, (heterogeneity - (athletes - 1)) / information);
  // What the squad says about the spread: by its athletes, or by how well they say it.
  const squadSays =
    varianceDoubt === null
      ? (athletes - 1) / (spreadWorth + athletes - 1)
      : varianceDoubt ** 2 / (varianceDoubt ** 2 + (2 * (athletes - 1)) / information ** 2);
  const spread = squadSays * between + (1 - squadSays) * zeroLoadSpread ** 2;

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
