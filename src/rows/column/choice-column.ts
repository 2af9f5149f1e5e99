import type { Column } from "../header/column";
import { plainWords } from "../header/header-words";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { foundText } from "../value/found-text";
import { yesNo } from "../value/yes-no";
import { cellAbove } from "./above";
import { saysNoFigure } from "./no-figure";

/** Words for each choice, in plain lower case. */
export type Choices<T> = ReadonlyMap<string, T>;

/** One map from words to choices: `{ out: "out|ill" }`. */
export function choices<T extends string>(words: Readonly<Record<T, string>>): Choices<T> {
  return new Map(
    (Object.entries(words) as [T, string][]).flatMap(([choice, said]) =>
      said.split("|").map((word) => [plainWords(word), choice] as const),
    ),
  );
}

/**
 * Reader of a column with a few possible words; null where blank. Reports `word-unknown`, and
 * `needed-blank` when the word is needed. `without` says whether a row without a known word is left
 * out: never, when the word is there but unknown, or also when it is blank. `ofMore` is asked about
 * words that are not known as they stand.
 */
export function choiceColumn<T>(
  view: TableView,
  column: Column | undefined,
  known: Choices<T>,
  without: "read on" | "drop if unknown" | "needed" = "read on",
  ofMore: (words: string) => T | null = () => null,
): CellReader<T | null> {
  if (column === undefined) return () => null;
  const { index, heading } = column;
  const needed = without === "needed";
  const above = cellAbove(view, index);
  const seen = new Map<unknown, T | null>();
  const read = (cell: unknown, row: number): T | null => {
    const before = seen.get(cell);
    if (before !== undefined) return before;
    if (isDitto(cell)) return read(above(row), row);
    const words = plainWords(foundText(cell));
    const none = !known.has(words) && saysNoFigure(view, row, index, words);
    if (isBlank(cell) || cell === false || none) {
      if (needed) view.log.add("needed-blank", row, index, cell, { heading }, true);
      return null;
    }
    const choice =
      known.get(words) ??
      known.get(words.replace(/\s*(set|satz)?\s*\d*\s*[.:!]?$/, "")) ??
      ofMore(words);
    if (choice !== null) seen.set(cell, choice);
    else
      view.log.add(
        "word-unknown",
        row,
        index,
        cell,
        { known: [...new Set(known.values())].join(", "), heading },
        without !== "read on",
      );
    return choice;
  };
  return (line, row) => read(line[index], row);
}

/** Reader of a yes/no column; null where blank; reports `not-yes-or-no`. */
export function yesNoColumn(
  view: TableView,
  column: Column | undefined,
): CellReader<boolean | null> {
  if (column === undefined) return () => null;
  const { index, heading } = column;
  const above = cellAbove(view, index);
  const read = (cell: unknown, row: number): boolean | null => {
    if (isBlank(cell)) return null;
    const said = yesNo(cell);
    if (said !== null) return said;
    if (isDitto(cell)) return read(above(row), row);
    if (typeof cell !== "string" || !saysNoFigure(view, row, index, cell))
      view.log.add("not-yes-or-no", row, index, cell, { heading });
    return null;
  };
  return (line, row) => read(line[index], row);
}
