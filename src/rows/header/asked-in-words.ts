import { numberFromText } from "../value/number-text";

/** Answered in figures. */
const rated: readonly (readonly [string, RegExp])[] = [
  ["sleepH", /\b(hours?|hrs?|long|stunden|lange?)\b.*\b(sleep|slept|schlaf|geschlafen)\b/],
  [
    "sleepQuality",
    /\b(well|good|quality|gut|qualitat)\b.*\b(sleep|slept|schlaf|geschlafen)\b|\bhow did you sleep\b.* 1 ?[-–] ?\d/,
  ],
  ["soreness", /\b(sore|soreness|muskelkater)\b/],
  ["fatigue", /\b(tired|tiredness|fatigued?|mude|mudigkeit)\b/],
  ["stress", /\b(stress|stressed|stressful|gestresst)\b/],
  ["mood", /\b(mood|stimmung|laune)\b/],
];

/** Now and then somebody writes "about 6" where all others write a figure. */
const mostlyFigures = 0.8;

/** Answered in any way. */
const told: readonly (readonly [string, RegExp])[] = [
  [
    "pain",
    /\b(pain|pains|hurt(?:s|ing)?|injur(?:y|ies|ed)|niggles?|ill|illness|sick|schmerz(?:en)?|verletzt|verletzung(?:en)?|krank)\b/,
  ],
  ["newToday", /\bany ?thing (?:new|different|unusual)\b/],
  [
    "note",
    /^(?:is there )?any ?thing (?:else|other|you|we|i|(?:the|your) coach|to (?:add|report|tell))\b|^(?:any|other|further|more) (?:other )?(?:comments?|notes?|remarks?)\b|^sonst noch\b/,
  ],
];

/**
 * The diary's meaning of a question written out, as forms ask it: "How sore are you today?"; null when
 * it asks for none or several of them, or asks for a rating and is not answered in numbers.
 */
export function askedInWords(words: string, sample: readonly unknown[]): string | null {
  const enough = words.split(" ").length > 2;
  const fields = [...(enough ? rated : []), ...told].filter(([, pattern]) => pattern.test(words));
  const [asked, ...others] = fields;
  if (asked === undefined || others.length > 0) return null;
  const figures = sample.filter(isFigure).length;
  return told.includes(asked) || figures >= mostlyFigures * sample.length ? asked[0] : null;
}

const isFigure = (cell: unknown): boolean =>
  typeof cell === "number" ||
  (typeof cell === "string" && (/^\s*\d/.test(cell) || numberFromText(cell) !== null));
