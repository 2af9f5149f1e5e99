import type { NumberStyle } from "../../words/printed-numbers";
import type { ReadWithout } from "../messages";

export type RowProblem = {
  readonly tab: string;
  readonly tabId: number;
  readonly cell: string;
  readonly found: string;
  readonly why: string;
  readonly toDo: string;
  /** Code of the kind; its words are in `words/row-kinds.ts`. */
  readonly kind: string;
  /** Proposed value, only ever written on a click. */
  readonly mend: string | null;
  /** Under which it is remembered that the set is right as it stands; null where that is no answer. */
  readonly right: string | null;
};

/** A name that the Athletes table does not have, at the first cell that carries it. */
export type NameQuestion = {
  readonly name: string;
  readonly tab: string;
  readonly tabId: number;
  readonly cell: string;
  readonly rows: number;
  /** Athletes it may be, likeliest first; none once each was said to be somebody else. */
  readonly near: readonly string[];
  readonly toDo: string;
};

export type RowCheckView = ReadWithout & {
  /** Decimal mark in which what is proposed is shown. */
  readonly mark: NumberStyle["mark"];
  readonly summary: string;
  /** No table with a row was found: the tabs are looked at before any cell is. */
  readonly noRows: boolean;
  readonly problems: readonly RowProblem[];
  readonly names: readonly NameQuestion[];
  /** Whose a name can be said to be, or nobody's; none without an Athletes table, where everybody with rows is in the squad. */
  readonly athletes: readonly string[];
  /** Tabs that no table was found in, and of which nothing was said. */
  readonly leftAlone: readonly string[];
  /** The questions that wait under Set up, in words; "" for none. */
  readonly waiting: string;
};
