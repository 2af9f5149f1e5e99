import { accept, certain, type Outcome, refuse } from "../../outcome";
import { chiSquareQuantile } from "../../statistics/distributions";
import { type Intraclass, intraclass } from "./intraclass";
import { type IntraclassLimits, intraclassLimits } from "./intraclass-limits";

/** How well a test repeats, in the test's unit where no other is named. */
export type TrialReliability = {
  readonly athletes: number;
  readonly trials: number;
  /** Mean of the last trial less that of the first. */
  readonly meanChange: number;
  /** √(error mean square); of two trials the SD of the changes / √2 (Hopkins 2000, Sports Med 30(1):1–15). */
  readonly typicalError: number;
  /** 95 % limits of the typical error, by chi-square with (athletes − 1)·(trials − 1) degrees of freedom. */
  readonly low: number;
  readonly high: number;
  /** 1.96·√2·typical error: a change that two trials must pass to be told from error (Weir 2005, J Strength Cond Res 19(1):231–240). */
  readonly detectableChange: number;
  /**
   * Typical error in percent of the value, from logarithms, 100·(e^typical error − 1), the scale on
   * which jumps and contact times are watched (Hopkins 2000); null where a value is not above 0.
   */
  readonly percentError: number | null;
  readonly correlations: Intraclass;
  readonly limits: IntraclassLimits;
};

/**
 * Repeatability of a test done two or more times by several athletes.
 *
 * @param rows one athlete a row, one trial a column
 * @returns Refuses as `intraclass`, and `trials-without-error` where every athlete's trials differ by
 * the same.
 */
export function trialReliability(rows: readonly (readonly number[])[]): Outcome<TrialReliability> {
  const figures = intraclass(rows);
  if (!figures.ok) return figures;
  if (figures.value.error === 0) return refuse("trials-without-error");
  const athletes = rows.length;
  const trials = rows[0]!.length;
  const typicalError = Math.sqrt(figures.value.error);
  const degrees = (athletes - 1) * (trials - 1);
  const limit = (share: number) =>
    typicalError * Math.sqrt(degrees / certain(chiSquareQuantile(share, degrees)));
  const change = rows.reduce((sum, row) => sum + row[trials - 1]! - row[0]!, 0);
  return accept({
    athletes,
    trials,
    meanChange: change / athletes,
    typicalError,
    low: limit(0.975),
    high: limit(0.025),
    detectableChange: 1.96 * Math.SQRT2 * typicalError,
    percentError: percentError(rows),
    correlations: figures.value,
    limits: intraclassLimits(figures.value, athletes, trials),
  });
}

function percentError(rows: readonly (readonly number[])[]): number | null {
  if (rows.some((row) => row.some((value) => !(value > 0)))) return null;
  const logs = intraclass(rows.map((row) => row.map(Math.log)));
  return logs.ok ? 100 * Math.expm1(Math.sqrt(logs.value.error)) : 0;
}
