import { jStat } from "jstat";
import { accept, type Outcome, refuse } from "../outcome";

/** Student t with a share p of it below. Refuses `share-impossible` (0 < p < 1), `degrees-impossible`. */
export function studentQuantile(share: number, degrees: number): Outcome<number> {
  return (
    refusedShare(share) ?? refusedDegrees(degrees) ?? accept(jStat.studentt.inv(share, degrees))
  );
}

/** Chi-square with a share p of it below. Refuses as `studentQuantile`. */
export function chiSquareQuantile(share: number, degrees: number): Outcome<number> {
  return (
    refusedShare(share) ?? refusedDegrees(degrees) ?? accept(jStat.chisquare.inv(share, degrees))
  );
}

/** Ratio of variances F with a share p of it below. Refuses as `studentQuantile`, either degrees. */
export function varianceRatioQuantile(
  share: number,
  upper: number,
  lower: number,
): Outcome<number> {
  return (
    refusedShare(share) ??
    refusedDegrees(upper) ??
    refusedDegrees(lower) ??
    accept(jStat.centralF.inv(share, upper, lower))
  );
}

/** Standard normal deviate with a share p of it below. Refuses `share-impossible`. */
export function normalQuantile(share: number): Outcome<number> {
  return refusedShare(share) ?? accept(jStat.normal.inv(share, 0, 1));
}

function refusedShare(share: number): Outcome<never> | null {
  return share > 0 && share < 1 ? null : refuse("share-impossible", { share });
}

function refusedDegrees(degrees: number): Outcome<never> | null {
  return degrees > 0 && Number.isFinite(degrees) ? null : refuse("degrees-impossible", { degrees });
}
