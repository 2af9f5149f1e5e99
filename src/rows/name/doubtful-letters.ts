/**
 * Whether a name may look like another without being it: signs that turn letters round, or letters of
 * two alphabets in one word (Unicode Technical Standard 39, "Unicode security mechanisms", 5.1, calls
 * such text mixed-script).
 */
export function hasDoubtfulLetters(name: string): boolean {
  if (/[\u202A-\u202E\u2066-\u2069]/.test(name)) return true;
  return name
    .split(/\s/)
    .some(
      (word) =>
        /\p{Script=Latin}/u.test(word) && /[\p{Script=Cyrillic}\p{Script=Greek}]/u.test(word),
    );
}
