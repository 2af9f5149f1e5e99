import type { RowIssue } from "./reading";
import type { TableName } from "./table-name";
import { cellAddress } from "./value/cell-address";
import { foundText } from "./value/found-text";

/** Turns a place in the cells being read into the place in the coach's own range; both from 0. */
export type Origin = (
  row: number,
  column: number,
) => { readonly row: number; readonly column: number };

/** Collects the issues of one reading, with the coach's own addresses. */
export class IssueLog {
  readonly issues: RowIssue[] = [];

  constructor(
    readonly table: TableName,
    readonly origin: Origin | null = null,
  ) {}

  /** The coach's own number of a row, from 1. */
  rowNumber(row: number): number {
    return (this.origin === null ? row : this.origin(row, 0).row) + 1;
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
    const at = this.origin === null ? { row, column } : this.origin(row, column);
    this.issues.push({
      table: this.table,
      code,
      row: at.row + 1,
      column: at.column + 1,
      cell: cellAddress(at.row + 1, Math.max(at.column, 0) + 1),
      found: foundText(cell),
      facts,
      dropsRow,
    });
  }
}
