import { gymStepKg } from "../../blocks/gym-step";
import { hairKg } from "../../blocks/plate-loading";
import { usualBarKg } from "../../blocks/usual-bar";
import type { DayPlan } from "../on-the-day/day-decision";
import { decideToday } from "../on-the-day/decide-today";
import { speedsTaken } from "../on-the-day/set-speed";
import type { LiftSession } from "../present-step/lift-session";
import type { LineGiven } from "../proposed-line";
import { gymPlates } from "../session/usual-plates";
import type { LiftState } from "../state/athlete-state";

/** The load a slow session's card must have begun from, kg, up to one: its usual speeds, steps and plates are the athlete's and the gym's. */
export const plannedForSlow =
  ({ state, rows, unit }: Pick<LineGiven, "rows" | "unit"> & { readonly state: LiftState }) =>
  (session: LiftSession, atMostKg: number): number | null => {
    const [lead] = session.all.flatMap(({ kind, loadKg, day }) =>
      kind === "marker" && loadKg !== null ? (state.usualLead("marker", loadKg, day) ?? []) : [],
    );
    if (lead === undefined) return null;
    return plannedBeforeSlow(session, atMostKg, {
      usualSpeed: lead.usual,
      lowSpeed: lead.low,
      stepKg: gymStepKg(gymPlates(rows.plates, unit)),
      usualDrop: rows.rules.loadDrop,
      gym: { plates: rows.plates, barKg: session.work[0]!.barKg ?? usualBarKg(unit) },
    });
  };

/**
 * The load that a slow day's card must have begun from, kg: the least of which its decision, by the
 * markers as they were, leaves what was lifted. Without a marker the first work set is at the plan.
 *
 * @param atMostKg a load the plan was not above, kg
 * @param plan of the day but for its load and sets
 * @returns null where no load up to that one gives it
 */
export function plannedBeforeSlow(
  { all, loadKg, sets: setsLeft }: Pick<LiftSession, "all" | "loadKg" | "sets">,
  atMostKg: number,
  plan: Omit<DayPlan, "plannedKg" | "setsLeft">,
): number | null {
  const sets = all.filter(({ kind }) => kind === "marker").map(speedsTaken);
  for (let kg = loadKg; kg <= atMostKg + hairKg; kg += plan.stepKg) {
    const decided = decideToday({ kind: "speeds", sets }, { ...plan, plannedKg: kg, setsLeft });
    if (!decided.ok) return null;
    const { value } = decided;
    const left = value.kind === "repeat the marker" ? value.ifSame : value;
    if (left.kind === "lighter" && Math.abs(left.loadKg - loadKg) < hairKg) return kg;
  }
  return null;
}
