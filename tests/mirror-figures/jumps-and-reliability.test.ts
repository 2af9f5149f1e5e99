import { flightHeight } from "../../src/coaching/jumps/flight-height";
import { reactiveStrength } from "../../src/coaching/jumps/reactive-strength";
import { testDays } from "../../src/coaching/jumps/test-day";
import { agreement } from "../../src/coaching/reliability/agreement";
import { intraclass } from "../../src/coaching/reliability/intraclass";
import { trialReliability } from "../../src/coaching/reliability/trial-reliability";
import { jumpAttempt } from "../coaching/series/invented-season";
import { figureOf } from "../published/figure-of";
import { agree, onCases, same } from "./cases";
import { root } from "./matrix";

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;
/** Squares about the mean, from the differences of all pairs. */
const squares = (values: readonly number[]) =>
  sum(values.flatMap((a) => values.map((b) => (a - b) ** 2))) / (2 * values.length);

test("jump height: the rise whose way up and fall to the landing take the time in the air", () => {
  onCases(21, ({ real, coin }) => {
    const flightS = real(0.25, 0.9);
    const landingCm = coin() ? 0 : real(-60, 60);
    // Fall times of two heights; the landing cannot be higher than the rise.
    const time = (riseM: number) =>
      Math.sqrt((2 * riseM) / 9.80665) + Math.sqrt((2 * (riseM - landingCm / 100)) / 9.80665);
    const least = Math.max(0, landingCm / 100);
    const found = flightHeight(flightS, landingCm);
    if (time(least) > flightS) return same(found.ok, false, "not reached");
    agree(figureOf(found), 100 * root((rise) => time(rise) - flightS, least, 3), "cm");
  });
});

test("reactive strength, from millimetres and milliseconds; a day's figure the mean of its attempts'", () => {
  onCases(22, ({ whole, real, list }) => {
    const attempts = list(whole(1, 5), () =>
      jumpAttempt({ day: 3, heightCm: real(10, 60), contactS: real(0.12, 0.5) }),
    );
    const mmOverMs = attempts.map((one) => (one.heightCm! * 10) / (one.contactS! * 1000));
    attempts.forEach((one, i) => {
      agree(figureOf(reactiveStrength(one.heightCm!, one.contactS!)), mmOverMs[i]!, "attempt");
    });
    const [day] = testDays(attempts, []);
    agree(day!.reactiveStrength!, mean(mmOverMs), "day");
    agree(day!.heightCm!, mean(attempts.map((one) => one.heightCm!)), "height");
    agree(day!.contactS!, mean(attempts.map((one) => one.contactS!)), "contact");
  });
});

test("typical error of two trials: from the changes, not from the two-way squares of athletes and trials", () => {
  onCases(23, ({ whole, real, list }) => {
    const first = list(whole(2, 9), () => real(20, 60));
    const second = first.map((one) => one + real(-4, 5));
    const found = figureOf(trialReliability(first.map((one, i) => [one, second[i]!])));
    const n = first.length;
    const error = Math.sqrt(squares(first.map((a, i) => second[i]! - a)) / (n - 1) / 2);
    agree(found.typicalError, error, "typical error");
    agree(found.meanChange, mean(second) - mean(first), "mean change");
    agree(found.detectableChange, 1.96 * Math.sqrt(2) * error, "detectable");
    // Each limit has its share of chi-square beyond it.
    agree(below((n - 1) * (error / found.low) ** 2, n - 1), 0.975, "low");
    agree(below((n - 1) * (error / found.high) ** 2, n - 1), 0.025, "high");

    const both = figureOf(agreement(first, second));
    agree(both.bias, mean(first) - mean(second), "bias");
    agree(both.high - both.bias, 1.96 * Math.sqrt(2) * error, "limits");
    agree(both.bias - both.low, 1.96 * Math.sqrt(2) * error, "limits");

    const ratios = first.map((a, i) => second[i]! / a);
    const middle = Math.exp(mean(ratios.map(Math.log)));
    const logSd = Math.sqrt(sum(ratios.map((r) => Math.log(r / middle) ** 2)) / (n - 1));
    agree(found.percentError!, 100 * (Math.exp(logSd / Math.SQRT2) - 1), "percent");
  });
});

/** Chi-square below x, as a sum: whole degrees step down by two to 0 or 1. */
function below(x: number, degrees: number): number {
  let term = degrees % 2 === 0 ? Math.exp(-x / 2) : Math.sqrt((2 * x) / Math.PI) * Math.exp(-x / 2);
  let beyond = degrees % 2 === 0 ? 0 : twoSided(Math.sqrt(x));
  for (let of = degrees % 2 === 0 ? 2 : 3; of <= degrees; of += 2) {
    beyond += term;
    term *= x / of;
  }
  return 1 - beyond;
}

/** Normal deviates further off than z, by the series about 0 or the continued fraction. */
function twoSided(z: number): number {
  const density = (2 / Math.sqrt(2 * Math.PI)) * Math.exp((-z * z) / 2);
  if (z < 3.5) {
    let term = z;
    let total = z;
    for (let k = 3; k < 161; k += 2) {
      term *= (z * z) / k;
      total += term;
    }
    return 1 - density * total;
  }
  let rest = 0;
  for (let k = 80; k > 0; k--) rest = k / (z + rest);
  return density / (z + rest);
}

test("intraclass correlations: variance components from pairs within athletes and within trials", () => {
  onCases(24, ({ whole, real, list }) => {
    const k = whole(2, 4);
    const rows = list(whole(2, 7), () => {
      const level = real(20, 40);
      return list(k, () => level + real(-4, 4));
    });
    const n = rows.length;
    const columns = rows[0]!.map((_, j) => rows.map((row) => row[j]!));
    const within = sum(rows.map(squares)) / (n * (k - 1));
    const between = (k * squares(rows.map(mean))) / (n - 1);
    const trials = (n * squares(columns.map(mean))) / (k - 1);
    // Half the variance of the differences between two trials, the mean of all pairs of trials.
    const pairs = columns.flatMap((one, j) =>
      columns.slice(j + 1).map((other) => squares(one.map((a, i) => a - other[i]!))),
    );
    const error = mean(pairs) / (n - 1) / 2;
    const found = figureOf(intraclass(rows));
    agree(found.between, between, "between");
    agree(found.within, within, "within");
    agree(found.trials, trials, "trials");
    agree(found.error, error, "error");
    agree(figureOf(trialReliability(rows)).typicalError ** 2, error, "typical error");
    // As shares of variance: athletes' true spread against all of it.
    const share = (ofAthletes: number, rest: number) => ofAthletes / (ofAthletes + rest);
    const oneWay = (between - within) / k;
    const twoWay = (between - error) / k;
    const shift = (trials - error) / n;
    agree(found.oneWay, share(oneWay, within), "one way");
    agree(found.oneWayMean, share(oneWay, within / k), "one way, mean");
    agree(found.consistency, share(twoWay, error), "consistency");
    agree(found.consistencyMean, share(twoWay, error / k), "consistency, mean");
    agree(found.agreement, share(twoWay, error + shift), "agreement");
    agree(found.agreementMean, share(twoWay, (error + shift) / k), "agreement, mean");
  });
});
