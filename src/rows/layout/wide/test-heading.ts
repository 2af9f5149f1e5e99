import { plainWords } from "../../header/header-words";
import { namesJump } from "../lift-in-words";
import type { JumpPart } from "./jump-title";

/** "Hops", "Jumps", "No. of hops": how many were done, and no test; a unit beside them makes it one. */
const counted =
  /^(?:(?:no|number|count|total)\.? (?:of )?)?(?:hops|jumps|sprunge|pogos)(?: (?:done|count|total))?$/;

/** True for a heading of a jump test or of its times. */
export function isJumpColumn(heading: string): boolean {
  if (counted.test(plainWords(heading))) return false;
  // "CMJ1" is CMJ, the first.
  return (
    namesJump(heading.replace(/(\p{L})(?=\d\b)/gu, "$1 ")) ||
    /\b(contact|flight|kontakt|flugzeit|temps de vol)\b/.test(plainWords(heading))
  );
}

/** The figure a test column holds; null where the cell itself says: a height or a stack. */
export function partOf(heading: string): JumpPart | null {
  const words = plainWords(heading);
  if (/\b(contact|kontakt|kontaktzeit|g?ct)\b/.test(words)) return "contact";
  if (/\b(flight|flugzeit|temps de vol)\b|\bft [([]?m?s\b/.test(words)) return "flight";
  if (/\b(stack|stapel)\b/.test(words)) return "stack";
  return null;
}

/** The test's name: the heading without unit and figure. */
export function testName(heading: string): string {
  const name = heading
    // "FT (ms)" is a flight time, "(ft)" is feet.
    .replace(/\bft(?=[\s([]+m?s\b)|[([][^)\]]*[)\]]/gi, " ")
    .replace(
      /\b(ground contact|(?:temps de )?contact|g?ct|flight|temps de vol|stack|stapel|kontaktzeit|flugzeit|height|ht)\b(\s+time)?/gi,
      "",
    )
    .replace(/\b(ms|s|cm|mm|m|in)\s*$/i, "")
    .replace(/[\s,:–-]+$/, "")
    .replace(/\s+/g, " ")
    .trim();
  return name === "" ? "drop jump" : name;
}

/** A test's name without the number of its try: "CMJ 2", "CMJ try 2", "CMJ #2". */
const numberedTry =
  /^(.*?[^\s\d#.-])[\s.-]*(?:(?:try|attempt|trial|rep|versuch|nr|no)\.?\s*)?#?\s*([1-9])$/i;

/** Which try of which test each name stands for; tries count from 0. */
export type Try = { readonly test: string; readonly attempt: number };

/**
 * Columns numbered from 1 on are tries of one test ("CMJ 1", "CMJ 2", "CMJ 3"); any other number is part
 * of the name, as in "Drop jump 30".
 */
export function triesOf(names: readonly string[]): ReadonlyMap<string, Try> {
  const tries = new Map<string, Map<number, Try & { readonly name: string }>>();
  for (const name of names) {
    const numbered = numberedTry.exec(name);
    if (numbered === null) continue;
    const [test, number] = [numbered[1]!, Number(numbered[2])];
    const key = plainWords(test);
    const byNumber = tries.get(key) ?? new Map<number, Try & { readonly name: string }>();
    tries.set(key, byNumber.set(number, { name, test, attempt: number - 1 }));
  }
  const found = new Map<string, Try>();
  for (const byNumber of tries.values()) {
    const first = byNumber.get(1);
    if (first !== undefined && byNumber.size > 1 && byNumber.has(byNumber.size))
      for (const { name, attempt } of byNumber.values())
        found.set(name, { test: first.test, attempt });
  }
  return found;
}
