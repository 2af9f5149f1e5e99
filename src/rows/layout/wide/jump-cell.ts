import { isBlank } from "../../value/blank";
import { illnessIn, saysNoValue } from "../../value/no-value";
import { saysWhyNothing } from "../../value/why-nothing";
import type { JumpPart } from "./jump-title";

/** One attempt written in a cell. */
export type CellAttempt = {
  readonly stack?: string;
  readonly cleared?: boolean;
  readonly height?: string | number;
  readonly contact?: string | number;
  readonly flight?: string | number;
};

export type JumpCell = {
  readonly attempts: readonly CellAttempt[];
  /** Words beside the figures, and the mark of a footnote. */
  readonly note: string;
  readonly mark: string;
  /** Code of what is wrong with the cell, when nothing can be used. */
  readonly problem: "unsure" | "jump-unread" | null;
};

const nothing: JumpCell = { attempts: [], note: "", mark: "", problem: null };
const unsure: JumpCell = { ...nothing, problem: "unsure" };
const unread: JumpCell = { ...nothing, problem: "jump-unread" };
const plates = String.raw`(?:\d{1,2}\s*[x×]\s*)?\d{1,2}(?:[.,]\d+)?(?:\s*\+\s*(?:\d{1,2}\s*[x×]\s*)?\d{1,2}(?:[.,]\d+)?)*`;
// A number is never cut in two: "182/0.49/3" is no stack of 18 kg; "5x5x80" is none that was missed.
const stacked = new RegExp(
  `^(${plates})(?!\\d)\\s*(\\*+|†)?\\s*(?:([ox]{1,4})(?!\\s*\\d)-?)?((?:\\s*/\\s*\\+?\\s*${plates}\\s*[ox]{1,3}(?!\\d)-?)*)\\s*(.*)$`,
  "i",
);
const number = String.raw`(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
// "5 x 15" is a stack, "41 in sand" names no inches.
const measured = new RegExp(
  `^(${number})\\s*(cm|"|(?:m|in)$)?\\s*(\\*+|†)?(?:\\s+(?![x×*+]\\s*\\d)(\\D.*))?$`,
);

const doubted = new RegExp(`^${number}\\s*\\?+$`);
const timed = new RegExp(
  `^(${number})\\s*(?:ms|s)?(?:\\s*/\\s*(${number})\\s*(?:ms|s)?)?(?:\\s+(\\D.*))?$`,
);

const asNumber = (text: string) => Number(text.replace(",", "."));

/** Common practice, no source. */
const heaviestPlateKg = 25;

const partings = [/\s*;\s*|,\s+/, /\s+/, /\s*\/\s*/];
const isNumber = new RegExp(`^${number}$`);

/** Numbers and nothing else, however they are parted: "30; 31", "30 31 29", "30/31/29"; null otherwise. */
function severalNumbers(text: string): readonly string[] | null {
  const lists = partings.map((parting) => text.split(parting));
  const numbers = lists.find((list) => list.length > 1 && list.every((one) => isNumber.test(one)));
  // Two parted by a stroke may be one of each leg.
  return numbers === undefined || (numbers.length === 2 && text.includes("/")) ? null : numbers;
}

/** Takes a jump cell apart: "5x15+5 o / +10 x", "5x15+10*", "182/.49", "243/.49 Achilles", 46. */
export function jumpCell(cell: unknown, parts: readonly JumpPart[]): JumpCell {
  if (isBlank(cell) || cell === false) return nothing;
  if (typeof cell === "number") return { ...nothing, attempts: [single(cell, parts)] };
  if (typeof cell !== "string") return unread;
  // Of a cell with several lines all are read.
  const text = cell.trim().replace(/\s+/g, " ");
  if (saysNoValue(text) || /^x{1,3}-?$/i.test(text)) return { ...nothing, note: illnessIn(text) };
  if (!/\d/.test(text) || saysWhyNothing(text)) return { ...nothing, note: text };
  if (doubted.test(text)) return unsure;
  return (
    times(text, parts) ?? severalHeights(text, parts) ?? oneHeight(text, parts) ?? stackOf(text)
  );
}

/** "182/.49": a figure for each of the title's parts, where they are of contact or flight; null otherwise. */
function times(text: string, parts: readonly JumpPart[]): JumpCell | null {
  const found = timed.exec(text);
  if (found === null || !parts.some((part) => part === "contact" || part === "flight")) return null;
  const values = found.slice(1, 3).filter((value) => value !== undefined);
  if (values.length > parts.length) return unread;
  const attempt = Object.fromEntries(values.map((value, at) => [parts[at], value]));
  return { ...nothing, attempts: [attempt], note: found[3] ?? "" };
}

/** "41 42 40 cm"; null where there are not several numbers. */
function severalHeights(text: string, parts: readonly JumpPart[]): JumpCell | null {
  const each = severalNumbers(text.replace(/\s*cm\b/gi, ""));
  if (each === null) return null;
  // No plate is that heavy: "30, 31" are two heights, "15, 20" may be two stacks.
  const heights = each.every((one) => asNumber(one) > heaviestPlateKg);
  if (!heights || parts.includes("stack")) return unread;
  return { ...nothing, attempts: each.map((height) => ({ height })) };
}

/** "31.5 cm* windy"; null where it may be a stack. */
function oneHeight(text: string, parts: readonly JumpPart[]): JumpCell | null {
  const [, figure, unit, mark = "", note = ""] = measured.exec(text) ?? [];
  if (figure === undefined || parts.includes("stack")) return null;
  // "10*" may be a plate that was missed; no plate is as heavy as "31*".
  if (mark !== "" && unit === undefined && asNumber(figure) <= heaviestPlateKg) return null;
  // A second figure, "31.5 / 31.9", must not pass for a note.
  if (/^[^\p{L}(]*\d[^\p{L}(]*$/u.test(note)) return unread;
  const height = unit === undefined ? figure : `${figure} ${unit}`;
  return { ...nothing, attempts: [{ height }], note, mark };
}

function stackOf(text: string): JumpCell {
  const stack = stacked.exec(text);
  if (stack === null) return unread;
  const note = stack[5]!;
  if (/^\?+$/.test(note)) return unsure;
  // An attempt that cannot be read must not pass for a note, nor the load of a lift.
  if (/^(?:\?|[x×@]\s*\d|\/.*\d|\d+[.,]\d|[\d.,]+ ?(?:kg|lbs?)?$)/i.test(note)) return unread;
  // "30-31" and "30, 31 tired" are no plate of 30 kg.
  if (/^[\d.,]+$/.test(stack[1]!) && /^[,;–-]\s*\d/.test(note)) return unread;
  return { attempts: attemptsOf(stack), note, mark: stack[2] ?? "", problem: null };
}

/** "5x15+5 o / +10 x": the stack cleared, then missed with ten more on top. */
function attemptsOf(stack: RegExpExecArray): CellAttempt[] {
  let height = stack[1]!.replace(/\s/g, "");
  const marked = stack[2] !== undefined;
  const attempts: CellAttempt[] = tries(height, stack[3] ?? "", marked);
  for (const step of stack[4]!.split("/")) {
    const parts = /^\s*(\+)?(.*?)\s*([ox]{1,3})-?\s*$/i.exec(step);
    if (parts === null) continue;
    const written = parts[2]!.replace(/\s/g, "");
    height = parts[1] === undefined ? written : `${height}+${written}`;
    attempts.push(...tries(height, parts[3]!, false));
  }
  return attempts;
}

/** One attempt for each letter: "xo" missed, then cleared; no letter at all: cleared, unless marked. */
export function tries(stack: string, letters: string, marked: boolean): CellAttempt[] {
  if (letters === "") return [{ stack, cleared: !marked }];
  return [...letters.toLowerCase()].map((letter) => ({
    stack,
    cleared: letter === "o" && !marked,
  }));
}

function single(cell: number, parts: readonly JumpPart[]): CellAttempt {
  const [part = "height"] = parts;
  // One plate of that mass: nothing says centimetres.
  return part === "stack" ? { stack: String(cell), cleared: true } : { [part]: cell };
}
