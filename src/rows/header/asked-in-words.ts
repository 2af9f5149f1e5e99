import { numberFromText } from "../value/number-text";

const asked: readonly (readonly [string, RegExp])[] = [
  ["sleepH", /\b(hours?|hrs?|long|stunden|lange?)\b.*\b(sleep|slept|schlaf|geschlafen)\b/],
  ["sleepQuality", /\b(well|good|quality|gut|qualitat)\b.*\b(sleep|slept|schlaf|geschlafen)\b/],
  ["soreness", /\b(sore|soreness|muskelkater)\b/],
  ["fatigue", /\b(tired|tiredness|fatigued?|mude|mudigkeit)\b/],
  ["stress", /\b(stress|stressed|stressful|gestresst)\b/],
  ["mood", /\b(mood|stimmung|laune)\b/],
];

const inOwnWords =
  /\b(anything|something|hurt|hurting|hurts|pains?|niggles?|ill|illness|injur(?:y|ed|ies)|sonst|schmerzen|krank)\b/;

/**
 * The diary's meaning of a question written out, as forms ask it: "How sore are you today?" where it is
 * answered in numbers, "Anything hurting?" where it is answered in words; null when it asks for none or
 * several of them.
 */
export function askedInWords(words: string, sample: readonly unknown[]): string | null {
  if (sample.every(isFigure)) return questionInWords(words);
  const long = words.split(" ").length >= 2;
  return long && inOwnWords.test(words) && !sample.some(isFigure) ? "note" : null;
}

/** What a question written out asks, whatever it is answered. */
export function questionInWords(words: string): string | null {
  if (words.split(" ").length < 3) return null;
  const [field, ...others] = asked.filter(([, pattern]) => pattern.test(words));
  return field === undefined || others.length > 0 ? null : field[0];
}

const isFigure = (cell: unknown): boolean =>
  typeof cell === "number" ||
  (typeof cell === "string" && (/^\s*\d/.test(cell) || numberFromText(cell) !== null));
