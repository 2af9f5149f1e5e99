import type { Rectangle } from "../a1";
import { HeldRange, type Line } from "./held-range";
import type { TabChange } from "./tab-change";

/**
 * Values of the ranges that formulas name. A range is read once a calculation, however many formulas
 * name it. Those of a tab without formulas outlast the calculation, and only rows that changed are
 * read again; anything not understood drops them.
 */
export class RangeCache {
  private readonly ranges = new Map<string, HeldRange>();
  private readonly inThisCall = new Set<string>();

  /** @param plain ids of the tabs without any formula */
  constructor(private readonly plain: Set<string>) {}

  /** Whether no cell of a tab is or can be filled by a formula. */
  isPlain(tabId: string): boolean {
    return this.plain.has(tabId);
  }
  change({ tabId, rows }: TabChange): void {
    if (rows === "unknown") {
      if (tabId === null) this.plain.clear();
      else this.plain.delete(tabId);
    }
    for (const [key, range] of this.ranges) {
      if (tabId !== null && range.tabId !== tabId) continue;
      if (typeof rows === "string") this.ranges.delete(key);
      else range.stale(rows);
    }
  }
  startCalculation(): void {
    for (const [key, { tabId }] of this.ranges) if (!this.plain.has(tabId)) this.ranges.delete(key);
  }
  /** A call's arguments are about to be asked for. */
  startCall(): void {
    this.inThisCall.clear();
  }
  /**
   * Rows of a range for a call, as though they were its own; one that is handed the same range twice
   * has two sets of rows. The same list is handed out for as long as nothing in the range changed.
   */
  rows(tabId: string, at: Rectangle, read: (row: number) => Line): unknown[][] {
    const key = [tabId, at.startRow, at.endRow, at.startColumn, at.endColumn].join("|");
    const held = this.ranges.get(key) ?? new HeldRange(tabId, at);
    this.ranges.set(key, held);
    const rows = held.rows(read);
    if (this.inThisCall.has(key)) return rows.map((row) => row.map(ownCopy));
    this.inThisCall.add(key);
    return rows;
  }
}

const ownCopy = (cell: unknown) => (cell instanceof Date ? new Date(cell) : cell);
