import { dressColours, highWords, lowWords } from "./dress";

/** Cells that take a look while a formula holds there, as seen from the first cell of the range. */
export type WordHighlight = {
  readonly range: string;
  readonly formula: string;
  readonly background?: string;
  readonly colour: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
};

const anyOf = (cell: string, words: readonly string[]) =>
  words.map((word) => `ISNUMBER(SEARCH("${word}",${cell}))`).join(",");

/**
 * Highlights of the status words in a range, orange and bold for a loss, blue for a rise, grey
 * italics for too few rows. Whole cells that hold one of the words: a heading or a reason that merely
 * mentions it stays bare.
 */
export function squadHighlights(range: string): WordHighlight[] {
  const cell = range.split(":")[0]!;
  // Words stand alone, or after a day and a colon ("23 Jun: below usual").
  const said = (words: readonly string[]) => `=AND(LEN(${cell})<32,OR(${anyOf(cell, words)}))`;
  const { low, high, unsure } = dressColours;
  return [
    { range, formula: said(lowWords), background: low.background, colour: low.ink, bold: true },
    { range, formula: said(highWords), background: high.background, colour: high.ink },
    {
      range,
      formula: `=ISNUMBER(SEARCH("too few rows",${cell}))`,
      colour: unsure.ink,
      italic: true,
    },
  ];
}

/** What is said once the words on the Squad tab are highlighted, or when there is no such tab. */
export const highlightSaid = {
  done: (tab: string) => `Words on the ${tab} tab are highlighted, and follow the rows.`,
  noTab: (tab: string) =>
    `There is no tab named ${tab}. Give that name to the tab with the squad’s formula, or add one with SQUAD_TABLE.`,
} as const;
