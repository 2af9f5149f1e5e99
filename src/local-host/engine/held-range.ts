import type { Rectangle } from "../a1";

export type Line = readonly unknown[];

/**
 * A range's values, and the rows of them that functions are handed. What a function did to its rows
 * is undone before the next call sees them: looking them through costs a tenth of copying them, and
 * leaves nothing to collect.
 */
export class HeldRange {
  private values: Line[] | null = null;
  /** Dates can be moved in place: their times, in the order of the cells. */
  private times: readonly number[] = [];
  private given: unknown[][] = [];
  /** The same rows, in the list that calls are handed. */
  private lent: unknown[][] = [];
  private readonly toRead = new Set<number>();

  constructor(
    readonly tabId: string,
    private readonly at: Rectangle,
  ) {}

  /** These rows of the tab changed. */
  stale(rows: readonly number[]): void {
    const { startRow, endRow } = this.at;
    for (const row of rows) if (row >= startRow && row <= endRow) this.toRead.add(row);
  }

  rows(read: (row: number) => Line): unknown[][] {
    const { startRow, endRow } = this.at;
    if (this.values === null) {
      this.values = Array.from({ length: endRow - startRow + 1 }, (_, i) => read(startRow + i));
      this.given = this.values.map((row) => row.slice());
    } else {
      mend(this.values, this.times, this.given, this.lent);
      if (this.toRead.size === 0) return this.lent;
      for (const row of this.toRead) {
        this.values[row - startRow] = read(row);
        this.given[row - startRow] = this.values[row - startRow]!.slice();
      }
    }
    this.toRead.clear();
    this.times = timesOf(this.values);
    this.lent = this.given.slice();
    return this.lent;
  }
}

function timesOf(values: readonly Line[]): readonly number[] {
  const times: number[] = [];
  for (const row of values) {
    for (const cell of row) if (isDateCell(cell)) times.push(cell.getTime());
  }
  return times;
}

/** A range's cells are text, numbers and booleans but for their dates. */
function isDateCell(cell: unknown): cell is Date {
  return typeof cell === "object" && cell !== null;
}

function mend(
  values: readonly Line[],
  times: readonly number[],
  given: readonly unknown[][],
  lent: unknown[][],
): void {
  lent.length = values.length;
  let date = 0;
  for (let row = 0; row < values.length; row++) {
    const own = values[row]!;
    const line = given[row]!;
    lent[row] = line;
    if (line.length !== own.length) line.length = own.length;
    for (let column = 0; column < own.length; column++) {
      const cell = own[column];
      if (line[column] !== cell) line[column] = cell;
      if (!isDateCell(cell)) continue;
      const time = times[date++]!;
      if (cell.getTime() !== time) cell.setTime(time);
    }
  }
}
