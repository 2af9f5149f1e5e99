import type { Day } from "../coaching/calendar/day";
import type { Cells } from "./cells";
import type { RowIssue } from "./reading";
import type { TableName } from "./table-name";
import { isBlank } from "./value/blank";
import { cellAddress } from "./value/cell-address";
import { foundText } from "./value/found-text";

/** Turns a place in the cells being read into the place in the coach's own range; both from 0. */
export type Origin = (
  row: number,
  column: number,
) => { readonly row: number; readonly column: number };

type Somebody = { readonly athlete: string; readonly day: Day };

/** Collects the issues of one reading, with the coach's own addresses. */
export class IssueLog {
  readonly issues: RowIssue[] = [];
  /** Words in place of a figure that are no slip and are not lost, as the cells being read count them, from 0. */
  readonly kept: { readonly row: number; readonly column: number; readonly words: string }[] = [];
  /** Whose and of which day a row is of which no record came, by its place from 0 in the cells being read. */
  readonly ofNothing = new Map<number, Somebody>();
  /** Rows left out whole, from 0, as the cells being read count them. */
  readonly dropped = new Set<number>();

  constructor(
    readonly table: TableName,
    readonly origin: Origin | null = null,
    /** The coach's own cells, when those being read were unfolded from them. */
    readonly source: Cells | null = null,
  ) {}

  /** The coach's own number of a row, from 1. */
  rowNumber(row: number): number {
    return (this.origin === null ? row : this.origin(row, 0).row) + 1;
  }

  /** Words for the coach that are no issue; `row` and `column` count from 0 in the cells being read. */
  keep(row: number, column: number, words: string): void {
    this.kept.push({ row, column, words });
  }

  /** The words in some cells of a row in which nothing was done. */
  keepAll(row: number, of: Somebody, line: readonly unknown[], columns: readonly number[]): void {
    this.ofNothing.set(row, of);
    for (const column of columns)
      if (!isBlank(line[column])) this.keep(row, column, String(line[column]).trim());
  }

  /** `row` and `column` count from 0 in the cells being read; column −1 speaks of the whole row. */
  add(
    code: string,
    row: number,
    column: number,
    cell: unknown,
    facts: RowIssue["facts"] = {},
    dropsRow = false,
  ): void {
    if (dropsRow) this.dropped.add(row);
    const at = this.origin === null ? { row, column } : this.origin(row, column);
    this.issues.push({
      table: this.table,
      code,
      row: at.row + 1,
      column: at.column + 1,
      cell: cellAddress(at.row + 1, Math.max(at.column, 0) + 1),
      found: foundText(
        this.source === null || at.column < 0 ? cell : this.source[at.row]?.[at.column],
      ),
      facts,
      dropsRow,
    });
  }

  /** Reports a cell of the coach's own range, counted from 0. */
  addAtSource(
    code: string,
    row: number,
    column: number,
    facts: RowIssue["facts"] = {},
    dropsRow = false,
  ): void {
    this.issues.push({
      table: this.table,
      code,
      row: row + 1,
      column: column + 1,
      cell: cellAddress(row + 1, column + 1),
      found: foundText(this.source?.[row]?.[column]),
      facts,
      dropsRow,
    });
  }
}
