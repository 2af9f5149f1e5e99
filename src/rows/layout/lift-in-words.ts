import { plainWords } from "../header/header-words";

/** Lifts named in titles, longest first (common practice, no source). */
const lifts =
  "high-bar back squat|rear-foot-elevated split squat|romanian deadlift|trap bar deadlift|single-leg squat|bulgarian split squat|overhead press|bench press|back squat|front squat|split squat|jump squat|box squat|half squat|goblet squat|kniebeuge|hip thrust|calf raise|power clean|hang clean|kreuzheben|leg press|step-up|deadlift|rfess|squat|lunge|clean|snatch|bench|press|rdl|kb";

const anyLift = new RegExp(`(?<![a-z])(${lifts})s?(?![a-z])`);

const jumps = /\b(jump|jumps|sprung|sprunge|box|kasten|cmj|sj|dj ?\d*|hop|hops|pogo|drop)\b/;

/** The lift a title, tab name or heading speaks of; null when it names none. */
export function liftInWords(cell: unknown): string | null {
  return anyLift.exec(plainWords(cell))?.[1] ?? null;
}

/** True when the words name a jump rather than a lift. */
export function namesJump(cell: unknown): boolean {
  const words = plainWords(cell);
  return jumps.test(words) && !/\b(box|jump) squat\b/.test(words);
}
