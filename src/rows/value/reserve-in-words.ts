/** Perceived effort of a set after which no repetition was left. */
export const mostEffort = 10;

/**
 * Repetitions in reserve by the perceived effort of a set, 1–10: ten less it, a half taken as it stands
 * (Zourdos et al. 2016, J Strength Cond Res 30(1):267–275; Helms et al. 2016, Strength Cond J 38(4):42–49;
 * the figures of memory).
 */
export const reserveOfEffort = (effort: number | null): number | null =>
  effort === null ? null : mostEffort - effort;

const figure = "(\\d{1,2}(?:[.,]5)?)";
/** "RPE 8", "@RPE 8-9", "RIR: 2"; several in a row are not told apart. */
export const effortWords = new RegExp(
  `(?<![\\p{L}])@?(rpe|rir)\\s*[:=]?\\s*${figure}(?:\\s*[-–]\\s*${figure})?(?:\\s*/\\s*10)?(?![.,/]?\\d)`,
  "iu",
);
/** Of a whole session, or of what was to be lifted. */
const notOfSet = /(?:session|target|aim\p{L}*|plan\p{L}*|goal)(?: for| of| was)?\W*$/iu;

/** Repetitions left by what words beside a set say of them, a range at its careful end; null where they say nothing. */
export function reserveInWords(words: string): number | null {
  const found = effortWords.exec(words);
  if (found === null || notOfSet.test(words.slice(0, found.index))) return null;
  const [, scale, ...ends] = found;
  const told = ends.flatMap((end) => (end === undefined ? [] : [Number(end.replace(",", "."))]));
  if (told.some((one) => one > mostEffort)) return null;
  return /rir/i.test(scale!) ? Math.min(...told) : reserveOfEffort(Math.max(...told));
}
