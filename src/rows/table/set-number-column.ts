import type { SetKind } from "../../coaching/record/lifting-set";
import { numberColumn } from "../column/number-column";
import type { Column } from "../header/column";
import { plainWords } from "../header/header-words";
import { sampleColumn } from "../header/value-fit";
import type { TableView } from "../table-view";
import { isDitto } from "../value/ditto";
import { saysNoValue } from "../value/no-value";
import { setKinds } from "./set-kinds";
import { setBounds } from "./set-numbers";

/** A set's number, or the kind when the cell says "wu" or "marker" in its place. */
export type SetNumber = { readonly set: number | null; readonly kind: SetKind | null };

const blank: SetNumber = { set: null, kind: null };

/** Reader of the set column: "2", "2nd", "S2", "set 2", "2/3", "wu", "marker". Reports `word-unknown`, with its row. */
export function setNumberColumn(
  view: TableView,
  column: Column | undefined,
): (line: readonly unknown[], row: number) => SetNumber {
  if (column === undefined) return () => blank;
  const { index } = column;
  const number = numberColumn(view, column, setBounds.set);
  let warmUps: boolean | null = null;
  return (line, row) => {
    const cell = line[index];
    const words = plainWords(cell);
    const numbered =
      /^(?:set|satz|s|w|ws|work|#)?\s*(\d{1,2})\s*(?:[.)]|st|nd|rd|th|\/\s*\d{1,2}|(?:of|von)\s*\d{1,2})?$/.exec(
        words,
      );
    if (/^w\s*\d/.test(words)) {
      warmUps ??= countsPlainly(view, index);
      if (warmUps) return { set: null, kind: "warm-up" };
    }
    if (numbered !== null && typeof cell === "string")
      return { set: Number(numbered[1]), kind: null };
    const kind = setKinds.get(words.replace(/\s*\d+$/, ""));
    if (kind !== undefined) return { set: null, kind };
    // A word that nobody knows may say that it was a warm-up, which never counts as work.
    if (isWord(words) && !saysNoValue(words) && !isDitto(cell)) {
      const facts = { known: "1, 2, 3, warm-up, marker", heading: column.heading };
      view.log.add("word-unknown", row, index, cell, facts, true);
      return blank;
    }
    return { set: number(line, row), kind: null };
  };
}

const isWord = (words: string) => /^[^\d?~]*\p{L}[^\d?~]*$/u.test(words);

/** Beside sets numbered 1, 2, 3 "w1" is no work set, as which it would be numbered twice. */
function countsPlainly({ cells, first, end }: TableView, index: number): boolean {
  return sampleColumn(cells, first, end, index).some((cell) => /^\s*\d+\s*$/.test(String(cell)));
}
