import type { Column } from "../../header/column";
import { headerWords, longestHeading, plainWords } from "../../header/header-words";
import { bareHeading, recogniseHeader } from "../../header/recognise-header";
import { isBlank } from "../../value/blank";
import { orderFromWords } from "../shorthand/scheme-order";

/** A heading of one of several lifts or sets taken apart: "Squat set 2 (kg)". */
export type HeadingParts = {
  /** A meaning of the Sets table, or "rep 1" …; null when it names none. */
  readonly field: string | null;
  /** Number of the set, "" where it names none. */
  readonly set: string;
  /** What is left, as written: mostly a lift. */
  readonly label: string;
  readonly column: Column;
};

const setWord = /^(?:sets?|satz|serie|seria|s)#?$/;
const setToken = /^(?:set|satz|serie|seria|s)#?(\d{1,2})$/;
const number = /^#?(\d{1,2})(?:st|nd|rd|th|[.aªº])?$/;

/** Meanings that may follow a lift's name in one heading. */
const afterLift = /^(?:load|reps|speed|scheme|reserve|effort|setCount|note|kind|rep \d+)$/;

/** Figures of the set they stand under; any other meaning may hold for the whole row. */
export const figures = /^(?:load|reps|speed|scheme|reserve|effort|setCount|rep \d+)$/;

/** True for a heading over figures of a set, or one that only counts the set. */
export function isFigure({ field, set, column }: HeadingParts): boolean {
  if (field === null) return set !== "" && !/^\d+$/.test(column.heading);
  return figures.test(field);
}

/** Takes a heading apart; `index` is its column, from 0. */
export function headingParts(cell: unknown, index: number): HeadingParts {
  const text = isBlank(cell) ? "" : String(cell);
  const heading = text.length > longestHeading ? "" : text.trim();
  const written = String(bareHeading("Sets", heading));
  const { words, unit } = headerWords(written);
  const column: Column = { index, unit, heading, words };
  const tokens = written
    .replace(/[()[\]{}:;,|_]/g, " ")
    .split(/\s+/)
    .filter((token) => /[^–—-]/.test(token));
  const last = tokens.length - 1;
  const glued = /^(\D*[^\d\W])(\d{1,2})$/.exec(tokens[last] ?? "");
  if (glued !== null && !setToken.test(plainWords(tokens[last])))
    tokens.splice(last, 1, glued[1]!, glued[2]!);
  const set = takeSet(tokens);
  const found = named(tokens);
  const counted = number.exec(tokens[tokens.length - 1] ?? "")?.[1];
  // "kg 1" is the load of the first set; a number alone waits for the heading above it.
  if (found === null && set === "" && counted !== undefined) {
    const before = named(tokens.slice(0, -1));
    if (before !== null || tokens.length === 1)
      return { field: before?.field ?? null, set: counted, label: before?.label ?? "", column };
  }
  const left = found?.label ?? tokens.join(" ");
  // "Squat set 1 (kg/m/s)" says how its cells are written as well.
  const label = left.replace(/(?:^|\s+)(?:(?:kgs?|lbs?|m\/s|reps?|wdh)[\s/x×@,+]*)+$/i, "");
  return { field: found?.field ?? null, set, label, column };
}

/** Takes "Set 2", "S2", "2nd set" out of the words. */
function takeSet(tokens: string[]): string {
  for (const [at, token] of tokens.entries()) {
    const glued = setToken.exec(plainWords(token))?.[1];
    if (glued !== undefined) {
      tokens.splice(at, 1);
      return glued;
    }
    if (!setWord.test(plainWords(token))) continue;
    for (const [beside, from] of [
      [at + 1, at],
      [at - 1, at - 1],
    ] as const) {
      const counted = number.exec(tokens[beside] ?? "")?.[1];
      if (counted === undefined) continue;
      tokens.splice(from, 2);
      return counted;
    }
  }
  return "";
}

/** The meaning that the words end with, and what stands before it; the unit of a load or a speed is one. */
function named(tokens: readonly string[]): { field: string; label: string } | null {
  const spelled = (from: number) => orderFromWords(tokens.slice(from).join(" "))?.length ?? 0;
  for (let from = 0; from < tokens.length; from++) {
    // "Squat sets x reps" spells them out with the lift's name or without.
    if (spelled(from) === 2 && spelled(from + 1) === 2) continue;
    const { fields, repColumns } = recogniseHeader("Sets", [tokens.slice(from).join(" ")]);
    const [rep] = repColumns.map(({ words }) => `rep ${/\d+$/.exec(words)![0]}`);
    const field = rep ?? Object.keys(fields)[0];
    if (field !== undefined && (from === 0 || afterLift.test(field)))
      return { field, label: tokens.slice(0, from).join(" ") };
  }
  return null;
}
