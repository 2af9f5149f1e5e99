import { isBlank } from "../../value/blank";
import { isDitto } from "../../value/ditto";
import { illnessIn, saysNoValue } from "../../value/no-value";
import { saysWhyNothing } from "../../value/why-nothing";
import { asWeekday } from "./as-weekday";
import type { SetGroup } from "./scheme";
import type { SchemeSense } from "./scheme-order";
import { type BareLoad, SchemeTokens } from "./scheme-tokens";
import { tokensOf } from "./tokens-of-cell";

export type { SetGroup } from "./scheme";

/** What one shorthand cell says. */
export type SetCell =
  | {
      readonly is: "sets";
      readonly groups: readonly SetGroup[];
      /** Speeds written beside the scheme. */
      readonly speeds: readonly (number | null)[];
      readonly note: string;
    }
  /** Nothing was lifted; the words, if any, are a note. */
  | { readonly is: "none"; readonly note: string }
  | { readonly is: "ditto" }
  /** "wie Di", "as Tue": the sets of that weekday's session. */
  | { readonly is: "as-weekday"; readonly weekday: number }
  /** Sets and repetitions could be either way round. */
  | { readonly is: "order-unsettled" }
  | { readonly is: "unread" };

// Whatever is longer is no session: every set would carry the row's other cells once more.
const longestCell = 1_000;
const mostGroups = 40;

/**
 * Takes a shorthand cell apart: "95x5x5 @ .62", "5x5 95", "85x3x5  .67", "105x5x4+1x3",
 * "57,5x2x5 .64", "80x3 (bar slipped, redo)". `speedCount`, the number of speeds written elsewhere
 * for the same row, may settle what sets and repetitions are.
 */
export function setCell(cell: unknown, sense: SchemeSense, speedCount = 0): SetCell {
  if (isBlank(cell) || cell === false) return { is: "none", note: "" };
  if (typeof cell === "number")
    return {
      is: "sets",
      groups: [{ load: cell, unit: null, reps: null, sets: 1 }],
      speeds: [],
      note: "",
    };
  if (typeof cell !== "string" || cell.length > longestCell) return { is: "unread" };
  if (isDitto(cell)) return { is: "ditto" };
  if (saysNoValue(cell)) return { is: "none", note: illnessIn(cell) };
  if (saysWhyNothing(cell)) return { is: "none", note: cell.trim() };
  const weekday = asWeekday(cell);
  if (weekday !== null) return { is: "as-weekday", weekday };
  return schemeText(cell, sense, speedCount);
}

function schemeText(cell: string, sense: SchemeSense, speedCount: number): SetCell {
  const { tokens, notes } = tokensOf(cell);
  if (!tokens.some((token) => /\d/.test(token)))
    return { is: "none", note: [tokens.join(" "), ...notes].filter(Boolean).join("; ") };
  const read = new SchemeTokens(sense, speedCount, notes);
  for (const token of tokens) if (!read.take(token)) return { is: "unread" };
  if (read.groups.length > mostGroups) return { is: "unread" };
  if (read.unsettled) return { is: "order-unsettled" };
  const { note } = read;
  read.takeLadder();
  return withLoad(read.groups, read.bareLoads, read.speedsOfSets(), note);
}

/** True for sets that say more than one load alone does. */
export function isShorthand(said: SetCell): boolean {
  if (said.is === "order-unsettled") return true;
  if (said.is !== "sets") return false;
  const { groups, speeds } = said;
  return groups[0]!.reps !== null || groups.length > 1 || speeds.length > 0;
}

/**
 * Joins a load written apart ("5x5 95") with its groups. Of several nothing says which sets are whose;
 * beside loads of the groups' own a figure is a word of the note.
 */
function withLoad(
  groups: readonly SetGroup[],
  bares: readonly BareLoad[],
  speeds: readonly (number | null)[],
  note: string,
): SetCell {
  const [bare, second] = bares;
  const open = groups.length === 0 || groups.some(({ load }) => load === null);
  if (open && second !== undefined) return { is: "unread" };
  if (groups.length === 0) {
    if (bare === undefined) return { is: "unread" };
    // "20 min" is a number beside words, not a load.
    if (note !== "")
      return /^(min|mins|minutes|minuten|km|h|sec|s|m)\b/i.test(note)
        ? { is: "none", note: `${bare.load} ${note}` }
        : { is: "unread" };
    const { load, unit } = bare;
    return { is: "sets", groups: [{ load, unit, reps: null, sets: 1 }], speeds, note };
  }
  const filled = groups.map((group) =>
    group.load === null && bare !== undefined
      ? { ...group, load: bare.load, unit: bare.unit }
      : group,
  );
  const beside = open ? [] : bares.map(({ written }) => written);
  return { is: "sets", groups: filled, speeds, note: [...beside, note].filter(Boolean).join(" ") };
}

/** Code of the issue for a cell that gives no sets. */
export function problemOf(said: SetCell): string {
  if (said.is === "ditto" || said.is === "as-weekday") return "nothing-to-repeat";
  return said.is === "order-unsettled" ? "scheme-order-unsettled" : "scheme-unread";
}
