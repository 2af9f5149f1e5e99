import type { WhoMay } from "../../availability/who-may";
import type { Restart } from "../../blocks/restart";
import type { Day } from "../../calendar/day";
import type { Race } from "../../record/race";
import { mostSessions } from "../../season/usual-sessions-a-week";
import type { DropHeight } from "../jumps/drop-height";
import type { LineReason } from "../line-reason";
import { leavesReserve } from "../next-step/reserve-guard";
import type { BarInUse } from "../present-step/bar-in-use";
import type { PresentStep } from "../present-step/present-step";
import type { ProposedSession } from "../proposed-line";
import type { LiftPlan } from "../session/lift-plan";
import type { AthleteState, StateOnLift } from "../state/athlete-state";

/** What stands for the main lift, and for jumps for which there are no plates, each said once. */
export function swapReasons(sessions: readonly ProposedSession[], { site }: WhoMay): LineReason[] {
  const told = new Map<string, LineReason>();
  for (const { kind, exercise, insteadOf, reason } of sessions.flatMap(({ items }) => items)) {
    const facts = { exercise, insteadOf: insteadOf ?? "", site };
    const isTold =
      reason === "no-rack" ? kind === "main lift" : reason === "limb" || reason === "no-plate";
    if (isTold) told.set(`${reason} ${insteadOf}`, { code: reason!, facts });
  }
  return [...told.values()];
}

/** What counts of the last day: the heaviest of several sessions; of sets not all at its load, warm-ups left out. */
export function changingReasons({
  isHeaviest,
  lastDay: day,
  changed,
  loadKg,
}: Pick<PresentStep, "isHeaviest" | "lastDay" | "changed" | "loadKg">): LineReason[] {
  const one = isHeaviest ? [{ code: "heavier-of-day", facts: { day } }] : [];
  if (changed === null) return one;
  const { toKg: to, isLeftOut } = changed;
  const code = isLeftOut ? "built-up" : to > loadKg ? "sets-rose" : "sets-fell";
  return [...one, { code, facts: { from: loadKg, to } }];
}

/** Why the box-jump stack is what it is, said once: on an eased day it may rise less. */
export function stackReasons(sessions: readonly ProposedSession[]): LineReason[] {
  const [first] = sessions.flatMap(({ stackReason }) => stackReason ?? []);
  return first === undefined ? [] : [first];
}

/** Why the drop jumps come from lower than last time, where there are any. */
export function dropReasons([first]: readonly ProposedSession[]): LineReason[] {
  return first?.items.some(({ exercise }) => /drop jump/.test(exercise))
    ? dropHeightReasons(first.drop)
    : [];
}

/** Why drop jumps start lower than last time. */
export function dropHeightReasons({ reason }: DropHeight): LineReason[] {
  if (reason === "contact long") return [{ code: "contact-long", facts: {} }];
  return reason === "novice" ? [{ code: "novice-drop", facts: {} }] : [];
}

/** Fewer sets than the rotation's block has, as they always were. */
export const fewerSetsReasons = ({ planned, step }: LiftPlan): LineReason[] =>
  planned.block.sets > step.mostSets
    ? [{ code: "sets-as-ever", facts: { sets: step.mostSets } }]
    : [];

/** More sessions a week are written than are ever planned. */
export const manySessionsReasons = (sessionsAWeek: number): LineReason[] =>
  sessionsAWeek > mostSessions
    ? [{ code: "many-sessions", facts: { written: sessionsAWeek, most: mostSessions } }]
    : [];

/** Plates are reckoned for another bar than before. */
export function newBarReasons({ barKg, barBeforeKg }: BarInUse): LineReason[] {
  return barBeforeKg === null
    ? []
    : [{ code: "new-bar", facts: { bar: barKg, before: barBeforeKg } }];
}

/** Speeds that decide the day were taken with another tool than the baseline's: with any other they decide nothing. */
export function otherSpeedsReasons(
  { otherSetting }: Pick<StateOnLift, "otherSetting">,
  sessions: readonly ProposedSession[],
): LineReason[] {
  return otherSetting !== null && sessions.some(({ bands }) => bands.length > 0)
    ? [{ code: "other-speeds", facts: otherSetting }]
    : [];
}

/** Another exercise than before is gone on from. */
export function newLiftReasons({
  exercise,
  liftBefore: before,
  sessions,
}: Pick<PresentStep, "exercise" | "liftBefore" | "sessions">): LineReason[] {
  return before === null
    ? []
    : [{ code: "new-lift", facts: { exercise, before, day: sessions[0]!.day } }];
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

/** Sets cut in a race's week, or for a race early in the week after; none when as many stay. */
export function cutReasons(
  from: number,
  { day, sets: to }: Pick<ProposedSession, "day" | "sets">,
  near: Race | null,
): LineReason[] {
  if (to >= from) return [];
  return near === null
    ? [{ code: "race-week", facts: { from, to } }]
    : [{ code: "race-near", facts: { day, from, to, race: near.race, on: near.day } }];
}

/** Jumps halved, where there are any. */
export function contactReasons(sessions: readonly ProposedSession[]): LineReason[] {
  return sessions.some(({ contacts }) => contacts > 0)
    ? [{ code: "contacts-halved", facts: {} }]
    : [];
}

/** Pain or illness noted: asked about before anything is lifted. */
export const unwellReasons = ({ unwellDay }: Pick<AthleteState, "unwellDay">): LineReason[] =>
  unwellDay === null ? [] : [{ code: "unwell", facts: unwellDay }];

/** What was written of an absence up to the end of the week, or of no day. */
export function absenceReasons({ absences }: AthleteState, monday: Day): LineReason[] {
  return absences.flatMap(({ day, from, place, words }) => {
    if (day === null || from === null)
      return [{ code: "absence-undated", facts: { place, words } }];
    return day < monday + 7 ? [{ code: "absence", facts: { day, from, place, words } }] : [];
  });
}

/** What the athlete's own state asks for, whatever the step: no jumps, soreness, a good day that adds nothing. */
export function stateReasons(
  { soreness, unwellDay, lastWord }: Pick<AthleteState, "soreness" | "unwellDay" | "lastWord">,
  { noJumps, site }: WhoMay,
): LineReason[] {
  return [
    ...(noJumps ? [{ code: "no-jumps", facts: { site } }] : []),
    ...(soreness ? [{ code: "sore", facts: { value: soreness.value, day: soreness.day } }] : []),
    ...unwellReasons({ unwellDay }),
    ...(lastWord === "above usual" ? [{ code: "above-usual", facts: {} }] : []),
  ];
}

/**
 * A lighter load that no row explains is gone on from, and asked about; not after time off, when it is
 * eased anyway, nor where the one before it would leave too few repetitions in reserve.
 */
export function droppedReasons(
  { droppedFromKg: from, loadKg, block }: Pick<PresentStep, "droppedFromKg" | "loadKg" | "block">,
  guardKg: number | null,
  rest: Restart | null,
): LineReason[] {
  if (from === null || rest !== null) return [];
  return leavesReserve(block, from, guardKg)
    ? [{ code: "lighter-plan", facts: { from, kg: loadKg } }]
    : [];
}
