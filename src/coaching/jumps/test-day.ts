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
    while (attempts[end]?.day === day) end++;
    days.push(testDay(attempts.slice(start, end), plates));
  }
  return days;
}

/** Without these codes a height was meant and could not be read. */
const nothingToRead: readonly string[] = ["attempt-missed", "attempt-without-height"];

/** @param attempts of one day, one at least */
function testDay(attempts: readonly JumpAttempt[], plates: readonly Plate[]): TestDay {
  const dropCm = dropCmOf(attempts[0]!, plates);
  const read = attempts
    .filter((attempt) => dropCmOf(attempt, plates) === dropCm)
    .map((attempt) => ({ attempt, height: attemptHeight(attempt, plates) }));
  const heights = read.flatMap(({ height }) => (height.ok ? [height.value.cm] : []));
  const best = heights.length > 0 ? Math.max(...heights) : null;
  const byStack = read.some(({ attempt, height }) =>
    height.ok ? height.value.isBound : attempt.cleared === false,
  );
  const touched = read.flatMap(({ attempt: { contactS }, height }) =>
    contactS !== null && contactS > 0 ? [{ contactS, height }] : [],
  );
  return {
    day: attempts[0]!.day,
    attempts: attempts.length,
    heightsNotRead: read.filter(
      ({ height }) => !height.ok && !nothingToRead.includes(height.refusal.code),
    ).length,
    dropCm,
    heightCm: byStack ? best : meanIfAny(heights),
    bestCm: best,
    byStack,
    contactS: meanIfAny(touched.map(({ contactS }) => contactS)),
    reactiveStrength: meanIfAny(
      touched.flatMap(({ contactS, height }) =>
        height.ok && !height.value.isBound ? [height.value.cm / 100 / contactS] : [],
      ),
    ),
  };
}

/** One value a day may be the best of several, and is not held against their mean; of stacks it is the best ever. */
export const isOfOne = ({ attempts, byStack }: TestDay): boolean => attempts === 1 && !byStack;
