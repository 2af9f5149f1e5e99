import type { LineReason } from "../line-reason";
import type { ProposedSession, Wanted } from "../proposed-line";
import type { LiftPlan } from "../session/lift-plan";
import { orByHand } from "./by-hand";
import { fewerSetsReasons } from "./line-reasons";

/**
 * What is done in turn with the lift the athlete is on: of another lift why its own step is what it is,
 * of another session of a lift that it is as it was last.
 */
export function turnReasons(
  session: ProposedSession,
  plan: LiftPlan,
  wanted: Wanted,
): LineReason[] {
  const { day, exercise, sets, reps, loadKg, instead, onLadder } = session;
  if (instead !== null) return [];
  const facts = { day, exercise, sets, reps, kg: loadKg };
  const { planned, bar, dropped, readAs } = plan;
  if (onLadder) {
    const of = [
      ...orByHand(session, planned.reasons),
      ...bar(wanted.loadKg ?? planned.loadKg).reasons,
      ...dropped,
      ...readAs,
      ...(wanted.block === undefined ? fewerSetsReasons(plan) : []),
    ];
    return [{ code: "in-turn", facts, of }];
  }
  const { inTurn } = plan.step;
  const lastKg = inTurn[inTurn.length - 1]!.loadKg;
  const proposedKg = plan.inTurn({}).loadKg;
  const how =
    proposedKg === lastKg
      ? "as-last-time"
      : plan.easedNow || proposedKg < lastKg
        ? "eased-as-lift"
        : null;
  const of = [
    ...orByHand(session, how === null ? [] : [{ code: how, facts: {} }]),
    ...(wanted.loadKg === undefined ? [] : bar(wanted.loadKg).reasons),
  ];
  return [{ code: "in-turn", facts, of }];
}
