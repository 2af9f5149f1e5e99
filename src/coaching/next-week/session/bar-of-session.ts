import { gymStepKg } from "../../blocks/gym-step";
import { roundDownToPlates } from "../../blocks/plate-loading";
import { mostReps } from "../../blocks/repetition-load";
import type { Day } from "../../calendar/day";
import type { Plate } from "../../record/plate";
import type { BarLoad } from "../next-step/bar-load";
import type { SessionStep } from "../next-step/session-steps";
import { dayBands } from "../on-the-day/day-bands";
import type { PresentStep } from "../present-step/present-step";
import type { ProposedSession } from "../proposed-line";
import type { SessionsGiven } from "./propose-session";
import { gymPlates } from "./usual-plates";

/** What a session says of its bar: plates, the marker, the speeds the day is judged by, and what is in reserve. */
type BarOfSession = Pick<
  ProposedSession,
  | "plates"
  | "otherwise"
  | "markerKg"
  | "setsAfterLead"
  | "speedFloor"
  | "usualLeadSpeed"
  | "lowLeadSpeed"
  | "bands"
  | "reserve"
>;

/** With another exercise in the lift's place there is no bar to speak of, and no marker to lead. */
export const noBar: BarOfSession = {
  plates: [],
  otherwise: null,
  markerKg: null,
  setsAfterLead: 0,
  speedFloor: null,
  usualLeadSpeed: null,
  lowLeadSpeed: null,
  bands: [],
  reserve: null,
};

/** The bar of a session as this gym's plates make it. Without a marker the first work set decides the day. */
export function barOfSession(
  { state, rows: { rules, plates }, unit, step: { barKg }, guard, bar }: SessionsGiven,
  { block, otherwise }: SessionStep,
  sets: number,
  { loadKg, plates: side }: BarLoad,
  markerKg: number | null,
  day: Day,
): BarOfSession {
  const speeds = state.onDay?.(day) ?? state;
  const lead = speeds.usualLead(markerKg === null ? "work" : "marker", markerKg ?? loadKg);
  const setsAfterLead = markerKg === null ? sets - 1 : sets;
  /** A bar at its usual speed ends a set once it loses the cap. */
  const floorAt = (kg: number | null) => {
    const from = kg === null ? null : speeds.usualSpeed(kg);
    return from === null ? null : from * (1 - rules.velocityLossCap);
  };
  return {
    plates: side,
    otherwise: otherwise && { ...otherwise, loadKg: bar(otherwise.loadKg).loadKg },
    markerKg,
    setsAfterLead,
    speedFloor: floorAt(loadKg),
    usualLeadSpeed: lead?.usual ?? null,
    lowLeadSpeed: lead?.low ?? null,
    bands:
      lead === null
        ? []
        : dayBands({
            plannedKg: loadKg,
            setsLeft: setsAfterLead,
            usualSpeed: lead.usual,
            lowSpeed: lead.low,
            stepKg: gymStepKg(gymPlates(plates, unit)),
            usualDrop: rules.loadDrop,
            gym: { plates, barKg },
          }).map((band) => ({ ...band, speedFloor: floorAt(band.loadKg) })),
    reserve: guard && { reps: mostReps(loadKg / guard.kg) - block.reps, from: guard.from },
  };
}

/**
 * The marker at a load of the work sets: the usual one or, from another gym's plates, the nearest under
 * it that these make. It stands in the warm-up: sets taken under it, as after time off, take it down.
 *
 * @returns kg at a load in kg; null without a marker
 */
export function markerUnder(
  { markerKg, markerIsUnder, barKg }: PresentStep,
  plates: readonly Plate[],
): (loadKg: number) => number | null {
  if (markerKg === null) return () => null;
  const built = plates.length === 0 ? null : roundDownToPlates(markerKg, barKg, plates);
  const usualKg = built?.ok ? built.value : markerKg;
  return (loadKg) => (markerIsUnder ? Math.min(usualKg, loadKg) : usualKg);
}
