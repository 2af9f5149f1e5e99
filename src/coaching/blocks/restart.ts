/** How the first sessions after time off are graded (common practice, no source). */
export type Restart = {
  readonly daysOff: number;
  /** Fraction off the load before the break. */
  readonly off: number;
  readonly halfSets: boolean;
};

/** Half the sets of a block, one at least. */
export const halfSetsOf = (sets: number): number => Math.max(1, Math.ceil(sets / 2));

/** Rarer than once in four weeks is no rhythm. */
const leastAWeek = 0.25;

/**
 * Restart after days off beyond the athlete's own rhythm: 7–13 days 10 % off; 14 or more 20 % off and
 * half the sets, 30 % from three weeks on. Once a week is a rhythm, not a break, and so is once a fortnight.
 *
 * @param gapDays days between the last session and the next
 * @param sessionsAWeek the athlete's usual number
 * @returns null when there was no break
 */
export function restartAfter(gapDays: number, sessionsAWeek: number): Restart | null {
  const daysOff = Math.round(gapDays - 7 / Math.max(leastAWeek, sessionsAWeek));
  if (daysOff < 7) return null;
  if (daysOff < 14) return { daysOff, off: 0.1, halfSets: false };
  return { daysOff, off: daysOff < 21 ? 0.2 : 0.3, halfSets: true };
}
