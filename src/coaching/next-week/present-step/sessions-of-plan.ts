import { alternate } from "./in-turn";
import type { LiftSession } from "./lift-session";

/** A session this much lighter than one of the week before it may be the week's fast one (common practice, no source). */
const fastShare = 0.85;
const weekLong = 7;
/** Where a heavy one was missed, so may one as light as the fast one of so many days before it. */
const missedLong = 14;

/** A lift's sessions that stand on the ladder, and those done in turn with them. */
export type SessionsOfPlan = {
  readonly planned: readonly LiftSession[];
  readonly others: readonly LiftSession[];
};

/**
 * Parts a lift's sessions where a heavy day and a fast one, or one of fives and one of threes, alternate:
 * the ladder is that of the heavy ones, or of the fives. All are planned where nothing alternates.
 *
 * @param sessions of one lift, in order
 */
export function sessionsOfPlan(sessions: readonly LiftSession[]): SessionsOfPlan {
  const threes = sessions.map(({ reps }) => reps === 3);
  for (const other of [fastOnes(sessions), threes]) {
    const labelled = sessions.map(({ day }, at) => ({ day, label: String(other[at]) }));
    if (!alternate(labelled)) continue;
    return {
      planned: sessions.filter((_, at) => !other[at]),
      others: sessions.filter((_, at) => other[at]),
    };
  }
  return { planned: sessions, others: [] };
}

/** Of each session, whether it may be the week's fast one. */
function fastOnes(sessions: readonly LiftSession[]): readonly boolean[] {
  let fast: LiftSession | null = null;
  return sessions.map((session, at) => {
    const { day, loadKg } = session;
    const isBeside = sessions
      .slice(0, at)
      .some((one) => one.day >= day - weekLong && loadKg <= fastShare * one.loadKg);
    const isAgain = fast !== null && day - fast.day <= missedLong && loadKg <= fast.loadKg;
    fast = isBeside || isAgain ? session : null;
    return fast !== null;
  });
}
