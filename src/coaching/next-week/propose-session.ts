import type { WhoMay } from "../availability/who-may";
import { gymStepKg } from "../blocks/gym-step";
import { roundDownToPlates } from "../blocks/plate-loading";
import { mostReps } from "../blocks/repetition-load";
import type { StepSize } from "../blocks/step-up";
import type { Day } from "../calendar/day";
import type { Race } from "../record/race";
import type { DayChoice } from "../season/gym-days";
import { hoursToNextRace } from "../season/race-hours";
import { assistanceLoad } from "./assistance-load";
import type { StateOnLift } from "./athlete-state";
import type { BarLoad } from "./bar-load";
import { dayBands } from "./day-bands";
import { dropHeight } from "./drop-height";
import type { Missing } from "./exercise-list";
import { jumpPlan } from "./jump-plan";
import type { PresentStep } from "./present-step";
import type { LineGiven, ProposedSession } from "./proposed-line";
import { sessionPlan } from "./session-plan";
import type { SessionStep } from "./session-steps";
import { gymPlates } from "./usual-plates";

/** What all sessions of one athlete's week have in common. */
export type SessionsGiven = Omit<LineGiven, "monday" | "state"> & {
  readonly state: StateOnLift;
  readonly races: readonly Race[];
  readonly step: PresentStep;
  readonly size: StepSize;
  /** Strength that the repetitions in reserve are told by, kg. */
  readonly toldGuardKg: number | null;
  /** The session has fewer sets and contacts for an A race. */
  readonly cutOn: (day: Day) => boolean;
  /** Not every lift done in turn does. */
  readonly needsRack: boolean;
  /** Ground contacts are halved and no stack rises. */
  readonly eased: boolean;
  readonly mayOn: (day: Day) => WhoMay;
  /** Sets of a block this week. */
  readonly setsOf: (block: SessionStep["block"], day: Day) => number;
  /** A load as this gym's plates make it. */
  readonly bar: (kg: number) => BarLoad;
};

/** Writes one session of the week: its lift, speeds, jumps and assistance, with what gives way. */
export function sessionProposer(
  given: SessionsGiven,
): (on: DayChoice, planned: SessionStep) => Omit<ProposedSession, "onLadder" | "turn"> {
  const { athlete, name, state, rows, asOf, change = {}, step, toldGuardKg, bar } = given;
  const { rules, plates } = rows;
  const experience = athlete?.experience ?? null;
  const drop = dropHeight(rows.jumps, name, asOf, experience, plates);
  const listed = plates.length > 0;
  const noRack = given.needsRack && (change.noRack === true || rules.racks < 0.5);
  // A marker from another gym's plates is the nearest under it that these make.
  const gymMarker =
    step.markerKg === null || !listed ? null : roundDownToPlates(step.markerKg, step.barKg, plates);
  const usualMarkerKg = gymMarker?.ok ? gymMarker.value : step.markerKg;
  /** The marker stands in the warm-up: sets taken under it, as after time off, take it down with them. */
  const markerUnder = (kg: number) =>
    usualMarkerKg !== null && step.markerIsUnder ? Math.min(usualMarkerKg, kg) : usualMarkerKg;
  return ({ day, minute }, { block, loadKg: wantedKg, otherwise }) => {
    const { loadKg: kg, plates: side } = bar(wantedKg);
    const markerLoadKg = markerUnder(kg);
    const isCut = given.cutOn(day);
    const { noJumps, limits } = given.mayOn(day);
    // Without a table of plates heights are not known: the stack stays the last one cleared.
    const { stackKg, stackCm, contacts, ...jumps } = jumpPlan({
      experience,
      noJumps,
      eased: given.eased || isCut,
      state,
      plates,
      wished: change,
    });
    const missing: readonly Missing[] = [...limits, ...(noRack ? ["rack" as const] : [])];
    const boxKnown = state.lastStackKg.length > 0;
    const sets = given.setsOf(block, day);
    const items = sessionPlan({
      lift: step.exercise,
      sets,
      reps: block.reps,
      loadKg: kg,
      markerKg: markerLoadKg,
      jumps,
      noJumps,
      isCut,
      state,
      notAvailable: [],
      missing,
      noPlates: [
        ...(listed && drop.stackKg.length === 0 ? ["plate-to-plate drop jump"] : []),
        ...(listed && boxKnown && stackKg.length === 0 ? ["straight-leg box jump"] : []),
      ],
      lastLoad: (exercise) => assistanceLoad(rows.sets, name, exercise, asOf),
    });
    const main = items.find((item) => item.kind === "main lift");
    const instead = main?.insteadOf ? main : null;
    const markerKg = instead ? null : markerLoadKg;
    // Without a marker the first work set decides, and the sets after it are left.
    const decides = markerKg === null ? "work" : "marker";
    const lead = instead ? null : state.usualLead(decides, markerKg ?? kg);
    const usual = lead?.usual ?? null;
    const low = lead?.low ?? null;
    const setsAfterLead = markerKg === null ? sets - 1 : sets;
    /** A bar at its usual speed ends a set once it loses the cap. */
    const floorAt = (loadKg: number | null) => {
      const from = instead || loadKg === null ? null : state.usualSpeed(loadKg);
      return from === null ? null : from * (1 - rules.velocityLossCap);
    };
    return {
      exercise: step.exercise,
      day,
      minute,
      block,
      sets,
      setsAfterLead,
      reps: block.reps,
      loadKg: kg,
      barKg: step.barKg,
      plates: instead ? [] : side,
      instead,
      otherwise:
        instead || otherwise === null
          ? null
          : { ...otherwise, loadKg: bar(otherwise.loadKg).loadKg },
      markerKg,
      speedFloor: floorAt(kg),
      stackKg,
      stackCm,
      contacts,
      jumps,
      // The marker is a lift of the bar: with another exercise in its place there is none.
      items: instead ? items.filter((item) => item.kind !== "marker") : items,
      drop,
      usualLeadSpeed: usual,
      lowLeadSpeed: low,
      bands:
        usual === null
          ? []
          : dayBands({
              plannedKg: kg,
              setsLeft: setsAfterLead,
              usualSpeed: usual,
              lowSpeed: low,
              stepKg: gymStepKg(gymPlates(plates, given.unit)),
              usualDrop: rules.loadDrop,
              gym: { plates, barKg: step.barKg },
            }).map((band) => ({ ...band, speedFloor: floorAt(band.loadKg) })),
      reserve: toldGuardKg === null || instead ? null : mostReps(kg / toldGuardKg) - block.reps,
      hoursToRace: hoursToNextRace(day, minute, given.races),
    };
  };
}
