import { noSense } from "../layout/shorthand/scheme-order";
import { isShorthand, setCell } from "../layout/shorthand/set-cell";
import { editDistance } from "../name/edit-distance";
import type { TableName } from "../table-name";
import { weekdayOfWord } from "../value/day-text";
import { yesNo } from "../value/yes-no";
import { askedInWords } from "./asked-in-words";
import { headingLookup } from "./recognise-header";
import { bestFit, valueFit } from "./value-fit";

/** Headings of words for people, "coach comments". */
export const headsNotes =
  /(?:^| )(?:notes?|comments?|remarks?|notiz(?:en)?|(?:be|an)merkung(?:en)?|kommentare?)$/;

/** Over ticks: which rows of a plan were done. Over loads it says what was lifted. */
const saysDone =
  /^(?:(?:set )?(?:done|completed?|finished)|gemacht|erledigt|fait|hecho|fatto|gedaan)$/;

/** A column whose heading is not known. */
export type UnknownColumn = {
  readonly table: TableName;
  readonly words: string;
  readonly sample: readonly unknown[];
  /** Meanings that no column has yet. */
  readonly free: readonly string[];
  readonly hasDays: boolean;
};

type Settled = {
  /** Null where the column is left alone. */
  readonly field: string | null;
  readonly by: "near heading" | "values" | "heading";
  readonly sureness: number;
};

/** What a column without a known heading is where that needs no asking; null where it has to be asked. */
export function settledAlone(asked: UnknownColumn): Settled | null {
  const { table, words, sample, free, hasDays } = asked;
  const near = nearMeaning(asked);
  if (near !== null && valueFit(near, sample) >= 0.8)
    return { field: near, by: "near heading", sureness: 0.85 };
  if (table === "Sets" && saysDone.test(words) && sample.every((cell) => yesNo(cell) !== null))
    return { field: "done", by: "heading", sureness: 1 };
  if (words === "" && bestFit(free, sample)?.field === "day")
    return { field: "day", by: "values", sureness: 0.9 };
  if (table === "Sets" && free.includes("load") && inShorthand(free, sample))
    return { field: "scheme", by: "values", sureness: 0.9 };
  // Words for people, beside a table that keeps none or has its own, and weekdays beside dates: left where they stand.
  if (headsNotes.test(words) || (hasDays && sample.every(isWeekday)))
    return { field: null, by: "heading", sureness: 1 };
  return null;
}

/** The meaning that a heading comes near, by its letters or as a diary's question asks for it. */
export function nearMeaning({ table, words, sample, free }: UnknownColumn): string | null {
  const inWords = table === "Diary" ? askedInWords(words, sample) : null;
  return inWords !== null && free.includes(inWords) ? inWords : nearHeading(table, words, free);
}

/** "80x5x5 @ .62" says what it is whatever stands above it. */
const inShorthand = (free: readonly string[], sample: readonly unknown[]) =>
  free.includes("scheme") &&
  sample.filter((cell) => typeof cell === "string" && isShorthand(setCell(cell, noSense))).length >=
    0.8 * sample.length;

const isWeekday = (cell: unknown) =>
  typeof cell === "string" && weekdayOfWord(cell.trim()) !== null;

/** A meaning one of whose headings is a slip of the finger away ("Exercize", "Atlete"); "Set 1" is none. */
function nearHeading(table: TableName, words: string, free: readonly string[]): string | null {
  if (words.length < 4 || /\d/.test(words)) return null;
  const found = new Set<string>();
  for (const [known, field] of headingLookup(table)) {
    if (!free.includes(field) || known.length < 4 || Math.abs(known.length - words.length) > 2)
      continue;
    const allowed = Math.min(known.length, words.length) >= 8 ? 2 : 1;
    if (editDistance(known, words) <= allowed) found.add(field);
  }
  return found.size === 1 ? [...found][0]! : null;
}
