import { isBlank } from "./blank";

/** Marks that say why there is no value, which the coach wants to know besides. */
const illness = new Set("ill|sick|krank".split("|"));

/** Marks by which coaches say that there is no value here; not zero, and nothing to report. */
const marks = new Set(
  "-|--|–|—|−|/|.|..|n/a|na|n.a.|#n/a|none|nil|dns|dnf|dnp|skip|skipped|stopped|missed|no height|no speed|k.a.|ka|entfällt|ausgelassen|keine".split(
    "|",
  ),
);

/** True for a cell that is blank, an empty tick box, or a mark for no value. */
export function holdsNothing(cell: unknown): boolean {
  return isBlank(cell) || cell === false || (typeof cell === "string" && saysNoValue(cell));
}

/** True for "-", "DNS", "n/a", "ill" and their like. */
export function saysNoValue(text: string): boolean {
  return marks.has(text.trim().toLowerCase()) || illnessIn(text) !== "";
}

/** True for a mark that says no more than that there is no value: of no illness. */
export const isMark = (text: string): boolean => saysNoValue(text) && illnessIn(text) === "";

/** The mark itself of a cell that holds no value for an illness; "" of all others. */
export function illnessIn(text: string): string {
  const mark = text.trim();
  return illness.has(mark.toLowerCase()) ? mark : "";
}
