import { type Unit, unitOf } from "../value/units";

/** A heading taken apart: its words in plain lower case, and the unit it names. */
export type HeaderWords = { readonly words: string; readonly unit: Unit | null };

/**
 * Words and unit of a heading: "Load (lb)", "Bar speed m/s", "Ht, cm", "Größe [cm]".
 * Accents are dropped, "ß" becomes "ss", stars and punctuation go.
 */
export function headerWords(cell: unknown): HeaderWords {
  if (typeof cell !== "string" || cell.length > longestHeading) return noWords;
  const before = remembered.get(cell);
  if (before !== undefined) return before;
  const taken = takeApart(cell);
  if (remembered.size >= mostRemembered) remembered.clear();
  remembered.set(cell, taken);
  return taken;
}

/** A sentence of more letters is no heading. */
export const longestHeading = 80;
const noWords: HeaderWords = { words: "", unit: null };
// Every row near the top is tried as a header, often twice; the same headings come again and again.
const remembered = new Map<string, HeaderWords>();
const mostRemembered = 4096;

function takeApart(cell: string): HeaderWords {
  let text = plainWords(cell);
  let unit: Unit | null = null;
  text = text.replace(/[([{]([^)\]}]*)[)\]}]/g, (_, inside: string) => {
    const named = unitOf(inside);
    if (named === null) return ` ${inside} `;
    unit = named;
    return " ";
  });
  const tokens = text
    .replace(/[?:;,!★*°|"]/g, " ")
    .replace(/[._]/g, " ")
    .replace(/\s[-–—/]\s/g, " ")
    .trim()
    .split(/\s+/);
  const last = tokens[tokens.length - 1]!;
  // "kg:" is its unit as "kg" is, and the words stay.
  unit ??= unitOf(text) ?? unitOf(tokens.join(" "));
  if (unit === null && last !== "in" && unitOf(last) !== null) {
    unit = unitOf(last);
    tokens.pop();
    if (tokens[tokens.length - 1] === "in" && tokens.length > 1) tokens.pop();
  }
  return {
    words: tokens
      .join(" ")
      .replace(/[()[\]{}]/g, "")
      .trim(),
    unit,
  };
}

/** Lower case without accents; "ß" is "ss", "Ø" and "avg" stay words. */
export function plainWords(cell: unknown): string {
  if (typeof cell !== "string") return typeof cell === "number" ? String(cell) : "";
  return cell
    .replace(/ß/g, "ss")
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
}
