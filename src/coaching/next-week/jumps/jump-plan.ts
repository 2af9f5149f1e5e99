import { stackHeight, stampedOn } from "../../jumps/stack-height";
import type { Plate } from "../../record/plate";
import { contactBands } from "../exercises/exercise-list";
import type { AthleteState } from "../state/athlete-state";
import { type JumpSets, jumpSets } from "./jump-sets";

/** The jumps of one session: ground contacts in all and of each exercise, and the box-jump stack. */
export type JumpPlan = JumpSets & {
  readonly contacts: number;
  /** Masses in kg from the bottom; empty when heights are kept without plates, or without jumps. */
  readonly stackKg: readonly number[];
  /** cm, from the gym's own thicknesses or the last height cleared; null when neither is known. */
  readonly stackCm: number | null;
};

/** Drop jumps of a session at most, trained and novices (common practice, no source). */
const mostDropJumps = { trained: 20, novice: 10 } as const;
/** Lighter discs are too narrow to land on (common practice, no source). */
const leastLandingKg = 5;

/**
 * Low-impact hops, drop jumps and box jumps within the athlete's band of ground contacts, half of it
 * when eased. The stack is the last one cleared, or one small plate more while the jump is rising and
 * such a plate is in the gym; what the gym's plates cannot make is built lower. A session that is eased
 * never raises the stack.
 */
export function jumpPlan(given: {
  readonly experience: "novice" | "trained" | null;
  readonly noJumps: boolean;
  readonly eased: boolean;
  readonly state: Pick<AthleteState, "jumpWord" | "lastStackKg" | "lastJumpCm">;
  readonly plates: readonly Plate[];
  readonly wished?: { readonly contacts?: number; readonly stackKg?: readonly number[] };
}): JumpPlan {
  const { experience, noJumps, eased, state, plates, wished = {} } = given;
  if (noJumps) {
    return { ...jumpSets(0, 0), contacts: 0, stackKg: [], stackCm: null };
  }
  const level = experience === "novice" ? "novice" : "trained";
  const { least } = contactBands[level];
  const contacts = Math.max(0, wished.contacts ?? (eased ? Math.round(least / 2) : least));
  const rising = !eased && state.jumpWord === "rising";
  const lastKg = buildable(state.lastStackKg, plates);
  const stackKg = wished.stackKg ?? (rising ? onePlateMore(lastKg, plates) : lastKg);
  const height = stackHeight(stackKg, plates);
  return {
    contacts,
    ...jumpSets(contacts, mostDropJumps[level]),
    stackKg,
    stackCm:
      stackKg.length === 0
        ? state.lastJumpCm
        : height.ok
          ? Math.round(10 * height.value) / 10
          : null,
  };
}

/** The stack without its topmost plates until the gym's own plates make it; as it is without a table. */
function buildable(stackKg: readonly number[], plates: readonly Plate[]): readonly number[] {
  if (plates.length === 0) return stackKg;
  let rest = stackKg;
  while (rest.length > 0 && !stackHeight(rest, plates).ok) rest = rest.slice(0, -1);
  return rest;
}

/** The stack with the thinnest plate that the gym still has for it; as it was when there is none. */
function onePlateMore(stackKg: readonly number[], plates: readonly Plate[]): readonly number[] {
  if (stackKg.length === 0) return stackKg;
  const thinnest = plates
    .filter(({ massKg }) => massKg >= leastLandingKg)
    .sort((a, b) => a.thicknessCm - b.thicknessCm);
  for (const plate of thinnest) {
    const higher = [...stackKg, stampedOn(plate)];
    if (stackHeight(higher, plates).ok) return higher;
  }
  return stackKg;
}
