import type { RowNote } from "./layout/row-note";
import type { TableName } from "./table-name";

/** A cell that could not be used, and what is known about it. Words live in `words/row-issues.ts`. */
export type RowIssue = {
  readonly table: TableName;
  /** Stable code, a key of the row-issue sentences. */
  readonly code: string;
  /** Row and column in the range, the first is 1; column 0 speaks of the whole row. */
  readonly row: number;
  readonly column: number;
  /** A1 address, counting the range as though its first cell were A1. */
  readonly cell: string;
  /** What the cell holds, as text, cut short when long. */
  readonly found: string;
  /** Facts the sentence needs: bounds, units, a proposed mend under `mend`. */
  readonly facts: Readonly<Record<string, string | number>>;
  /** True when the whole row is left out of the figures, false when only this cell is. */
  readonly dropsRow: boolean;
};

/**
 * What came of reading one table: every input row is in exactly one of the four counts. A row is
 * read when a record came of it, reported when an issue leaves all of it out, blank when it holds
 * nothing, and a heading when it holds titles, headings, units, section names or averages only.
 */
export type Reading<Row> = {
  readonly records: readonly Row[];
  readonly issues: readonly RowIssue[];
  readonly rowsRead: number;
  readonly rowsReported: number;
  readonly rowsBlank: number;
  readonly rowsHeading: number;
  /** Words found beside the figures that belong to an athlete and a day or week. */
  readonly notes?: readonly RowNote[];
};
