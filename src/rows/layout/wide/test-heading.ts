import { plainWords } from "../../header/header-words";
import { namesJump } from "../lift-in-words";
import type { JumpPart } from "./jump-title";

/** True for a heading of a jump test or of its times. */
export function isJumpColumn(heading: string): boolean {
  return namesJump(heading) || /\b(contact|flight|kontakt|flugzeit)\b/.test(plainWords(heading));
}

/** The figure a test column holds; null where the cell itself says: a height or a stack. */
export function partOf(heading: string): JumpPart | null {
  const words = plainWords(heading);
  if (/\b(contact|kontakt|kontaktzeit)\b/.test(words)) return "contact";
  if (/\b(flight|flugzeit)\b/.test(words)) return "flight";
  if (/\b(stack|stapel)\b/.test(words)) return "stack";
  return null;
}

/** The test's name: the heading without unit and figure. */
export function testName(heading: string): string {
  const name = heading
    .replace(/[([][^)\]]*[)\]]/g, " ")
    .replace(
      /\b(ground contact|contact|flight|stack|stapel|kontaktzeit|flugzeit|height|ht)\b(\s+time)?/gi,
      "",
    )
    .replace(/\b(ms|s|cm|mm|m|in)\s*$/i, "")
    .replace(/[\s,:–-]+$/, "")
    .replace(/\s+/g, " ")
    .trim();
  return name === "" ? "drop jump" : name;
}
