import { valueOrNull } from "../../outcome";
import type { Day } from "../calendar/day";
import type { JumpAttempt } from "../record/jump-attempt";
import type { Plate } from "../record/plate";
import { attemptHeight } from "./attempt-height";

/**
 * Attempts of an athlete's box jump, whatever the coach calls it; of two such tests the one taken more
 * often. A drop from a box is another jump.
 *
 * @param jumps attempts by `nameKey` of the test, each list in order of day
 */
export function boxJumps(
  jumps: ReadonlyMap<string, readonly JumpAttempt[]>,
): readonly JumpAttempt[] {
  let most: readonly JumpAttempt[] = [];
  for (const [test, attempts] of jumps) {
    if (/box/.test(test) && !/drop/.test(test) && attempts.length > most.length) most = attempts;
  }
  return most;
}

/** A box or stack that was tried. */
export type BoxTry = {
  readonly day: Day;
  /** Null for plates that nobody has measured. */
  readonly cm: number | null;
  /** Masses in kg from the bottom; empty where the height was written. */
  readonly stackKg: readonly number[];
};

/** What an athlete's box jumps say of the next one. */
export type LastJump = {
  /** The stack last cleared of those under all that was missed, plates in kg from the bottom; empty without one. */
  readonly lastStackKg: readonly number[];
  /** The height last written of those, cm; null without one. */
  readonly lastJumpCm: number | null;
  /** Missed on the last day, or at every try of late; the lowest first, of equal ones the latest, unknown heights last. */
  readonly missedBoxes: readonly BoxTry[];
  /** What was cleared last is as high as one of these. */
  readonly isBoxLowered: boolean;
};

/** Tries of so many days say what an athlete does not clear (common practice, no source). */
const lateDays = 28;
const unknownCm = Number.MAX_VALUE;

/** Reads an athlete's box jumps, in order of day. */
export function lastJump(attempts: readonly JumpAttempt[], plates: readonly Plate[]): LastJump {
  const lastDay = attempts[attempts.length - 1]?.day ?? 0;
  const isLate = ({ day }: JumpAttempt) => day > lastDay - lateDays;
  const cleared = attempts.filter((one) => one.cleared !== false);
  const bestCm = Math.max(...cleared.filter(isLate).map((one) => heightOf(one, plates) ?? 0));
  const missed = attempts
    .filter((one) => one.cleared === false && isLate(one))
    .map(({ day, stackKg, ...one }) => ({
      day,
      stackKg,
      cm: heightOf({ day, stackKg, ...one }, plates),
    }))
    .filter(({ day, cm }) => day === lastDay || (cm ?? 0) > bestCm)
    .sort((a, b) => (a.cm ?? unknownCm) - (b.cm ?? unknownCm) || b.day - a.day);
  const isUnder = (one: JumpAttempt) =>
    !missed.some((miss) => isAsHigh({ ...one, cm: heightOf(one, plates) }, miss));
  const stacks = cleared.filter(({ stackKg }) => stackKg.length > 0);
  const heights = cleared.filter(({ heightCm }) => heightCm !== null);
  const [stack, height] = [stacks, heights].map((ones) => lastOf(ones.filter(isUnder)));
  return {
    lastStackKg: stack?.stackKg ?? [],
    lastJumpCm: height?.heightCm ?? null,
    missedBoxes: missed,
    isBoxLowered: stack !== lastOf(stacks) || height !== lastOf(heights),
  };
}

const lastOf = (attempts: readonly JumpAttempt[]): JumpAttempt | undefined =>
  attempts[attempts.length - 1];

/** Height of a box that was tried, cleared or not, cm; null where it is not known. */
const heightOf = (attempt: JumpAttempt, plates: readonly Plate[]): number | null =>
  valueOrNull(attemptHeight({ ...attempt, cleared: true }, plates))?.cm ?? null;

/** Without heights a stack is as high as one all of whose plates it has. */
function isAsHigh({ cm, stackKg }: Omit<BoxTry, "day">, missed: BoxTry): boolean {
  if (cm !== null && missed.cm !== null) return cm >= missed.cm;
  const count = (of: readonly number[], mass: number) => of.filter((one) => one === mass).length;
  return (
    missed.stackKg.length > 0 &&
    missed.stackKg.every((mass) => count(stackKg, mass) >= count(missed.stackKg, mass))
  );
}
