import { isBlank } from "../../value/blank";
import { weekdayOfWord } from "../../value/day-text";
import { isDitto } from "../../value/ditto";
import { saysNoValue } from "../../value/no-value";
import { speedList } from "../../value/speed-list";
import { type Unit, unitOf } from "../../value/units";
import type { SchemeOrder } from "./scheme-order";

/** Equal sets written together: "85x3x5" is one group of three sets. */
export type SetGroup = {
  /** As written, in `unit`; null when the cell gives none. */
  readonly load: number | null;
  readonly unit: Unit | null;
  readonly reps: number | null;
  readonly sets: number;
};

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

/** From this on a number in a scheme is a load, not a count. */
const leastLoad = 16;
const mostSets = 12;

/**
 * Takes a shorthand cell apart: "95x5x5 @ .62", "5x5 95", "85x3x5  .67", "105x5x4+1x3",
 * "57,5x2x5 .64", "80x3 (bar slipped, redo)". `speedCount`, the number of speeds written elsewhere
 * for the same row, may settle what sets and repetitions are.
 */
export function setCell(cell: unknown, order: SchemeOrder | null, speedCount = 0): SetCell {
  if (isBlank(cell) || cell === false) return { is: "none", note: "" };
  if (typeof cell === "number")
    return {
      is: "sets",
      groups: [{ load: cell, unit: null, reps: null, sets: 1 }],
      speeds: [],
      note: "",
    };
  if (typeof cell !== "string") return { is: "unread" };
  if (isDitto(cell)) return { is: "ditto" };
  if (saysNoValue(cell)) return { is: "none", note: "" };
  const as = /^(?:wie|as|like|same as|see)\s+(?:last\s+|on\s+)?(\p{L}+)\.?$/iu.exec(cell.trim());
  const weekday = as === null ? null : weekdayOfWord(as[1] ?? "");
  if (weekday !== null) return { is: "as-weekday", weekday };
  return schemeText(cell, order, speedCount);
}

function schemeText(cell: string, order: SchemeOrder | null, speedCount: number): SetCell {
  const notes: string[] = [];
  let text = cell.replace(/\(([^()]*)\)/g, (_, words: string) => {
    notes.push(words.trim());
    return " ";
  });
  text = text
    .replace(/[×✕*]/g, "x")
    .replace(/(\d)\s*(kg|lbs?)\b/gi, "$1$2")
    .replace(/(\d(?:kg|lbs?)?)\s*x\s*(?=\d)/gi, "$1x")
    .replace(/\s*@\s*/g, " @")
    .replace(/(\d)\s*\+\s*(\d)/g, "$1+$2");
  const tokens = text.split(/[\s;]+|,\s+|,$/).filter((token) => token !== "");
  if (!tokens.some((token) => /\d/.test(token)))
    return { is: "none", note: [tokens.join(" "), ...notes].filter(Boolean).join("; ") };
  const groups: SetGroup[] = [];
  const words: string[] = [];
  const speeds: (number | null)[] = [];
  let bareLoad: { load: number; unit: Unit | null } | null = null;
  let unsettled = false;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as string;
    const bare = token.replace(/^@/, "");
    const number = /^(\d+(?:[.,]\d+)?|[.,]\d+)(kg|lbs?)?$/i.exec(bare);
    if (/^\d[\dx.,+]*(?:kg|lbs?)?[\dx.,+kglbs]*$/i.test(bare) && /x/i.test(bare)) {
      const found = scheme(bare.toLowerCase(), order, speedCount + speeds.length);
      if (found === "unsettled") unsettled = true;
      else if (found === null) return { is: "unread" };
      else groups.push(...found);
    } else if (number !== null) {
      const value = Number((number[1] ?? "").replace(",", "."));
      if (number[2] !== undefined || value >= leastLoad)
        bareLoad = { load: value, unit: unitOf(number[2] ?? "") };
      else if (value < 3.5 && /[.,]/.test(bare)) speeds.push(value);
      else return { is: "unread" };
    } else if (/^[\d.,/]+$/.test(bare) && speedList(bare).unread.length === 0) {
      speeds.push(...speedList(bare).speeds);
    } else if (/\d/.test(token) && (groups.length === 0 || /^[\d.,?]+$/.test(token)))
      return { is: "unread" };
    else words.push(token);
  }
  if (unsettled) return { is: "order-unsettled" };
  const note = [words.join(" "), ...notes].filter(Boolean).join("; ");
  return withLoad(groups, bareLoad, speeds, note);
}

/** Joins a load written apart ("5x5 95") with its groups. */
function withLoad(
  groups: readonly SetGroup[],
  bare: { load: number; unit: Unit | null } | null,
  speeds: readonly (number | null)[],
  note: string,
): SetCell {
  if (groups.length === 0) {
    if (bare === null) return { is: "unread" };
    // "20 min" is a number beside words, not a load.
    if (note !== "")
      return /^(min|mins|minutes|minuten|km|h|sec|s|m)\b/i.test(note)
        ? { is: "none", note: `${bare.load} ${note}` }
        : { is: "unread" };
    return { is: "sets", groups: [{ ...bare, reps: null, sets: 1 }], speeds, note };
  }
  const filled = groups.map((group) =>
    group.load === null && bare !== null ? { ...group, load: bare.load, unit: bare.unit } : group,
  );
  return { is: "sets", groups: filled, speeds, note };
}

/** "105x5x4+1x3" to groups; "unsettled" when sets and repetitions could be either. */
function scheme(
  text: string,
  order: SchemeOrder | null,
  speedCount: number,
): SetGroup[] | "unsettled" | null {
  const [head = "", ...rest] = text.split("+");
  let unit: Unit | null = null;
  const numbers = head.split("x").map((piece) => {
    const parts = /^(\d+(?:[.,]\d+)?|[.,]\d+)(kg|lbs?)?$/.exec(piece);
    if (parts === null) return Number.NaN;
    if (parts[2] !== undefined) unit = unitOf(parts[2]);
    return Number((parts[1] ?? "").replace(",", "."));
  });
  if (numbers.some(Number.isNaN)) return null;
  const first =
    numbers.length === 3
      ? triple(numbers, order, rest.length === 0 ? speedCount : 0)
      : pair(numbers);
  if (first === null || first === "unsettled") return first;
  const groups: SetGroup[] = [{ ...first, unit }];
  for (const piece of rest) {
    // What is added is written as sets × repetitions, the way blocks are spoken of.
    const more = /^(\d{1,2})x(\d{1,2})$/.exec(piece);
    if (more === null) return null;
    const added = { sets: Number(more[1]), reps: Number(more[2]) };
    const swapped =
      speedCount === first.sets + added.reps && speedCount !== first.sets + added.sets;
    const { sets, reps } = swapped ? { sets: added.reps, reps: added.sets } : added;
    if (sets < 1 || sets > mostSets) return null;
    groups.push({ load: first.load, unit, reps, sets });
  }
  return groups;
}

type Counted = { load: number | null; reps: number | null; sets: number };

function triple(
  numbers: readonly number[],
  order: SchemeOrder | null,
  speedCount: number,
): Counted | "unsettled" | null {
  const [a = 0, b = 0, c = 0] = numbers;
  if (order !== null) {
    const said: Record<string, number> = {};
    order.forEach((name, at) => {
      said[name] = numbers[at] ?? 0;
    });
    return counted(said.load ?? 0, said.sets ?? 0, said.reps ?? 0);
  }
  const loads = numbers.filter((number) => number >= leastLoad || !Number.isInteger(number));
  if (loads.length !== 1) return null;
  const load = loads[0] ?? 0;
  const [x = 0, y = 0] = a === load ? [b, c] : b === load ? [a, c] : [a, b];
  if (x === y || (speedCount === x && speedCount > 1)) return counted(load, x, y);
  if (speedCount === y && speedCount > 1) return counted(load, y, x);
  return "unsettled";
}

function pair(numbers: readonly number[]): Counted | null {
  const [a = 0, b = 0] = numbers;
  if (numbers.length !== 2) return null;
  if (a >= leastLoad && b < leastLoad) return counted(a, 1, b);
  if (b >= leastLoad && a < leastLoad) return counted(b, 1, a);
  return a < leastLoad && b < leastLoad
    ? { ...(counted(0, a, b) ?? { sets: 1, reps: b }), load: null }
    : null;
}

function counted(load: number, sets: number, reps: number): Counted | null {
  if (
    !Number.isInteger(sets) ||
    !Number.isInteger(reps) ||
    sets < 1 ||
    sets > mostSets ||
    reps < 1 ||
    reps > 60
  )
    return null;
  return { load, sets, reps };
}
