import type { Day } from "../coaching/calendar/day";
import type { Cells } from "./cells";
import type { RowIssue } from "./reading";
import type { TableName } from "./table-name";
import { cellAddress } from "./value/cell-address";
import { foundText } from "./value/found-text";

/** Turns a place in the cells being read into the place in the coach's own range; both from 0. */
export type Origin = (
  row: number,
  column: number,
) => { readonly row: number; readonly column: number };

export type Somebody = { readonly athlete: string; readonly day?: Day };

/** Collects the issues of one reading, with the coach's own addresses. */
export class IssueLog {
  readonly issues: RowIssue[] = [];
  /** Words in place of a figure that are no slip and are not lost, as the cells being read count them, from 0. */
  readonly kept: {
    readonly row: number;
    readonly column: number;
    readonly words: string;
    readonly of?: Somebody | undefined;
  }[] = [];
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

  /**
   * Words for the coach that are no issue; `row` and `column` count from 0 in the cells being read. `of`
   * says whose they are where no record comes of their row.
   */
  keep(row: number, column: number, words: string, of?: Somebody): void {
    this.kept.push({ row, column, words, of });
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
    const isOwn = this.source !== null && at.column >= 0;
    const found = isOwn ? this.source[at.row]?.[at.column] : cell;
    this.tell(code, at.row, at.column, found, facts, dropsRow);
  }

  /** Reports a cell of the coach's own range, counted from 0. */
  addAtSource(
    code: string,
    row: number,
    column: number,
    facts: RowIssue["facts"] = {},
    dropsRow = false,
  ): void {
    this.tell(code, row, column, this.source?.[row]?.[column], facts, dropsRow);
  }

  /** Takes back what was told after the first so many issues, and gives it. */
  takeBack(mark: number): readonly RowIssue[] {
    return this.issues.splice(mark);
  }

  private tell(
    code: string,
    row: number,
    column: number,
    found: unknown,
    facts: RowIssue["facts"],
    dropsRow: boolean,
  ): void {
    this.issues.push({
      table: this.table,
      code,
      row: row + 1,
      column: column + 1,
      cell: cellAddress(row + 1, Math.max(column, 0) + 1),
      found: foundText(found),
      facts,
      dropsRow,
    });
  }
}
