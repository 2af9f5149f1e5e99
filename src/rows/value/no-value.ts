import { isBlank } from "./blank";

/** Marks by which coaches say that there is no value here; not zero, and nothing to report. */
const marks = new Set(
  "-|--|–|—|−|/|.|..|n/a|na|n.a.|#n/a|none|nil|dns|dnf|dnp|ill|sick|skip|skipped|stopped|missed|no height|no speed|k.a.|ka|krank|entfällt|ausgelassen|keine".split(
    "|",
  ),
);

/** True for a cell that is blank, an empty tick box, or a mark for no value. */
export function holdsNothing(cell: unknown): boolean {
  return isBlank(cell) || cell === false || (typeof cell === "string" && saysNoValue(cell));
}

/** True for "-", "DNS", "n/a" and their like. */
export function saysNoValue(text: string): boolean {
  return marks.has(text.trim().toLowerCase());
}
