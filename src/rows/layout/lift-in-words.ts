import { plainWords } from "../header/header-words";

/** Lifts named in titles, longest first (common practice, no source). */
const lifts =
  "high-bar back squat|rear-foot-elevated split squat|romanian deadlift|trap bar deadlift|single-leg squat|bulgarian split squat|overhead press|bench press|back squat|front squat|split squat|jump squat|box squat|half squat|goblet squat|kniebeuge|hip thrust|calf raise|power clean|hang clean|kreuzheben|leg press|step-up|deadlift|rfess|squat|lunge|clean|snatch|bench|press|rdl|kb";

/** Words before a lift that make another lift of it (common practice, no source). */
const variants =
  "hack|paused?|pin|tempo|sumo|belt|zercher|anderson|safety(?:[ -]bar)?|ssb|smith|trap[ -]?bar|hex[ -]?bar|low[ -]?bar|high[ -]?bar|single[ -]leg|one[ -]leg|sl|stiff[ -]leg(?:ged)?|deficit|rack|floor|incline|decline|close[ -]grip|push|seated|standing|bulgarian|cossack|pistol|cyclist|wall|landmine|dumb ?bell|db|kettle ?bell|overhead|front|box|half|goblet|split|jump|hang|power|romanian";
const anyLift = new RegExp(`(?<![a-z])((?:(?:${variants})[ -]+)*(?:${lifts}))s?(?![a-z])`);

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
