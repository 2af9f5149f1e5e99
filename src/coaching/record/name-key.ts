import { withoutUnseenSigns } from "./unseen-signs";

/** Letters and signs of ASCII with single spaces between: nothing in it is unseen, composed or doubled. */
const isPlain = /^[!-~]+(?: [!-~]+)*$/;

/**
 * Two spellings that differ only in case, accents' composition, spacing or signs nobody sees are the
 * same name. Anything further apart is a question for the coach, never a merge. The coach's own text
 * is what is shown.
 */
export function nameKey(name: string): string {
  // Nearly all names are, and names are asked for by the million.
  if (isPlain.test(name)) return name.toLowerCase();
  return withoutUnseenSigns(name.normalize("NFC")).trim().replace(/\s+/g, " ").toLowerCase();
}
