import { meanIfAny } from "../../statistics/spread";
import type { Day } from "../calendar/day";
import type { JumpAttempt } from "../record/jump-attempt";
import type { Plate } from "../record/plate";
import { attemptHeight } from "./attempt-height";
import { dropCmOf } from "./drop-cm";

/** One day of one jump test. */
export type TestDay = {
  readonly day: Day;
  readonly attempts: number;
  /** Attempts whose stack or flight gives no height (a plate not measured, a flight not possible). */
  readonly heightsNotRead: number;
  /** Drop height, cm, of the day's attempts; null when none is recorded. */
  readonly dropCm: number | null;
  /** The day's height for watching: mean of measured attempts, or highest stack cleared; cm. */
  readonly heightCm: number | null;
  readonly bestCm: number | null;
  /** Heights are bounds from plate stacks or boxes. */
  readonly byStack: boolean;
  /** Mean contact time, s. */
  readonly contactS: number | null;
  /** Mean of height/contact time over attempts with both, m/s. */
  readonly reactiveStrength: number | null;
};

/**
 * The days of a jump test. Watching takes the mean of attempts, which repeats better than the best;
 * of plate stacks the highest cleared. Attempts from different drop heights on one day are not
 * mixed: the first drop height of the day counts.
 *
 * @param attempts of one athlete and test, in order of day
 */
export function testDays(
  attempts: readonly JumpAttempt[],
  plates: readonly Plate[],
): readonly TestDay[] {
  const days: TestDay[] = [];
  for (let start = 0, end = 0; start < attempts.length; start = end) {
    const { day } = attempts[start]!;
    const dropCm = dropCmOf(attempts[start]!, plates);
    const heights: number[] = [];
    const contacts: number[] = [];
    const ratios: number[] = [];
    let byStack = false;
    let notRead = 0;
    for (; end < attempts.length && attempts[end]!.day === day; end++) {
      const attempt = attempts[end]!;
      if (dropCmOf(attempt, plates) !== dropCm) continue;
      const height = attemptHeight(attempt, plates);
      if (height.ok) heights.push(height.value.cm);
      else if (
        height.refusal.code !== "attempt-missed" &&
        height.refusal.code !== "attempt-without-height"
      )
        notRead++;
      byStack ||= height.ok ? height.value.isBound : attempt.cleared === false;
      const contactS = attempt.contactS ?? 0;
      if (!(contactS > 0)) continue;
      contacts.push(contactS);
      if (height.ok && !height.value.isBound) ratios.push(height.value.cm / 100 / contactS);
    }
    const best = heights.length > 0 ? Math.max(...heights) : null;
    days.push({
      day,
      attempts: end - start,
      heightsNotRead: notRead,
      dropCm,
      heightCm: byStack ? best : meanIfAny(heights),
      bestCm: best,
      byStack,
      contactS: meanIfAny(contacts),
      reactiveStrength: meanIfAny(ratios),
    });
  }
  return days;
}

/** One value a day may be the best of several, and is not held against their mean; of stacks it is the best ever. */
export const isOfOne = ({ attempts, byStack }: TestDay): boolean => attempts === 1 && !byStack;

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
