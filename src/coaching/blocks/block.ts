import { accept, type Outcome, refuse } from "../../outcome";

/** Sets of equal repetitions. */
export type Block = { readonly sets: number; readonly reps: number };

/** The rotation, easiest to hold first; after the last it begins again (common practice, no source). */
export const rotation: readonly Block[] = [
  { sets: 5, reps: 5 },
  { sets: 3, reps: 5 },
  { sets: 5, reps: 3 },
  { sets: 3, reps: 3 },
];

/** Sets and repetitions of "5x5", "5 × 5" or "5*5", of the rotation or not; null for other text. */
export function setsByReps(text: string): Block | null {
  const parts = /^\s*(\d{1,2})\s*[x×*]\s*(\d{1,2})\s*$/i.exec(text);
  const block = parts && { sets: Number(parts[1]), reps: Number(parts[2]) };
  return block && block.sets > 0 && block.reps > 0 ? block : null;
}

/** "5x5", "5 × 5" or "5*5". Refuses `block-unreadable` and `block-not-in-rotation` (fact `found`). */
export function blockFromText(text: string): Outcome<Block> {
  const block = setsByReps(text);
  if (!block) return refuse("block-unreadable", { found: text });
  return rotation.some((one) => isSame(one, block))
    ? accept(block)
    : refuse("block-not-in-rotation", { found: text });
}

/** "5×5" */
export const blockText = ({ sets, reps }: Block): string => `${sets}×${reps}`;

export const isSame = (a: Block, b: Block): boolean => a.sets === b.sets && a.reps === b.reps;
