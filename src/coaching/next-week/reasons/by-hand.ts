import type { LineReason } from "../line-reason";
import type { ProposedSession } from "../proposed-line";

/** Whether sets, repetitions or load are another than proposed: by the coach's hand, as nothing else does that. */
export const isByHand = ({
  sets,
  reps,
  loadKg,
  asProposed,
}: Pick<ProposedSession, "sets" | "reps" | "loadKg" | "asProposed">): boolean =>
  sets !== asProposed.sets || reps !== asProposed.reps || loadKg !== asProposed.loadKg;

/**
 * What a coach has set is told with what it took the place of, and the reasons of the proposal as that:
 * a load set by hand is neither held nor a step on.
 *
 * @param reasons why the session was proposed as it was
 */
export function orByHand(
  session: Pick<ProposedSession, "sets" | "reps" | "loadKg" | "asProposed" | "instead">,
  reasons: readonly LineReason[],
): readonly LineReason[] {
  if (session.instead !== null || !isByHand(session)) return reasons;
  const { sets, reps, loadKg } = session.asProposed;
  const facts = {
    ...((sets !== session.sets || reps !== session.reps) && { sets, reps }),
    ...(loadKg !== session.loadKg && { kg: loadKg }),
  };
  const why = reasons.length === 0 ? [] : [{ code: "why-proposed", facts: {}, of: reasons }];
  return [{ code: "set-by-hand", facts, of: why }];
}
