import type { WhoMay } from "../../availability/who-may";
import type { StepSize } from "../../blocks/step-up";
import type { Day } from "../../calendar/day";
import type { Race } from "../../record/race";
import type { DayChoice } from "../../season/gym-days";
import { hoursToNextRace } from "../../season/race-hours";
import { assistanceLoad } from "../exercises/assistance-load";
import { type DropHeight, dropHeight } from "../jumps/drop-height";
import { jumpPlan } from "../jumps/jump-plan";
import type { BarLoad } from "../next-step/bar-load";
import type { Guard } from "../next-step/reserve-guard";
import type { SessionStep } from "../next-step/session-steps";
import type { PresentStep } from "../present-step/present-step";
import type { LineGiven, ProposedSession } from "../proposed-line";
import type { StateOnLift } from "../state/athlete-state";
import { barOfSession, markerUnder, noBar } from "./bar-of-session";
import { sessionPlan } from "./session-plan";

/** What all sessions of one athlete's week have in common. */
export type SessionsGiven = Omit<LineGiven, "monday" | "state"> & {
  readonly state: StateOnLift;
  readonly races: readonly Race[];
  readonly step: PresentStep;
  readonly size: StepSize;
  /** What its repetitions in reserve are told by. */
  readonly guard: Guard | null;
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
): (
  on: DayChoice,
  planned: SessionStep,
) => Omit<ProposedSession, "asProposed" | "onLadder" | "turn"> {
  const { athlete, name, state, rows, asOf, change = {}, step } = given;
  const { rules, plates } = rows;
  const experience = athlete?.experience ?? null;
  const drop = dropHeight(rows.jumps, name, asOf, experience, plates);
  const noRack = given.needsRack && (change.noRack === true || rules.racks < 0.5);
  const markerAt = markerUnder(step, plates);
  return ({ day, minute }, planned) => {
    const { block } = planned;
    const bar = given.bar(planned.loadKg);
    const { loadKg } = bar;
    const markerKg = markerAt(loadKg);
    const isCut = given.cutOn(day);
    const { noJumps, limits } = given.mayOn(day);
    // Without a table of plates heights are not known: the stack stays the last one cleared.
    const { stackKg, stackCm, stackReason, contacts, ...jumps } = jumpPlan({
      experience,
      noJumps,
      eased: given.eased || isCut,
      state,
      plates,
      wished: change,
    });
    const sets = given.setsOf(block, day);
    const items = sessionPlan({
      lift: step.exercise,
      sets,
      reps: block.reps,
      loadKg,
      markerKg,
      jumps,
      noJumps,
      isCut,
      state,
      missing: noRack ? [...limits, "rack"] : limits,
      noPlates: plates.length === 0 ? [] : jumpsNotBuilt(drop, state, stackKg),
      lastLoad: (exercise) => assistanceLoad(rows.sets, name, exercise, asOf),
    });
    const instead =
      items.find(({ kind, insteadOf }) => kind === "main lift" && insteadOf !== null) ?? null;
    return {
      exercise: step.exercise,
      day,
      minute,
      block,
      sets,
      reps: block.reps,
      loadKg,
      barKg: step.barKg,
      instead,
      ...(instead ? noBar : barOfSession(given, planned, sets, bar, markerKg, day)),
      stackKg,
      stackCm,
      stackReason,
      contacts,
      jumps,
      // The marker is a lift of the bar: with another exercise in its place there is none.
      items: instead ? items.filter(({ kind }) => kind !== "marker") : items,
      drop,
      hoursToRace: hoursToNextRace(day, minute, given.races),
    };
  };
}

/** Jumps whose heights the gym's plates do not make; of a box that nobody has jumped onto no plates are known. */
const jumpsNotBuilt = (
  drop: DropHeight,
  state: StateOnLift,
  stackKg: readonly number[],
): readonly string[] => [
  ...(drop.stackKg.length === 0 ? ["plate-to-plate drop jump"] : []),
  ...(state.lastStackKg.length > 0 && stackKg.length === 0 ? ["straight-leg box jump"] : []),
];
