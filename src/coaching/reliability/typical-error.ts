import { accept, certain, type Outcome, refuse } from "../../outcome";
import { chiSquareQuantile } from "../../statistics/distributions";
import { mean, standardDeviation } from "../../statistics/spread";
import { usablePairs } from "../../statistics/usable";

/** Repeatability of a test done twice by several athletes, in the test's unit. */
export type TwoTrials = {
  readonly meanChange: number;
  readonly changeSd: number;
  /** SD of the changes / √2 (Hopkins 2000, Sports Med 30(1):1–15). */
  readonly typicalError: number;
  /** 95 % limits of the typical error, by chi-square with n − 1 degrees of freedom. */
  readonly low: number;
  readonly high: number;
  /** 1.96·√2·typical error: a change two trials must pass to be told from error (Weir 2005, J Strength Cond Res 19(1):231–240). */
  readonly detectableChange: number;
};

/**
 * Refuses `lengths-differ`, `value-not-finite`, `values-too-few` below two athletes.
 *
 * @param first each athlete's first trial
 * @param second the same athletes' second trial, in the same order
 */
export function twoTrials(first: readonly number[], second: readonly number[]): Outcome<TwoTrials> {
  const given = usablePairs(first, second, 2);
  if (!given.ok) return given;
  const changes = second.map((value, index) => value - first[index]!);
  const changeSd = certain(standardDeviation(changes));
  const degrees = changes.length - 1;
  const typicalError = changeSd / Math.SQRT2;
  const limit = (share: number) =>
    typicalError * Math.sqrt(degrees / certain(chiSquareQuantile(share, degrees)));
  return accept({
    meanChange: certain(mean(changes)),
    changeSd,
    typicalError,
    low: limit(0.975),
    high: limit(0.025),
    detectableChange: 1.96 * Math.SQRT2 * typicalError,
  });
}

/**
 * Typical error in percent of the value, from logarithms: 100·(e^(SD of ln changes / √2) − 1), the
 * scale on which jumps and contact times are watched (Hopkins 2000).
 * Refuses as `twoTrials`, and `value-not-above-zero` by place.
 */
export function percentTypicalError(
  first: readonly number[],
  second: readonly number[],
): Outcome<number> {
  const place = [...first, ...second].findIndex((value) => !(value > 0));
  if (place >= 0) return refuse("value-not-above-zero", { place: place + 1 });
  const logs = twoTrials(first.map(Math.log), second.map(Math.log));
  return logs.ok ? accept(100 * Math.expm1(logs.value.typicalError)) : logs;
}
