import type { WhoMay } from "../availability/who-may";
import type { LineReason } from "./line-reason";
import type { ProposedSession } from "./proposed-line";

/** What stands for the main lift, and for jumps for which there are no plates. */
export function swapReasons(sessions: readonly ProposedSession[], { site }: WhoMay): LineReason[] {
  const [first] = sessions;
  if (!first) return [];
  return first.items.flatMap(({ kind, exercise, insteadOf, reason }) => {
    const facts = { exercise, insteadOf: insteadOf ?? "", site };
    if (kind === "main lift" && reason === "no-rack") return [{ code: "no-rack", facts }];
    if (reason === "limb") return [{ code: "limb", facts }];
    return reason === "no-plate" ? [{ code: "no-plate", facts }] : [];
  });
}

/** Steps written ahead of the session they depend on. */
export function otherwiseReasons(sessions: readonly ProposedSession[]): LineReason[] {
  return sessions.flatMap(({ day, sets, reps, loadKg, otherwise }) =>
    otherwise === null
      ? []
      : [
          {
            code: "step-by-session",
            facts: {
              day,
              sets,
              reps,
              kg: loadKg,
              otherSets: otherwise.block.sets,
              otherReps: otherwise.block.reps,
              otherKg: otherwise.loadKg,
            },
          },
        ],
  );
}
