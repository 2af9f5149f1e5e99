import { accept, type Outcome, refuse } from "../outcome";
import { studentQuantile } from "./distributions";
import { usablePairs } from "./usable";

/** Ordinary least squares of y on x; `meanX` and `squaresX` let intervals be drawn without the rows. */
export type StraightLine = {
  readonly rows: number;
  readonly intercept: number;
  readonly slope: number;
  readonly residualSd: number;
  readonly interceptError: number;
  readonly slopeError: number;
  /** Share of y's squares the line accounts for; 1 when y never changes and the line meets it. */
  readonly rSquared: number;
  readonly meanX: number;
  readonly squaresX: number;
};

/**
 * Least-squares line about the means, in the units of y and y per x.
 * Refuses `lengths-differ`, `value-not-finite`, `values-too-few` below three rows (two leave no
 * residual) and `values-all-equal` when x never changes.
 */
export function straightLine(x: readonly number[], y: readonly number[]): Outcome<StraightLine> {
  const given = usablePairs(x, y, 3);
  if (!given.ok) return given;
  const rows = x.length;
  const meanX = x.reduce((sum, value) => sum + value, 0) / rows;
  const meanY = y.reduce((sum, value) => sum + value, 0) / rows;
  let squaresX = 0;
  let squaresY = 0;
  let products = 0;
  for (let i = 0; i < rows; i++) {
    squaresX += (x[i]! - meanX) ** 2;
    squaresY += (y[i]! - meanY) ** 2;
    products += (x[i]! - meanX) * (y[i]! - meanY);
  }
  if (squaresX === 0) return refuse("values-all-equal", { found: rows });
  const slope = products / squaresX;
  const intercept = meanY - slope * meanX;
  let residuals = 0;
  for (let i = 0; i < rows; i++) residuals += (y[i]! - meanY - slope * (x[i]! - meanX)) ** 2;
  const residualSd = Math.sqrt(residuals / (rows - 2));
  return accept({
    rows,
    intercept,
    slope,
    residualSd,
    interceptError: residualSd * Math.sqrt(1 / rows + meanX ** 2 / squaresX),
    slopeError: residualSd / Math.sqrt(squaresX),
    rSquared: squaresY === 0 ? 1 : 1 - residuals / squaresY,
    meanX,
    squaresX,
  });
}

/** A fitted value with the limits around it, in y's unit. */
export type LineInterval = { readonly fitted: number; readonly low: number; readonly high: number };

/**
 * Interval at x: for one new row (`"row"`) or for the line's own height there (`"line"`), by Student t
 * with n − 2 degrees of freedom. Refuses `share-impossible`, `value-not-finite`.
 *
 * @param share confidence, 0.9 for 90 %
 */
export function lineInterval(
  line: StraightLine,
  x: number,
  share: number,
  of: "row" | "line",
): Outcome<LineInterval> {
  if (!Number.isFinite(x)) return refuse("value-not-finite", { place: 1 });
  if (!(share > 0 && share < 1)) return refuse("share-impossible", { share });
  const t = studentQuantile((1 + share) / 2, line.rows - 2);
  if (!t.ok) return t;
  const leverage = 1 / line.rows + (x - line.meanX) ** 2 / line.squaresX;
  const half = t.value * line.residualSd * Math.sqrt(leverage + (of === "row" ? 1 : 0));
  const fitted = line.intercept + line.slope * x;
  return accept({ fitted, low: fitted - half, high: fitted + half });
}
