import type { BoxTry } from "../../jumps/box-jump";
import { stackHeight } from "../../jumps/stack-height";
import type { Plate } from "../../record/plate";
import { contactBands } from "../exercises/exercise-list";
import type { LineReason } from "../line-reason";
import type { AthleteState } from "../state/athlete-state";
import { type JumpSets, jumpSets } from "./jump-sets";
import { oneStepUp } from "./one-step-up";

/** The jumps of one session: ground contacts in all and of each exercise, and the box-jump stack. */
export type JumpPlan = JumpSets & {
  readonly contacts: number;
  /** Masses in kg from the bottom; empty when heights are kept without plates, or without jumps. */
  readonly stackKg: readonly number[];
  /** cm, from the gym's own thicknesses or the last height cleared; null when neither is known. */
  readonly stackCm: number | null;
  /** Why the stack is not the last one cleared, or does not rise; null where it is that without more. */
  readonly stackReason: LineReason | null;
};

/** Drop jumps of a session at most, trained and novices (common practice, no source). */
const mostDropJumps = { trained: 20, novice: 10 } as const;

/**
 * Low-impact hops, drop jumps and box jumps within the athlete's band of ground contacts, half of it
 * when eased. The stack is the last one cleared under all that was missed on the last day, or at every
 * try of late; while the jump is rising one small step more, if that is under it too. What the gym's
 * plates cannot make is built lower. A session that is eased never raises the stack.
 */
export function jumpPlan(given: {
  readonly experience: "novice" | "trained" | null;
  readonly noJumps: boolean;
  readonly eased: boolean;
  readonly state: BoxState;
  readonly plates: readonly Plate[];
  readonly wished?: { readonly contacts?: number; readonly stackKg?: readonly number[] };
}): JumpPlan {
  const { experience, noJumps, eased, state, plates, wished = {} } = given;
  if (noJumps) {
    return { ...jumpSets(0, 0), contacts: 0, stackKg: [], stackCm: null, stackReason: null };
  }
  const level = experience === "novice" ? "novice" : "trained";
  const { least } = contactBands[level];
  const contacts = Math.max(0, wished.contacts ?? (eased ? Math.round(least / 2) : least));
  const planned = plannedStack(state, plates, eased);
  const stackKg = wished.stackKg ?? planned.stackKg;
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
    stackReason: wished.stackKg === undefined && contacts > 0 ? planned.stackReason : null,
  };
}

type BoxState = Pick<
  AthleteState,
  "jumpWord" | "lastStackKg" | "lastJumpCm" | "missedBoxes" | "isBoxLowered"
>;

/** The stack of the next session, and why it is not simply the last one cleared. */
function plannedStack(
  { jumpWord, lastStackKg, lastJumpCm, missedBoxes, isBoxLowered }: BoxState,
  plates: readonly Plate[],
  eased: boolean,
): Pick<JumpPlan, "stackKg" | "stackReason"> {
  const stackKg = buildable(lastStackKg, plates);
  const [lowest] = missedBoxes;
  if (lowest !== undefined && lastStackKg.length === 0 && lastJumpCm === null)
    return { stackKg, stackReason: boxReason("box-unknown", lowest) };
  if (lowest !== undefined && isBoxLowered)
    return { stackKg, stackReason: boxReason("box-lower", lowest) };
  const next = eased || jumpWord !== "rising" ? null : oneStepUp(stackKg, plates);
  if (next === null) return { stackKg, stackReason: null };
  const barring = missedBoxes.find(({ cm }) => cm === null || next.cm >= cm);
  return barring === undefined
    ? { stackKg: next.stackKg, stackReason: { code: "box-up", facts: { cm: next.cm } } }
    : { stackKg, stackReason: boxReason("box-held", barring) };
}

/** A box missed is named by its height, or without one by its plates. */
const boxReason = (code: string, { day, cm, stackKg }: BoxTry): LineReason => ({
  code,
  facts: { day, ...(cm === null ? { stack: stackKg.join("+") } : { cm }) },
});

/** The stack without its topmost plates until the gym's own plates make it; as it is without a table. */
function buildable(stackKg: readonly number[], plates: readonly Plate[]): readonly number[] {
  if (plates.length === 0) return stackKg;
  let rest = stackKg;
  while (rest.length > 0 && !stackHeight(rest, plates).ok) rest = rest.slice(0, -1);
  return rest;
}
