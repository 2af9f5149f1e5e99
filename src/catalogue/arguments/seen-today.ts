import { saysUnwell } from "../../coaching/diary/says-unwell";
import type { ByEye, SeenToday } from "../../coaching/next-week/on-the-day/day-decision";
import { saysLighter } from "../../coaching/next-week/slow-day/says-lighter";
import { foundText } from "../../rows/value/found-text";
import { notASpeedWords } from "../../words/day-load";
import { isBlank } from "./elementwise";
import { speedsFromCells } from "./speed-cells";

const words: ReadonlyMap<string, ByEye> = new Map([
  ["fast", "fast"],
  ["usual", "usual"],
  ["as usual", "usual"],
  ["normal", "usual"],
  ["ok", "usual"],
  ["good", "usual"],
  ["fine", "usual"],
  ["slow", "slow"],
  ["heavy", "slow"],
  ["ill", "ill"],
  ["sick", "ill"],
]);

/** A sign or a zero between speeds: the tool dropped that repetition. */
const dropped = /(?<!\S)(?:[-–—?x]|0(?:[.,]0+)?)(?!\S)/gi;

/**
 * What a coach typed beside a marker: "0.86", ".86 .85 .86", two sets as "0.71 0.70 then 0.74 0.75"
 * (or on two lines), or a word by eye; words of pain or illness outweigh any speed. Something else comes back as the sentence to show in its cell,
 * for a phone hides an error's text behind a tap.
 */
export function seenToday(cell: unknown): SeenToday | { readonly kind: "unread"; say: string } {
  if (isBlank(cell)) return { kind: "nothing" };
  const found = foundText(cell).trim();
  const byEye = words.get(found.toLowerCase().replace(/\s+/g, " "));
  if (byEye) return { kind: "by eye", word: byEye };
  if (saysUnwell(found, "diary")) return { kind: "by eye", word: "ill" };
  if (!/\d/.test(found) && saysLighter(found)) return { kind: "by eye", word: "slow" };
  const pieces = typeof cell === "string" ? cell.split(/\n|\bthen\b/i) : [cell];
  const sets: (readonly number[])[] = [];
  for (const piece of pieces) {
    if (isBlank(piece)) continue;
    const read = speedsFromCells([
      typeof piece === "string" ? piece.replace(dropped, " ").trim() || piece : piece,
    ]);
    const wrong = !read.ok || read.value.some((speed) => speed <= 0);
    if (wrong) return { kind: "unread", say: notASpeedWords(found, perhaps(found)) };
    sets.push(read.value);
  }
  return sets.length === 0 ? { kind: "nothing" } : { kind: "speeds", sets };
}

/** "86" was most likely 0.86. */
function perhaps(found: string): number | null {
  return /^\d{2,3}$/.test(found) ? Number(found) / 10 ** found.length : null;
}
