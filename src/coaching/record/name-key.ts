/**
 * Signs nobody sees: joiners, breaks without width, marks of direction, control signs. Signs that turn
 * letters round (U+202A–202E, U+2066–2069) are not among them: they change what is seen.
 */
const unseen =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
  /[\u0000-\u0008\u000E-\u001F\u007F\u00AD\u061C\u180E\u200B-\u200F\u2060-\u2064\uFEFF]|\u034F|[\uFE00-\uFE0F]/g;

/**
 * Two spellings that differ only in case, accents' composition, spacing or signs nobody sees are the
 * same name. Anything further apart is a question for the coach, never a merge. The coach's own text
 * is what is shown.
 */
export function nameKey(name: string): string {
  return name.normalize("NFC").replace(unseen, "").trim().replace(/\s+/g, " ").toLowerCase();
}
