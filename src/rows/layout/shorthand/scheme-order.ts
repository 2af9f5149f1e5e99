import { plainWords } from "../../header/header-words";

export type SchemePart = "load" | "sets" | "reps";

/** Order in which load, sets and repetitions stand in "85x3x5". */
export type SchemeOrder = readonly [SchemePart, SchemePart, SchemePart];

const part =
  /^(kg|lbs?|load|weight|gewicht|last|reps?|repetitions|wdhs?|wiederholungen|sets?|satze?|saetze)$/;

const meaning = (word: string): SchemePart =>
  /^s/.test(word) ? "sets" : /^(rep|wd|wi)/.test(word) ? "reps" : "load";

/**
 * The order a heading or title spells out: "kg x sets x reps", "kg x Wdh x Sätze", "sets × reps × kg".
 * Two of the three are enough, the load then stands apart. Null when it says nothing.
 */
export function orderFromWords(cell: unknown): readonly SchemePart[] | null {
  if (typeof cell !== "string" || !/[x×*@]/.test(cell)) return null;
  const words = plainWords(cell).replace(/×/g, "x");
  const joined = /([a-z]+)\s*[x*]\s*([a-z]+)(?:\s*[x*@]\s*([a-z]+))?/g;
  for (const match of words.matchAll(joined)) {
    const parts = match.slice(1).filter((word): word is string => word !== undefined);
    const known = parts.filter((word) => part.test(word)).map(meaning);
    if (known.length === parts.length && new Set(known).size === known.length) return known;
  }
  return null;
}

/** What is known of how shorthand is written in one place. */
export type SchemeSense = {
  /** Order of all three, when words spell it out. */
  readonly order: SchemeOrder | null;
  /** Whether sets come before repetitions; null when neither words nor the coach have said. */
  readonly setsFirst: boolean | null;
};

/** What words spell out; what they leave open is as the coach answered, if it was asked. */
export function schemeSense(
  parts: readonly SchemePart[] | null,
  answered: boolean | undefined,
): SchemeSense {
  const sets = parts?.indexOf("sets") ?? -1;
  const reps = parts?.indexOf("reps") ?? -1;
  return {
    order: parts?.length === 3 ? (parts as unknown as SchemeOrder) : null,
    setsFirst: sets >= 0 && reps >= 0 ? sets < reps : (answered ?? null),
  };
}

/** Where nothing is said. */
export const noSense: SchemeSense = { order: null, setsFirst: null };
