import type { LiftingSet } from "../../record/lifting-set";
import { sessionsApart } from "../../series/with-evening";

/**
 * Of a day's sessions of a lift, morning and evening, the one with the heaviest work set, the first of
 * two alike: a light session is no part of the heavy one's block. Sets without a time are of the session
 * they stand in.
 *
 * @param sets of one day, in order
 */
export function heaviestOfDay(sets: readonly LiftingSet[]): readonly LiftingSet[] {
  const sessions: LiftingSet[][] = [];
  let last = Number.POSITIVE_INFINITY;
  for (const set of sets) {
    const { minute } = set;
    const now = sessions[sessions.length - 1];
    // A marker of the morning belongs to the lift of the evening.
    const begins = (minute ?? 0) - last > sessionsApart && now?.some(isWork);
    if (now === undefined || begins) sessions.push([set]);
    else now.push(set);
    last = minute ?? last;
  }
  return sessions.reduce((most, one) => (heaviest(one) > heaviest(most) ? one : most));
}

const isWork = ({ kind }: LiftingSet) => kind === "work";

/** Of sets without a load none is. */
const heaviest = (session: readonly LiftingSet[]): number =>
  Math.max(...session.filter(isWork).flatMap(({ loadKg }) => loadKg ?? []));
