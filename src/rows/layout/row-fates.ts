import type { Cells } from "../cells";
import type { Reading } from "../reading";
import { isBlankLine } from "../table/read-lines";

/** What became of a row of the coach's range. */
export type RowFate = "heading" | "data" | "reported";

/** Says of every row (from 0) of the coach's range what became of it. */
export class RowFates {
  private readonly fates = new Map<number, RowFate>();

  /** A row once found to hold data stays so. */
  mark(row: number, fate: RowFate): void {
    if (this.fates.get(row) !== "data") this.fates.set(row, fate);
  }

  isHeading(row: number): boolean {
    return this.fates.get(row) === "heading";
  }

  /**
   * @param kept rows of which something was read
   * @param dropped rows of which something was left out
   */
  count(
    source: Cells,
    kept: ReadonlySet<number>,
    dropped: ReadonlySet<number>,
  ): Pick<Reading<never>, "rowsRead" | "rowsReported" | "rowsBlank" | "rowsHeading"> {
    const counts = { rowsRead: 0, rowsReported: 0, rowsBlank: 0, rowsHeading: 0 };
    for (let row = 0; row < source.length; row++) {
      const fate = this.fates.get(row);
      if (isBlankLine(source[row]!)) counts.rowsBlank++;
      else if (fate === "heading") counts.rowsHeading++;
      else if (fate === "reported" || (dropped.has(row) && !kept.has(row))) counts.rowsReported++;
      else counts.rowsRead++;
    }
    return counts;
  }
}
