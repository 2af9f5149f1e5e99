import type { Block } from "../blocks/block";
import type { AthleteState } from "./athlete-state";
import { type Exercise, exerciseList, type Missing } from "./exercise-list";
import type { JumpSets } from "./jump-sets";

/** Why an exercise is not the usual one. */
export type SwapReason =
  | "not-available"
  | "no-rack"
  | "no-plate"
  | "limb"
  | "sore"
  | "well-below-usual"
  | "no-jumps";

/** One exercise of a session, in its place. */
export type SessionItem = {
  readonly exercise: string;
  readonly kind: Exercise["kind"] | "marker";
  readonly sets: number;
  readonly reps: number;
  /** kg, for assistance the last done; null where the exercise has none or it is chosen by feel. */
  readonly loadKg: number | null;
  readonly contacts: number;
  /** The usual exercise this one stands for, or that was cut; null when it is the usual one. */
  readonly insteadOf: string | null;
  readonly reason: SwapReason | null;
};

/** What a session is built from: the figures of the proposal, and what is not there. */
export type SessionGiven = {
  readonly lift: string;
  readonly sets: number;
  readonly reps: number;
  readonly loadKg: number;
  readonly markerKg: number | null;
  readonly jumps: JumpSets;
  readonly noJumps: boolean;
  readonly isCut: boolean;
  readonly state: Pick<AthleteState, "soreness" | "lastWord">;
  /** Names from the exercise list that cannot be done. */
  readonly notAvailable: readonly string[];
  /** What is missing for everything that needs it: no rack, or a limb that limits. */
  readonly missing?: readonly Missing[];
  /** Names from the exercise list for which the gym has no plates. */
  readonly noPlates?: readonly string[];
  /** Load an assistance exercise was last done with, kg. */
  readonly lastLoad?: (exercise: string) => number | null;
};

/** An alternative and the reason for it. */
type Swap = { readonly reason: SwapReason; readonly instead: string };

const markerReps = 3;
/** Assistance: two short sets, one in race weeks and on sore days (common practice, no source). */
const assistanceReps = { split: 6, twist: 8 } as const;

/**
 * The session in its order: warm-up, marker, hops, drop jump, box jump, main lift, assistance. What
 * is not available gives way to its alternative; soreness or a day well below usual takes out what
 * makes sore (its place is taken by the alternative of low soreness) and one set of assistance; with
 * no jumps allowed nothing that lands stays. A limb comes before the room: who may not squat needs no rack.
 */
export function sessionPlan(given: SessionGiven): readonly SessionItem[] {
  const { state, jumps } = given;
  const eased: SwapReason | null = state.soreness
    ? "sore"
    : state.lastWord === "well below usual"
      ? "well-below-usual"
      : null;
  const short = given.isCut || eased !== null ? 1 : 2;
  const once: Block = { sets: 1, reps: 1 };
  const amounts: Readonly<Record<number, Block>> = {
    2: jumps.hops,
    3: jumps.dropJumps,
    4: jumps.boxJumps,
    5: given,
    6: { sets: short, reps: assistanceReps.split },
    7: { sets: short, reps: assistanceReps.twist },
  };
  const items: SessionItem[] = [];
  for (const usual of exerciseList) {
    const { sets, reps } = amounts[usual.order] ?? once;
    if (!given.noJumps && sets * reps === 0) continue;
    const swap = swapOf(usual, given, eased);
    const main = usual.kind === "main lift";
    const out = swap?.reason === "no-jumps";
    const exercise = swap === null ? (main ? given.lift : usual.name) : swap.instead;
    const onBar = main && swap === null;
    items.push({
      exercise,
      kind: usual.kind,
      sets: out ? 0 : sets,
      reps: out ? 0 : reps,
      loadKg: onBar
        ? given.loadKg
        : main || usual.kind === "assistance"
          ? (given.lastLoad?.(exercise) ?? null)
          : null,
      contacts: out ? 0 : usual.contacts * sets * reps,
      insteadOf: swap === null ? null : main ? given.lift : usual.name,
      reason: swap?.reason ?? null,
    });
    if (usual.order === 1 && given.markerKg !== null) {
      items.push({
        exercise: given.lift,
        kind: "marker",
        sets: 1,
        reps: markerReps,
        loadKg: given.markerKg,
        contacts: 0,
        insteadOf: null,
        reason: null,
      });
    }
  }
  return items;
}

function swapOf(usual: Exercise, given: SessionGiven, eased: SwapReason | null): Swap | null {
  if (usual.contacts > 0 && given.noJumps) return { reason: "no-jumps", instead: "" };
  if (given.notAvailable.includes(usual.name)) {
    return { reason: "not-available", instead: usual.instead };
  }
  for (const what of given.missing ?? []) {
    const instead = usual.without[what];
    if (instead !== undefined) return { reason: what === "rack" ? "no-rack" : "limb", instead };
  }
  if (given.noPlates?.includes(usual.name)) {
    return { reason: "no-plate", instead: usual.without.plate ?? usual.instead };
  }
  return eased !== null && usual.givesWayWhenSore
    ? { reason: eased, instead: usual.instead }
    : null;
}
