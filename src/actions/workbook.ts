import type { Cells } from "../rows/cells";

/** A tab of the coach's workbook. The id stays when the tab is renamed or moved. */
export type Tab = { readonly id: number; readonly name: string };

/** Cells to write in one go; rows and columns count from 1. */
export type Block = {
  readonly row: number;
  readonly column: number;
  /** Text is written as text, whatever it begins with; formulas stand in `formulas`. */
  readonly values: readonly (readonly (string | number | boolean)[])[];
};

/** Cells that take a look while a formula holds there, as seen from the first cell of the range. */
export type Highlight = {
  readonly range: string;
  readonly formula: string;
  readonly background?: string;
  readonly colour: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
};

/** The little of a spreadsheet our actions need; each host implements it. */
export type Workbook = {
  readonly tabs: () => readonly Tab[];
  /** Values of a tab from A1 to its last filled cell; one read. */
  readonly values: (tabId: number) => Cells;
  /** Writes text, numbers and formulas in one batch; text that looks like a formula stays text. */
  readonly write: (tabId: number, block: Block) => void;
  /** Writes formulas, "=…", in one batch; "" leaves a cell empty. */
  readonly writeFormulas: (
    tabId: number,
    row: number,
    column: number,
    formulas: readonly (readonly string[])[],
  ) => void;
  /** Adds a tab at the end. Throws when the name is taken. */
  readonly addTab: (name: string) => Tab;
  /** Makes the first rows stay in view and bold, and sets column widths in pixels. */
  readonly dress: (tabId: number, headingRow: number, widths: readonly number[]) => void;
  /** Shows a tab and selects cells of it, "C33". */
  readonly select: (tabId: number, range: string) => void;
  /** The tab's highlights that came from here, by their formulas; others are the coach's. */
  readonly highlights: (tabId: number) => readonly string[];
  /** Adds highlights after the coach's own rules, replacing earlier ones with the same formula. */
  readonly highlight: (tabId: number, highlights: readonly Highlight[]) => void;
  /** A drop-down for a range; other values are still allowed, with a mark. */
  readonly offer: (tabId: number, range: string, values: readonly string[]) => void;
  /** What was remembered with the workbook under a key; null when nothing was. */
  readonly recall: (key: string) => string | null;
  readonly remember: (key: string, value: string) => void;
  readonly forget: (key: string) => void;
  /** Runs the work while no other coach's action can write; everything is written when it returns. */
  readonly alone: <Answer>(work: () => Answer) => Answer;
};
