import { isBlank } from "../../value/blank";
import { isDitto } from "../../value/ditto";
import { illnessIn, saysNoValue } from "../../value/no-value";
import { effortWords } from "../../value/reserve-in-words";
import { type SpeedList, speedList } from "../../value/speed-list";
import { type Unit, unitOf } from "../../value/units";
import { saysWhyNothing } from "../../value/why-nothing";
import { asWeekday } from "./as-weekday";
import { leastLoad, type SetGroup, schemeGroups } from "./scheme";
import type { SchemeSense } from "./scheme-order";

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
  const notes: string[] = [];
  // "3x5 80 RPE 8": its figure is no load and no speed.
  const left = cell.replace(effortWords, (words) => {
    notes.push(words.replace("@", ""));
    return " ";
  });
  let text = left.replace(/\(([^()]*)\)/g, (_, words: string) => {
    // "80x5 (0.62)" gives the set's speed, "(bar slipped)" is a note.
    if (bracketedSpeed.test(words)) return ` @${words.trim()} `;
    notes.push(words.trim());
    return " ";
  });
  text = text
    .replace(/[×✕*]/g, "x")
    .replace(repsAtLoad, (all, reps: string, load: string, unit = "") =>
      // "3x5 80 @ 10" ends with an effort.
      load === "10" && Number(reps) >= leastLoad ? all : `${reps}${unit}x${load}`,
    )
    .replace(/(\d)\s*(kg|lbs?)(?=x|\b)/gi, "$1$2")
    .replace(/(\d(?:kg|lbs?)?)\s*x\s*(?=\d)/gi, "$1x")
    .replace(/\s*@\s*/g, " @")
    .replace(/(\d)\s*\+\s*(\d)/g, "$1+$2");
  const tokens = text.split(/[\s;]|,\s|,$/).filter((token) => token !== "");
  if (!tokens.some((token) => /\d/.test(token)))
    return { is: "none", note: [tokens.join(" "), ...notes].filter(Boolean).join("; ") };
  const groups: SetGroup[] = [];
  const words: string[] = [];
  const speeds: (number | null)[] = [];
  /** How many groups stand left of each speed. */
  const groupsBefore: number[] = [];
  const bareLoads: BareLoad[] = [];
  let unsettled = false;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as string;
    const bare = token.replace(/^@/, "");
    const number = /^(\d+(?:[.,]\d+)?|[.,]\d+)(kg|lbs?)?$/i.exec(bare);
    const ramp = rampIn(bare);
    const paired = loadAndSpeed.exec(bare);
    // "3/10" rates something out of ten.
    if (/^\d{1,2}\/10$/.test(bare)) words.push(token);
    else if (
      effortAtSign.test(token) &&
      (unsettled || hasLoads(groups, bareLoads)) &&
      notes.every(isNoEffort)
    )
      notes.push(`RPE ${bare}`);
    else if (ramp !== null) groups.push(...ramp);
    else if (paired !== null) {
      const [, load, unit, speed] = paired;
      groups.push({ load: asNumber(load!), unit: unitOf(unit), reps: null, sets: 1 });
      speeds.push(asNumber(speed!));
    } else if (/^\d[\dx.,+kglbs]*$/i.test(bare) && /x/i.test(bare)) {
      const found = schemeGroups(bare.toLowerCase(), sense, speedCount + speeds.length);
      if (found === "unsettled") unsettled = true;
      else if (found === null) return { is: "unread" };
      else groups.push(...found);
    } else if (number !== null) {
      const value = Number(number[1]!.replace(",", "."));
      if (number[2] !== undefined || value >= leastLoad)
        bareLoads.push({ load: value, unit: unitOf(number[2]), written: bare });
      else if (value < 3.5 && /[.,]/.test(bare)) speeds.push(value);
      else return { is: "unread" };
    } else if (/\d/.test(bare) && isSpeeds(speedList(bare))) {
      speeds.push(...speedList(bare).speeds);
    } else if (/\d/.test(token) && (groups.length === 0 || /^[\d.,?]+$/.test(token)))
      return { is: "unread" };
    else words.push(token);
    while (groupsBefore.length < speeds.length) groupsBefore.push(groups.length);
  }
  if (groups.length > mostGroups) return { is: "unread" };
  if (unsettled) return { is: "order-unsettled" };
  const note = [words.join(" "), ...notes].filter(Boolean).join("; ");
  // Two loads may be a range, three are a ladder.
  const ladder = groups.length === 0 && bareLoads.length > 2 && note === "" && speeds.length === 0;
  if (ladder)
    for (const { load, unit } of bareLoads.splice(0))
      groups.push({ load, unit, reps: null, sets: 1 });
  return withLoad(groups, bareLoads, besideTheirSets(speeds, groupsBefore, groups), note);
}

const bracketedSpeed = /^\s*@?\s*[01]?[.,]\d{1,3}(?:\s*m\/s)?\s*$/i;
/** "5@60" is five repetitions at 60. */
const repsAtLoad = /(?<![\dx@.,])(\d{1,2})\s*@\s*(\d{2,3}(?:[.,]\d+)?)(kg|lbs?)?(?![\dx%.])/gi;

/**
 * "80x5x3 @8": behind sets and their load an effort of 6 to 10 (common practice, no source), as no bar moves
 * at 8 m/s. Behind a load alone, "80 @8", it may be repetitions.
 */
const effortAtSign = /^@(?:[6-9](?:[.,][05])?|10)$/;
const isNoEffort = (note: string) => !effortWords.test(note);
const hasLoads = (groups: readonly SetGroup[], bare: readonly BareLoad[]) =>
  groups.length > 0 && (bare.length === 1 || groups.every(({ load }) => load !== null));

/** "80/0.62" is a set's load and speed. */
const loadAndSpeed = /^(\d{2,3}(?:[.,]\d+)?)(kg|lbs?)?\/([012]?[.,]\d{1,3})$/i;
const asNumber = (text: string) => Number(text.replace(",", "."));

/** "60/70/80" and "60/70/80x3": one set at each load. */
function rampIn(token: string): SetGroup[] | null {
  const parts = /^(\d+(?:[.,]\d+)?(?:\/\d+(?:[.,]\d+)?)+)(kg|lbs?)?(?:x(\d{1,2}))?$/i.exec(token);
  if (parts === null) return null;
  const loads = parts[1]!.split("/").map(asNumber);
  if (loads.some((load) => load < leastLoad)) return null;
  const reps = parts[3] === undefined ? null : Number(parts[3]);
  if (reps === null && loads.length < 3) return null;
  return loads.map((load) => ({ load, unit: unitOf(parts[2]), reps, sets: 1 }));
}

/** Speeds written behind their own sets ("60x5 .7 70x5 .65 80x5") keep to them. */
function besideTheirSets(
  speeds: readonly (number | null)[],
  groupsBefore: readonly number[],
  groups: readonly SetGroup[],
): readonly (number | null)[] {
  const setsBefore = (count: number) =>
    groups.slice(0, count).reduce((sum, { sets }) => sum + sets, 0);
  const all = setsBefore(groups.length);
  const placed = Array<number | null>(all).fill(null);
  const next = new Map<number, number>();
  for (const [at, speed] of speeds.entries()) {
    const behind = groupsBefore[at]!;
    const place = next.get(behind) ?? setsBefore(behind - 1);
    if (behind === 0 || place >= setsBefore(behind)) return speeds;
    placed[place] = speed;
    next.set(behind, place + 1);
  }
  return groups.length > 1 && speeds.length > 0 ? placed : speeds;
}

/** Figures and marks for missing ones, none of them in doubt. */
function isSpeeds({ unread, unsure }: SpeedList): boolean {
  return unread.length + unsure.length === 0;
}

type BareLoad = { readonly load: number; readonly unit: Unit | null; readonly written: string };

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
