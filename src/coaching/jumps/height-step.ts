import type { TestDay } from "./test-day";

/** Days before heights that were typed are asked whether they come in steps. */
const leastDaysForGrid = 6;

/**
 * Step between one height and the next, cm: of plate stacks and boxes the smallest difference seen,
 * of heights typed as numbers the same when every height lies on that grid. Null when there is none.
 */
export function heightStep(days: readonly TestDay[]): number | null {
  const heights = days.flatMap(({ heightCm }) => (heightCm === null ? [] : [heightCm]));
  heights.sort((a, b) => a - b);
  let step = Number.POSITIVE_INFINITY;
  for (let i = 1; i < heights.length; i++) {
    const difference = heights[i]! - heights[i - 1]!;
    // Thicknesses are added in floating point: the same stack may differ in the last digits.
    if (difference > 1e-6) step = Math.min(step, difference);
  }
  if (!Number.isFinite(step)) return null;
  if (days.some(({ byStack }) => byStack)) return step;
  const onGrid = heights.every((height) => {
    const steps = (height - heights[0]!) / step;
    return Math.abs(steps - Math.round(steps)) < 0.01;
  });
  return onGrid && heights.length >= leastDaysForGrid ? step : null;
}
