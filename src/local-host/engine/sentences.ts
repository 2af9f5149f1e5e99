import { type Shift, shiftedPlace } from "./shift";

/** Sentences of the last refused calculation, by place of the formula. */
export class Sentences {
  private readonly byTab = new Map<string, Map<string, string>>();

  set(tabId: string, row: number, column: number, sentence: string): void {
    const tab = this.byTab.get(tabId) ?? new Map<string, string>();
    tab.set(`${row}|${column}`, sentence);
    this.byTab.set(tabId, tab);
  }
  clear(tabId: string, row: number, column: number): void {
    this.byTab.get(tabId)?.delete(`${row}|${column}`);
  }
  get(tabId: string, row: number, column: number): string | undefined {
    return this.byTab.get(tabId)?.get(`${row}|${column}`);
  }
  /** Rows or columns came or went: the sentences go with their formulas. */
  shift(tabId: string, shift: Shift): void {
    const moved = new Map<string, string>();
    for (const [place, sentence] of this.byTab.get(tabId) ?? []) {
      const [row, column] = place.split("|").map(Number) as [number, number];
      const at = shiftedPlace(
        { startRow: row, endRow: row, startColumn: column, endColumn: column },
        shift,
      );
      if (at) moved.set(`${at.startRow}|${at.startColumn}`, sentence);
    }
    this.byTab.set(tabId, moved);
  }
}
