/** Speeds of one set: its repetitions, or one figure. */
export type SetSpeeds = {
  readonly reps: readonly (number | null)[];
  readonly single: number | null;
};

/** What heading, title or coach say that speeds written together are for; null when nobody does. */
export type SpeedsSaid = "each set" | "each rep" | null;

const none: SetSpeeds = { reps: [], single: null };
const ofReps = (reps: readonly (number | null)[]): SetSpeeds => ({ reps, single: null });

/**
 * Gives speeds written together to the sets they belong to: one figure is the first set's, as many as
 * there are sets is one each, and with one set they are its repetitions. What is said comes first.
 *
 * @param repsOf repetitions of each set, null where they are not written
 * @returns one entry a set; "unsettled" when an answer would tell, "too many" when none could
 */
export function spreadSpeeds(
  speeds: readonly (number | null)[],
  repsOf: readonly (number | null)[],
  said: SpeedsSaid,
): readonly SetSpeeds[] | "unsettled" | "too many" {
  const first = (value: SetSpeeds) => repsOf.map((_, at) => (at === 0 ? value : none));
  const { length } = speeds;
  const sets = repsOf.length;
  const [reps = null] = repsOf;
  if (speeds.every((speed) => speed === null)) return repsOf.map(() => none);
  if (said === null && length === 1) return first({ reps: [], single: speeds[0]! });
  const inOneSet = reps === null || length <= reps;
  if (said === "each rep" || (said === null && sets === 1)) {
    if (inOneSet) return first(ofReps(speeds));
    return ofEverySet(speeds, repsOf) ?? "too many";
  }
  // Five sets of five with five speeds could be either; only the heading can say.
  const eachSet = said === "each set" ? length <= sets : length === sets && reps !== length;
  if (eachSet) return repsOf.map((_, at) => ({ reps: [], single: speeds[at] ?? null }));
  if (said === "each set") return "too many";
  if (length === reps && length !== sets) return first(ofReps(speeds));
  return length <= sets || inOneSet || ofEverySet(speeds, repsOf) ? "unsettled" : "too many";
}

/** As many speeds as all sets have repetitions: each set's own, in order. */
function ofEverySet(
  speeds: readonly (number | null)[],
  repsOf: readonly (number | null)[],
): readonly SetSpeeds[] | null {
  if (speeds.length !== repsOf.reduce<number>((sum, reps) => sum + (reps ?? Number.NaN), 0))
    return null;
  let from = 0;
  return repsOf.map((reps) => {
    const own = speeds.slice(from, from + reps!);
    from += own.length;
    return ofReps(own);
  });
}

/** Whether words say that figures are for each set or for each repetition. */
export function figuresFor(words: string): SpeedsSaid {
  if (/\b(je satz|per set|each set|a set|set means?|pro satz)\b/.test(words)) return "each set";
  return /\b(je wdh|per rep|each rep|rep speeds|pro wdh)\b/.test(words) ? "each rep" : null;
}
