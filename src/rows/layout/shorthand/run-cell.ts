import { plainWords } from "../../header/header-words";
import { runKinds } from "../../table/run-kinds";
import { isBlank } from "../../value/blank";
import { isDitto } from "../../value/ditto";
import { illnessIn, saysNoValue } from "../../value/no-value";
import { saysWhyNothing } from "../../value/why-nothing";
import { asWeekday } from "./as-weekday";

/** One run written in a cell; figures as written, for the readers of their columns. */
export type WrittenRun = {
  readonly kind: string;
  readonly minutes: string;
  readonly km: string;
  readonly exertion: string;
  /** Words beside the figures: "8x400", "hilly". */
  readonly note: string;
};

export type RunCell =
  | { readonly is: "run"; readonly run: WrittenRun }
  /** No run; the words, if any, are a note. */
  | { readonly is: "none"; readonly note: string }
  | { readonly is: "ditto" }
  | { readonly is: "as-weekday"; readonly weekday: number }
  /** A bare number: minutes or kilometres. */
  | { readonly is: "figure-unsettled" }
  | { readonly is: "unread" };

const number = String.raw`\d+(?:[.,]\d+)?`;
const distance = new RegExp(`(?<![\\dx×:])(${number})\\s*(km|k|mi|miles?)(?![a-z])`, "i");
const minutes = new RegExp(
  `(?<![\\dx×:])(\\d{1,2}:\\d{2}:\\d{2}|\\d{1,2}\\s*h\\s*\\d{2}|${number}\\s*(?:min(?:s|utes?|uten)?|hours?|hrs?|h|std|['’′]))(?![a-z\\d])`,
  "i",
);
const exertion =
  /\b(?:rpe|exertion|effort)\s*(\d{1,2}(?:[.,]5)?(?:\s*[-–]\s*\d{1,2})?)\b|@\s*(\d{1,2}(?:\s*[-–]\s*\d{1,2})?)(?![\d.,])|\b(\d{1,2})\s*\/\s*10\b/i;
const repeats =
  /\b\d{1,2}\s*[x×]\s*(?:\d{3,4}\s*m?|\d+(?:[.,]\d+)?\s*(?:km|k|mi|min|['’′]))(?![a-z\d])/i;
const others =
  /\b(bike|ride|cycl\w*|swim\w*|row\w*|pool|gym|strength|weights|walk|yoga|off|rest|travel|rad\w*|schwimm\w*|kraft|ruhe|frei|pause)\b/;

/**
 * Takes a cell of a grid of runs apart: "45 easy", "10 km tempo", "1:20:00 long", "8x400", "60' @4",
 * 45. `bare` says what a number without a unit is; null when nothing does.
 */
export function runCell(cell: unknown, bare: "minutes" | "km" | null): RunCell {
  if (isBlank(cell) || cell === false) return { is: "none", note: "" };
  if (typeof cell !== "number" && typeof cell !== "string") return { is: "unread" };
  const text = String(cell).trim();
  if (isDitto(text)) return { is: "ditto" };
  if (saysNoValue(text) || text === "0") return { is: "none", note: illnessIn(text) };
  const weekday = asWeekday(text);
  if (weekday !== null) return { is: "as-weekday", weekday };
  if (others.test(plainWords(text)) || saysWhyNothing(text)) return { is: "none", note: text };
  return runText(text, bare);
}

function runText(text: string, bare: "minutes" | "km" | null): RunCell {
  const { interval, exertion, left, ...figures } = namedFigures(text);
  const rest = restOfRun(left);
  if (rest === null) return { is: "unread" };
  const { unnamed, words } = rest;
  if (unnamed !== "") {
    if (bare === null) return { is: "figure-unsettled" };
    if (figures[bare] !== "") return { is: "unread" };
    figures[bare] = unnamed;
  }
  const inWords = runKinds.get(plainWords(words.join(" "))) ?? "";
  const kind = rest.kind || (interval === "" ? inWords : "interval");
  if (kind === "" && figures.minutes === "" && figures.km === "") return { is: "none", note: text };
  const note = [interval, ...words].filter((word) => word !== "").join(" ");
  return { is: "run", run: { kind, ...figures, exertion, note } };
}

/** The figures that say what they are, and the text without them. */
function namedFigures(text: string) {
  let left = text;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(left);
    if (found !== null) left = left.replace(found[0], " ");
    return found;
  };
  const interval = take(repeats)?.[0] ?? "";
  const [, ...effort] = take(exertion) ?? [];
  const far = take(distance);
  const long = take(minutes)?.[1] ?? "";
  return {
    interval,
    exertion: effort.find((figure) => figure !== undefined) ?? "",
    km: far === null ? "" : distanceOf(far),
    minutes: long.replace(/['’′]/, " min"),
    left,
  };
}

/** What else is said: a kind of run, one figure without a unit, words. Null for two kinds, easy and then tempo, or more figures. */
function restOfRun(text: string) {
  const words: string[] = [];
  let kind = "";
  let unnamed = "";
  for (const token of text.split(/[\s;()]|,(?!\d)|(?<!\d),/)) {
    const known = runKinds.get(plainWords(token));
    if (known !== undefined) {
      if (kind !== "" && kind !== known) return null;
      kind = known;
    } else if (/^\d+(?:[.,]\d+)?$/.test(token) && unnamed === "") unnamed = token;
    else if (/\d/.test(token)) return null;
    else if (token !== "@") words.push(token);
  }
  return { kind, unnamed, words };
}

/** "10k" is ten kilometres. */
function distanceOf([, amount, unit]: RegExpExecArray): string {
  return `${amount} ${/k/i.test(unit!) ? "km" : "mi"}`;
}
