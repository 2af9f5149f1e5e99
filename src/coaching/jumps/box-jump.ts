import type { JumpAttempt } from "../record/jump-attempt";

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

/** The stack last cleared, plates in kg from the bottom, and the height last given, cm. */
export function lastJump(attempts: readonly JumpAttempt[]): {
  readonly lastStackKg: readonly number[];
  readonly lastJumpCm: number | null;
} {
  const cleared = attempts.filter(({ stackKg, cleared: ok }) => stackKg.length > 0 && ok !== false);
  const heights = attempts.filter(({ heightCm }) => heightCm !== null);
  return {
    lastStackKg: cleared[cleared.length - 1]?.stackKg ?? [],
    lastJumpCm: heights[heights.length - 1]?.heightCm ?? null,
  };
}
