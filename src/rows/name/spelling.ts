import { plainWords } from "../header/header-words";

/** A word of a name, with the letters it is made of. */
export type NameWord = { readonly text: string; readonly letters: number };

/** A name made ready to be compared with many others. */
export type Spelling = {
  readonly words: readonly NameWord[];
  /** The same words, the longest first. */
  readonly longestFirst: readonly NameWord[];
  /** All words in one, as written and in the alphabet's order. */
  readonly whole: NameWord;
  readonly ordered: string;
};

/** A name's words without accents, capitals, stops and what stands in brackets. */
export function spellingOf(name: string): Spelling {
  const texts = plainWords(name)
    .replace(/\([^)]*\)/g, " ")
    .split(/[\s.,;/_-]/)
    .filter((word) => word !== "");
  const words = texts.map(nameWord);
  return {
    words,
    longestFirst: [...words].sort((x, y) => y.text.length - x.text.length),
    whole: nameWord(texts.join(" ")),
    ordered: [...texts].sort().join(" "),
  };
}

function nameWord(text: string): NameWord {
  let letters = 0;
  for (let at = 0; at < text.length; at++) letters |= 1 << (text.charCodeAt(at) & 31);
  return { text, letters };
}

/**
 * Whether more letters stand in only one of two words than so many changes can account for: a letter
 * put in or left out is one, a changed one two, swapped ones none. Letters that share a place among 32
 * count as one letter, which only lets a pair through that is then measured.
 */
export function lettersDiffer(a: NameWord, b: NameWord, changes: number): boolean {
  let left = 2 * changes;
  for (let only = a.letters ^ b.letters; only !== 0; only &= only - 1) if (--left < 0) return true;
  return false;
}
