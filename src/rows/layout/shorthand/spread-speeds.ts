/** Speeds of one set: its repetitions, or one figure. */
export type SetSpeeds = {
  readonly reps: readonly (number | null)[];
  readonly single: number | null;
};

const none: SetSpeeds = { reps: [], single: null };

/**
 * Gives speeds written together to the sets they belong to: one figure is the first set's, as many
 * as there are sets is one each, and with one set they are its repetitions. `said` is what heading or
 * title says; null for the result when the numbers fit neither.
 */
export function spreadSpeeds(
  speeds: readonly (number | null)[],
  sets: number,
  reps: number | null,
  said: "each set" | "each rep" | null,
): readonly SetSpeeds[] | null {
  const spread = Array.from({ length: sets }, () => none);
  if (speeds.every((speed) => speed === null)) return spread;
  const first = (value: SetSpeeds) => spread.map((set, at) => (at === 0 ? value : set));
  if (said === "each rep" || (sets === 1 && speeds.length > 1))
    return first({ reps: speeds, single: null });
  if (speeds.length === 1) return first({ reps: [], single: speeds[0] ?? null });
  const perSet = speeds.length === sets || (said === "each set" && speeds.length < sets);
  // Five sets of five with five speeds could be either; only the heading can say.
  if (perSet && (said === "each set" || reps !== speeds.length))
    return spread.map((_, at) => ({ reps: [], single: speeds[at] ?? null }));
  const oneSet = said === null && speeds.length === reps && !perSet;
  return oneSet ? first({ reps: speeds, single: null }) : null;
}

/** Whether words say that figures are for each set or for each repetition. */
export function figuresFor(words: string): "each set" | "each rep" | null {
  if (/\b(je satz|per set|each set|a set|set means?|pro satz)\b/.test(words)) return "each set";
  return /\b(je wdh|per rep|each rep|rep speeds|pro wdh)\b/.test(words) ? "each rep" : null;
}
