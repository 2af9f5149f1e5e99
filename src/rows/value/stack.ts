import { accept, type Outcome, refuse } from "../../outcome";
import { foundText } from "./found-text";

const heaviestKg = 50;
const mostPlates = 40;
/** Letters of the longest stack anybody writes; what is longer would take the square of its length. */
const longest = 500;

/**
 * Plates under a landing, "5x15+5": five of 15 kg, one of 5 kg on top.
 *
 * @returns stamped masses in kg, bottom first. Refuses `stack-unreadable` (facts `found`),
 * `stack-count` when a count is too high to be one, as in "15x5" (facts `found`, `count`).
 */
export function readStack(cell: unknown): Outcome<readonly number[]> {
  const text =
    typeof cell === "number" ? String(cell) : typeof cell === "string" ? cell.trim() : "";
  const found = foundText(text);
  if (text.length > longest) return refuse("stack-unreadable", { found });
  const stackKg: number[] = [];
  for (const part of text.replace(/\s*kg\b/gi, "").split("+")) {
    const match = /^\s*(?:(\d{1,3})\s*[x×*]\s*)?(\d{1,2}(?:[.,]\d{1,2})?)\s*$/i.exec(part);
    if (match === null) return refuse("stack-unreadable", { found });
    const count = Number(match[1] ?? 1);
    const massKg = Number(match[2]!.replace(",", "."));
    if (!(massKg > 0) || massKg > heaviestKg || count < 1)
      return refuse("stack-unreadable", { found });
    // A stack of more than a dozen equal plates is rather a mass written before its count.
    if (count > 12 || stackKg.length + count > mostPlates)
      return refuse("stack-count", { found, count });
    for (let plate = 0; plate < count; plate++) stackKg.push(massKg);
  }
  return accept(stackKg);
}
