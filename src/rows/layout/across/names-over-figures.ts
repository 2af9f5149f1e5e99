import { plainWords } from "../../header/header-words";
import { namesSummary } from "../../table/summary-lines";
import { weekdayOfWord } from "../../value/day-text";
import { liftInWords, namesJump } from "../lift-in-words";
import { plannedWords } from "../planned-words";
import { personName } from "../sections/above";
import type { HeadingParts } from "./heading-parts";

const noLift = new RegExp(
  String.raw`%|\b(?:e?\d*rm|best|next|before|after|pre|post|${plannedWords})\b`,
);
/** Lifts that stand over figures beside others, of which titles and tabs are seldom named. */
const otherLift =
  /\b(?:(?:pull|chin|push)[- ]?ups?|press|rows?|thrusts?|raises?|curls?|swings?|bridges?|nordics?|dips?|(?:hex|trap) ?bar|good ?mornings?|agachamento|sentadillas?|peso (?:morto|muerto)|levantamento terra|stacco|przysiad|martwy ciag|marklyft|knaboj|kneboy|markløft|knebøy|souleve de terre|kyykky|maastaveto)\b/;
const noName =
  /\b(?:done|actual|ist|left|right|heavy|light|medium|easy|hard|morning|evening|am|pm|men|women|boys|girls|group|session|day|week|block|bar|total|body|mass|load|speed|test)\b/;
const side = /^(?:l|r|left|right|links|rechts)$/;

/** True for the side of a lift done one leg or arm at a time. */
export const namesSide = (words: string): boolean => side.test(plainWords(words));

/** True for headings over figures that are not what was lifted. */
export const notLifted = (words: string): boolean => noLift.test(plainWords(words));

/** True for words that speak of a lift. */
export const namesLift = (words: string): boolean =>
  liftInWords(words) !== null || otherLift.test(plainWords(words));

/** What is written over the figures, and over how many columns. */
export function namesOver(headings: readonly HeadingParts[]): Map<string, number> {
  const names = new Map<string, number>();
  for (const { label } of headings)
    if (label !== "" && !namesJump(label) && !namesSummary(label.split(" ").pop()))
      names.set(label, (names.get(label) ?? 0) + 1);
  return names;
}

/** Those that are lifts, or the sides of the row's lift; null where they are something else. */
export function liftsAmong(
  names: ReadonlyMap<string, number>,
  hasLift: boolean,
): ReadonlySet<string> | null {
  const all = [...names.keys()];
  if (all.length === 0) return new Set();
  if (all.every(namesSide)) return new Set(all);
  if (hasLift || all.some(notLifted)) return null;
  const lifts = all.filter(namesLift);
  if (lifts.length === 0) return null;
  // A lift that is not known by name has more than one figure: "body mass kg" is none.
  return new Set(all.filter((name) => lifts.includes(name) || names.get(name)! > 1));
}

/** Those that are athletes, each with figures of their own; null where they are anything else. */
export function athletesAmong(names: ReadonlyMap<string, number>): ReadonlySet<string> | null {
  const all = [...names.keys()];
  const isName = (name: string) =>
    personName(name) !== null &&
    weekdayOfWord(name) === null &&
    !noName.test(plainWords(name)) &&
    !notLifted(name);
  return all.every(isName) ? new Set(all) : null;
}
