import {
  kindsOf,
  type Lift,
  liftedAlike,
  type RackPlan,
  rackPlan,
} from "../../coaching/next-week/rack/rack-plan";
import type { SquadRules } from "../../coaching/record/squad-rules";
import { refusalSentence } from "../../words/refusals";
import type { PrintedSession } from "./printable-week";

/** The racks of one gym session, and the rule of the room they break in words ("" for none). */
export type RoomPlan = { readonly plan: RackPlan; readonly warning: string };

/**
 * Who shares which bar within the room's racks and time. A session that does not fit is still planned,
 * with the racks or minutes it would take, and says so: paper without a plan helps nobody.
 */
export function roomPlan(sessions: readonly PrintedSession[], rules: SquadRules): RoomPlan {
  const lifts: Lift[] = sessions.map(({ line, session }) => ({
    athlete: line.athlete,
    lift: liftedAlike(session.exercise),
    loadKg: session.loadKg,
    barKg: session.barKg,
    plates: session.plates,
    sets: session.sets,
  }));
  const { racks, minutesASet, minutesOfRoom } = rules;
  const bars = kindsOf(lifts);
  const whole = Math.max(1, Math.round(racks));
  const allSets = lifts.reduce((sum, { sets }) => sum + sets, 0);
  const tries = [
    rackPlan(lifts, whole, minutesASet, minutesOfRoom),
    rackPlan(lifts, Math.max(bars, whole), minutesASet, minutesOfRoom),
  ];
  const first = tries[0]!;
  const fits = tries.find((one) => one.ok);
  const warning = first.ok ? "" : refusalSentence(first.refusal);
  if (fits?.ok) return { plan: fits.value, warning };
  // Too short a room: the time it does take, at most every set one after another at one rack.
  const last = tries[1]!;
  const needed = last.ok ? 0 : Number(last.refusal.facts.minutes ?? allSets * minutesASet);
  const longer = rackPlan(lifts, Math.max(bars, whole), minutesASet, needed);
  if (!longer.ok) throw new Error("a session that was given the time it needs still has no plan");
  return { plan: longer.value, warning };
}
