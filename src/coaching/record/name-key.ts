import { withoutUnseenSigns } from "./unseen-signs";

/**
 * Two spellings that differ only in case, accents' composition, spacing or signs nobody sees are the
 * same name. Anything further apart is a question for the coach, never a merge. The coach's own text
 * is what is shown.
 */
export function nameKey(name: string): string {
  return withoutUnseenSigns(name.normalize("NFC")).trim().replace(/\s+/g, " ").toLowerCase();
}
