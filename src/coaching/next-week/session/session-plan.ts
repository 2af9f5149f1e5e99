import type { Block } from "../../blocks/block";
import { type Exercise, exerciseList, type Missing } from "../exercises/exercise-list";
import type { JumpSets } from "../jumps/jump-sets";
import type { AthleteState } from "../state/athlete-state";

/** Why an exercise is not the usual one. */
export type SwapReason = "no-rack" | "no-plate" | "limb" | "sore" | "well-below-usual" | "no-jumps";

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
  /** What is missing for everything that needs it: no rack, or a limb that limits. */
  readonly missing: readonly Missing[];
  /** Names from the exercise list for which the gym has no plates. */
  readonly noPlates: readonly string[];
  /** Load an assistance exercise was last done with, kg. */
  readonly lastLoad: (exercise: string) => number | null;
};

/** An alternative and the reason for it. */
type Swap = { readonly reason: SwapReason; readonly instead: string };

const markerReps = 3;
/** Assistance: two short sets, one in race weeks and on sore days (common practice, no source). */
const assistanceReps = { split: 6, twist: 8 } as const;
const once: Block = { sets: 1, reps: 1 };
const none: Block = { sets: 0, reps: 0 };

/**
 * The session in its order: warm-up, marker, hops, drop jump, box jump, main lift, assistance. What
 * is not available gives way to its alternative; soreness or a day well below usual takes out what
 * makes sore (its place is taken by the alternative of low soreness) and one set of assistance; with
 * no jumps allowed nothing that lands stays. A limb comes before the room: who may not squat needs no rack.
 */
export function sessionPlan(given: SessionGiven): readonly SessionItem[] {
  const eased = easedBy(given.state);
  const amountOf = amounts(given, eased !== null);
  return exerciseList.flatMap((usual) => {
    const amount = amountOf(usual);
    if (!given.noJumps && amount.sets * amount.reps === 0) return [];
    const item = itemOf(usual, amount, given, swapOf(usual, given, eased));
    return usual.order === 1 ? [item, ...marker(given)] : [item];
  });
}

function easedBy({ soreness, lastWord }: SessionGiven["state"]): SwapReason | null {
  if (soreness) return "sore";
  return lastWord === "well below usual" ? "well-below-usual" : null;
}

/** Sets and repetitions of an exercise by its place; what warms up is done once. */
function amounts(given: SessionGiven, isEased: boolean): (usual: Exercise) => Block {
  const { hops, dropJumps, boxJumps } = given.jumps;
  const sets = given.isCut || isEased ? 1 : 2;
  const byOrder: Readonly<Record<number, Block>> = {
    2: hops,
    3: dropJumps,
    4: boxJumps,
    5: given,
    6: { sets, reps: assistanceReps.split },
    7: { sets, reps: assistanceReps.twist },
  };
  return ({ order }) => byOrder[order] ?? once;
}

/** An exercise as it is done in this session: itself, its alternative, or cut. */
function itemOf(
  usual: Exercise,
  amount: Block,
  given: SessionGiven,
  swap: Swap | null,
): SessionItem {
  const isMain = usual.kind === "main lift";
  const name = isMain ? given.lift : usual.name;
  const exercise = swap?.instead ?? name;
  const { sets, reps } = swap?.reason === "no-jumps" ? none : amount;
  const lastLoad = () => (isMain || usual.kind === "assistance" ? given.lastLoad(exercise) : null);
  return {
    exercise,
    kind: usual.kind,
    sets,
    reps,
    loadKg: isMain && swap === null ? given.loadKg : lastLoad(),
    contacts: usual.contacts * sets * reps,
    insteadOf: swap && name,
    reason: swap?.reason ?? null,
  };
}

function marker({ lift, markerKg }: SessionGiven): readonly SessionItem[] {
  if (markerKg === null) return [];
  const amount = { sets: 1, reps: markerReps, loadKg: markerKg, contacts: 0 };
  return [{ exercise: lift, kind: "marker", ...amount, insteadOf: null, reason: null }];
}

function swapOf(usual: Exercise, given: SessionGiven, eased: SwapReason | null): Swap | null {
  if (usual.contacts > 0 && given.noJumps) return { reason: "no-jumps", instead: "" };
  for (const what of given.missing) {
    const instead = usual.without[what];
    if (instead !== undefined) return { reason: what === "rack" ? "no-rack" : "limb", instead };
  }
  if (given.noPlates.includes(usual.name)) {
    return { reason: "no-plate", instead: usual.without.plate ?? usual.instead };
  }
  return eased !== null && usual.givesWayWhenSore
    ? { reason: eased, instead: usual.instead }
    : null;
}
