import { accept, type Outcome, refuse } from "../outcome";
import { middleOf } from "./spread";
import { usablePairs } from "./usable";

/**
 * Theil–Sen line: the median of the slopes between all pairs of rows at different x, and the median
 * of y − slope·x (Theil 1950; Sen 1968, J Am Stat Assoc 63:1379–89). One wild row hardly moves it.
 * Refuses `lengths-differ`, `value-not-finite`, `values-too-few` below two, `values-all-equal` x.
 */
export function theilSen(
  x: readonly number[],
  y: readonly number[],
): Outcome<{ readonly slope: number; readonly intercept: number }> {
  const given = usablePairs(x, y, 2);
  if (!given.ok) return given;
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      if (x[i] !== x[j]) slopes.push((y[j]! - y[i]!) / (x[j]! - x[i]!));
    }
  }
  if (slopes.length === 0) return refuse("values-all-equal", { found: x.length });
  const slope = middleOf(slopes);
  return accept({ slope, intercept: middleOf(y.map((value, i) => value - slope * x[i]!)) });
}
