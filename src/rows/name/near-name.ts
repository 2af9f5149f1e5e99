import { editDistance } from "./edit-distance";
import { lettersDiffer, type NameWord, type Spelling, spellingOf } from "./spelling";

/** How two spellings may be one athlete. */
export type NameLink = "spelling" | "initial" | "part" | "order";

/**
 * Whether two different spellings could mean one athlete, and why: a slip of one or two letters,
 * an initial ("Kofi A."), a part of the name ("Kofi"), or another order. Null when they hardly can.
 * A question for the coach either way.
 */
export function nameLink(one: string, other: string): NameLink | null {
  return spellingLink(spellingOf(one), spellingOf(other));
}

/** The same for names made ready, where each is compared with many. */
export function spellingLink(a: Spelling, b: Spelling): NameLink | null {
  if (a.words.length === 0) return null;
  if (a.words.length === b.words.length) {
    if (a.whole.text === b.whole.text) return "spelling";
    if (a.ordered === b.ordered) return "order";
    if (close(a.whole, b.whole)) return "spelling";
  }
  return a.words.length <= b.words.length ? matchWords(a, b) : matchWords(b, a);
}

/** Every word of the shorter name must find its own word in the longer one. */
function matchWords(few: Spelling, many: Spelling): NameLink | null {
  let free = many.words;
  let initials = 0;
  // Whole words take their places before initials do.
  for (const word of few.longestFirst) {
    const exact = free.findIndex(({ text }) => text === word.text);
    const near = exact >= 0 ? exact : free.findIndex((other) => close(word, other));
    const initial = near >= 0 ? near : free.findIndex((other) => isInitial(word, other));
    if (initial < 0) return null;
    if (near < 0) initials++;
    free = free.filter((_, at) => at !== initial);
  }
  if (initials === few.words.length) return null;
  if (initials > 0) return "initial";
  return few.words.length < many.words.length ? "part" : "spelling";
}

const isInitial = ({ text: a }: NameWord, { text: b }: NameWord) =>
  (a.length === 1 || b.length === 1) && a[0] === b[0];

/** Within a slip or two for its length; letters are compared before places are. */
function close(a: NameWord, b: NameWord): boolean {
  const shorter = Math.min(a.text.length, b.text.length);
  const allowed = shorter >= 8 ? 2 : shorter >= 4 ? 1 : 0;
  return !lettersDiffer(a, b, allowed) && editDistance(a.text, b.text, allowed) <= allowed;
}
