/**
 * Signs nobody sees: control signs that are no spaces, joiners, breaks without width, marks of
 * direction. Signs that turn letters round (U+202A–202E, U+2066–2069) are not among them: they change
 * what is seen.
 */
const unseen =
  /(?!\s)\p{Cc}|[\u00AD\u061C\u180E\u200B-\u200F\u2060-\u2064\uFEFF]|\u034F|[\uFE00-\uFE0F]/gu;

/** A text without the signs nobody sees. */
export function withoutUnseenSigns(text: string): string {
  return text.replace(unseen, "");
}
