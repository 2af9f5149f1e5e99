import { figureOf } from "../../published/figure-of";
import { cumulativeSums, weightedAverages } from "../../reference/control-chart";
import type { SimulatedAthlete } from "./world";

/**
 * Other ways to watch a season. Each gives, session by session after the baseline, a figure that is
 * larger the more the athlete seems to have lost; a flag is a figure above a limit. All are handed
 * the athlete's true load–speed line, which no coach has: the comparison favours them.
 */
export type Rival = {
  readonly name: string;
  /** The limit in everyday use; null when there is none. */
  readonly usualLimit: number | null;
  readonly path: (athlete: SimulatedAthlete, baseline: number, fallSize: number) => number[];
};

/** Percent values of one measure, null where it was not taken. */
const percents = (athlete: SimulatedAthlete, measure: number) =>
  athlete.sessions.map((session) => {
    const score = session.scores[measure];
    return score === null || score === undefined ? null : score * athlete.typicalError[measure]!;
  });

const present = (values: readonly (number | null)[]) =>
  values.filter((value): value is number => value !== null);
const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
const deviation = (values: readonly number[]) => {
  const centre = mean(values);
  return Math.sqrt(values.reduce((sum, v) => sum + (v - centre) ** 2, 0) / (values.length - 1));
};

/** Largest over the three measures of some figure that looks at the values up to session `s`. */
function anyMeasure(
  figure: (upTo: (number | null)[], athlete: SimulatedAthlete, measure: number) => number,
) {
  return (athlete: SimulatedAthlete, baseline: number) => {
    const series = [0, 1, 2].map((measure) => percents(athlete, measure));
    const path: number[] = [];
    for (let s = baseline; s < athlete.sessions.length; s++) {
      path.push(
        Math.max(
          ...series.map((values, measure) => figure(values.slice(0, s + 1), athlete, measure)),
        ),
      );
    }
    return path;
  };
}

const none = Number.NEGATIVE_INFINITY;

/** One reading so many percent under the baseline mean. */
const oneReading = (baseline: number) =>
  anyMeasure((values) => {
    const base = present(values.slice(0, baseline));
    const today = values[values.length - 1];
    return base.length < 3 || today === null || today === undefined ? none : mean(base) - today;
  });

/** So many standard deviations under the rolling mean of the four weeks before. */
const underRolling = anyMeasure((values, athlete) => {
  const at = values.length - 1;
  const today = values[at];
  if (today === null || today === undefined) return none;
  const day = athlete.sessions[at]!.day;
  const before = present(
    values.slice(0, at).map((v, i) => (day - athlete.sessions[i]!.day <= 28 ? v : null)),
  );
  return before.length < 4 ? none : (mean(before) - today) / deviation(before);
});

/** Mean of the last four readings so many percent under the baseline mean. */
const lastFour = (baseline: number) =>
  anyMeasure((values) => {
    const base = present(values.slice(0, baseline));
    const after = present(values.slice(baseline));
    return base.length < 3 || after.length < 4 ? none : mean(base) - mean(after.slice(-4));
  });

/** Exponentially weighted mean of the measures' mean score, weight 0.3 (Roberts 1959). */
function ewma(athlete: SimulatedAthlete, baseline: number): number[] {
  const series = [0, 1, 2].map((measure) => percents(athlete, measure));
  const scales = series.map((values) => {
    const base = present(values.slice(0, baseline));
    return base.length < 3 ? null : { centre: mean(base), spread: deviation(base) };
  });
  const means: number[] = [];
  // How many of them each session has behind it: one without a value leaves the average where it is.
  const known: number[] = [];
  for (let s = baseline; s < athlete.sessions.length; s++) {
    const scores: number[] = [];
    series.forEach((values, measure) => {
      const value = values[s];
      const scale = scales[measure];
      if (value !== null && value !== undefined && scale)
        scores.push((value - scale.centre) / Math.max(scale.spread, 1));
    });
    if (scores.length > 0) means.push(mean(scores));
    known.push(means.length);
  }
  const averages = figureOf(weightedAverages(means, 0, 0.3));
  return known.map((count) => (count === 0 ? 0 : -averages[count - 1]!));
}

/** Page's cumulative sum for a fall of known size, mean, typical errors and correlation (Page 1954). */
function allKnowing(correlation: number) {
  return (athlete: SimulatedAthlete, baseline: number, fallSize: number): number[] => {
    const steps: number[] = [];
    for (let s = baseline; s < athlete.sessions.length; s++) {
      // Equal correlation: the inverse covariance has a closed form (Sherman & Morrison 1950).
      const shifts: number[] = [];
      const scores: number[] = [];
      athlete.sessions[s]!.scores.forEach((score, measure) => {
        if (score === null) return;
        scores.push(score);
        shifts.push(fallSize / athlete.typicalError[measure]!);
      });
      const count = scores.length;
      const shrink = correlation / (1 + (count - 1) * correlation);
      const form = (a: readonly number[], b: readonly number[]) => {
        const total = (values: readonly number[]) => values.reduce((t, v) => t + v, 0);
        const dot = a.reduce((t, v, i) => t + v * b[i]!, 0);
        return (dot - shrink * total(a) * total(b)) / (1 - correlation);
      };
      steps.push(count > 0 ? form(shifts, scores) - form(shifts, shifts) / 2 : 0);
    }
    return figureOf(cumulativeSums(steps, 0, 0)).above;
  };
}

export function rivals(baseline: number, correlation: number): readonly Rival[] {
  return [
    { name: "one reading 10 % down", usualLimit: 10, path: oneReading(baseline) },
    { name: "1 SD under the last four weeks", usualLimit: 1, path: underRolling },
    { name: "last four 5 % under baseline", usualLimit: 5, path: lastFour(baseline) },
    { name: "EWMA 0.3", usualLimit: null, path: ewma },
    { name: "all-knowing", usualLimit: null, path: allKnowing(correlation) },
  ];
}
