import { plannedWords } from "../layout/planned-words";
import { unitOf } from "../value/units";
import { plainWords } from "./header-words";

const brackets = /[([{]([^()[\]{}]*)[)\]}]/g;
/** Remarks that leave a figure what it is. */
const ofFigures =
  /^(?:(?:incl|inkl|including|with|mit)\b.* (?:bar|stange|hantel)\b|(?:from|vom?|laut) |how many |wie viele |please |bitte |\d{1,2} ?[-–] ?\d{1,2}$)/;
/** "(incl. bar, lb)" names the unit besides. */
const namesUnit = (remark: string) => remark.split(/[\s,;]+/).some((word) => unitOf(word) !== null);
/** Remarks that change whose or which it is. */
const changes = new RegExp(
  String.raw`\b(?:${plannedWords}|only|nur|coach|private?|birth|geburt|before|after|next|last|vorher|nachher)\b`,
);
/** Meanings answered in words. */
const inWords = /^(?:day|athlete|exercise|test|kind|movedWell|cleared|by|note|gym|tool)$/;

/**
 * A heading without what its brackets ask or explain: "Comments (anything that hurt?)", "Load in kg (incl.
 * bar!)"; null where they may change what stands below, as "Load (per hand)" does.
 */
export function withoutRemarks(
  heading: unknown,
  meaning: (bare: string) => string | undefined,
): string | null {
  if (typeof heading !== "string" || !/[([{]/.test(heading)) return null;
  const remarks = [...heading.matchAll(brackets)].map(([, inside]) => plainWords(inside));
  const bare = heading.replace(brackets, " ").replace(/\s+/g, " ").trim();
  const field = remarks.length === 0 || bare === "" ? undefined : meaning(bare);
  if (field === undefined) return null;
  const leaves = (remark: string) =>
    !changes.test(remark) &&
    (inWords.test(field) ? / |\//.test(remark) : ofFigures.test(remark) && !namesUnit(remark));
  return remarks.every(leaves) ? bare : null;
}
