/**
 * Two spellings that differ only in case, accents' composition or spacing are the same name.
 * Anything further apart is a question for the coach, never a merge.
 */
export function nameKey(name: string): string {
  return name.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();
}
