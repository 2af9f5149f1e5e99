import { plainWords } from "../header/header-words";
import { editDistance } from "./edit-distance";

/** How two spellings may be one athlete. */
export type NameLink = "spelling" | "initial" | "part" | "order";

/**
 * Whether two different spellings could mean one athlete, and why: a slip of one or two letters,
 * an initial ("Kofi A."), a part of the name ("Kofi"), or another order. Null when they hardly can.
 * A question for the coach either way.
 */
export function nameLink(one: string, other: string): NameLink | null {
  const a = wordsOf(one);
  const b = wordsOf(other);
  if (a.length === 0 || b.length === 0) return null;
  if (a.length === b.length) {
    if (a.every((word, at) => word === b[at])) return "spelling";
    if ([...a].sort().join(" ") === [...b].sort().join(" ")) return "order";
    if (close(a.join(" "), b.join(" "))) return "spelling";
  }
  const [few, many] = a.length <= b.length ? [a, b] : [b, a];
  return matchWords(few, many);
}

/** Every word of the shorter name must find its own word in the longer one. */
function matchWords(few: readonly string[], many: readonly string[]): NameLink | null {
  const free = [...many];
  let initials = 0;
  let slips = 0;
  let wholes = 0;
  // Whole words take their places before initials do.
  for (const word of [...few].sort((x, y) => y.length - x.length)) {
    const exact = free.indexOf(word);
    const near =
      exact >= 0
        ? exact
        : free.findIndex((other) => word.length > 1 && other.length > 1 && close(word, other));
    const initial =
      near >= 0
        ? near
        : free.findIndex(
            (other) => (word.length === 1 || other.length === 1) && other[0] === word[0],
          );
    if (initial < 0) return null;
    if (exact >= 0) wholes++;
    else if (near >= 0) slips++;
    else initials++;
    free.splice(initial, 1);
  }
  if (wholes + slips === 0) return null;
  if (initials > 0) return "initial";
  if (few.length < many.length) return "part";
  return slips > 0 ? "spelling" : "order";
}

function close(a: string, b: string): boolean {
  const shorter = Math.min(a.length, b.length);
  const allowed = shorter >= 8 ? 2 : shorter >= 4 ? 1 : 0;
  return Math.abs(a.length - b.length) <= allowed && editDistance(a, b, allowed) <= allowed;
}

function wordsOf(name: string): string[] {
  return plainWords(name)
    .replace(/\([^)]*\)/g, " ")
    .split(/[\s.,;/_-]+/)
    .filter((word) => word !== "");
}
