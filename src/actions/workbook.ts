import type { Cells } from "../rows/cells";
import type { DecimalMark } from "../rows/value/decimal-mark";
import type { WordHighlight } from "../words/squad-highlights";

/** A tab of the coach's workbook. The id stays when the tab is renamed or moved. */
export type Tab = { readonly id: number; readonly name: string };

/** What is written into a cell: text stays text whatever it begins with; formulas and days are named. */
export type Written =
  | string
  | number
  | boolean
  | { readonly formula: string }
  /** "2026-06-30" */
  | { readonly day: string };

/** Cells to write in one go; rows and columns count from 1. */
export type Block = {
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly Written[])[];
};

/** Cells that take a look while a formula holds there. */
export type Highlight = WordHighlight;

/** The little of a spreadsheet our actions need; each host implements it. */
export type Workbook = {
  readonly tabs: () => readonly Tab[];
  /** Values of a tab from A1 to its last filled cell; one read. */
  readonly values: (tabId: number) => Cells;
  /** Formulas of a tab over the same cells as its values; "" where there is none. */
  readonly formulas: (tabId: number) => readonly (readonly string[])[];
  /** Writes text, numbers, days and formulas in one batch; makes room when the tab is too small. */
  readonly write: (tabId: number, block: Block) => void;
  /** The decimal mark of the spreadsheet's own language. */
  readonly decimalMark: () => DecimalMark;
  /** Adds a tab at the end. Throws when the name is taken. */
  readonly addTab: (name: string) => Tab;
  /**
   * Makes the headings bold and stay in view, wraps text from there on, sets widths in pixels. From a
   * column other than the first only those columns are dressed and nothing is frozen.
   */
  readonly dress: (
    tabId: number,
    headingRow: number,
    widths: readonly number[],
    fromColumn?: number,
  ) => void;
  /** Keeps the first columns in view, beside whatever is scrolled to. */
  readonly keepInView: (tabId: number, columns: number) => void;
  /** Whether no cell of a column has a ground of its own, from a row down to the last filled one. */
  readonly isPlain: (tabId: number, column: number, fromRow: number) => boolean;
  /** Gives a column a fixed ground from a row down to the tab's end. */
  readonly paint: (tabId: number, column: number, fromRow: number, colour: string) => void;
  /** Shows a tab and selects cells of it, "C33". */
  readonly select: (tabId: number, range: string) => void;
  /** The tab's highlights that came from here, by their formulas; others are the coach's. */
  readonly highlights: (tabId: number) => readonly string[];
  /** Adds highlights after the coach's own rules, replacing earlier ones with the same formula. */
  readonly highlight: (tabId: number, highlights: readonly Highlight[]) => void;
  /** A drop-down for a range; other values are still allowed, with a mark. */
  readonly offer: (tabId: number, range: string, values: readonly string[]) => void;
  /** How numbers and days are shown in a range, as a number format: "yyyy-mm-dd". */
  readonly format: (tabId: number, range: string, pattern: string) => void;
  /** Puts what a range holds to the left, under its heading, as words stand. */
  readonly alignLeft: (tabId: number, range: string) => void;
  /** Warns before a range is edited; everybody still may. Once for each range and reason. */
  readonly warn: (tabId: number, range: string, reason: string) => void;
  /** Tags a column; the tag goes wherever the column is moved to, and goes with it when it is taken out. */
  readonly tagColumn: (tabId: number, column: number, tag: string) => void;
  /** Where a tab's tagged columns stand now, from 1, by tag; one read. */
  readonly taggedColumns: (tabId: number) => ReadonlyMap<string, number>;
  readonly untagColumn: (tabId: number, tag: string) => void;
  /** What was remembered with the workbook under a key; null when nothing was. */
  readonly recall: (key: string) => string | null;
  /** All that was remembered, by key; one read. */
  readonly recallAll: () => Readonly<Record<string, string>>;
  /** Remembers texts by key; one write. */
  readonly remember: (texts: Readonly<Record<string, string>>) => void;
  /** Forgets what stands under these keys; one write. */
  readonly forget: (keys: readonly string[]) => void;
  /** Runs the work while no other coach's action can write; everything is written when it returns. */
  readonly alone: <Answer>(work: () => Answer) => Answer;
};
