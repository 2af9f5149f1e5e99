import type { IssueLog, Somebody } from "./issue-log";
import type { RowNote } from "./layout/row-note";
import { cellAddress } from "./value/cell-address";
import { saysWhy } from "./value/why-nothing";

/** A record that is somebody's, of a day; in the list of athletes of none. */
type OfSomebody = Somebody & { readonly row: number };

/**
 * Words of pain, illness or absence where a figure would stand ("ill" under kg), as notes of whom and of
 * which day their row speaks, whether they are an issue or not.
 */
export function wordsForFigures(log: IssueLog, records: readonly object[]): readonly RowNote[] {
  const asIssues = log.issues.filter(({ found }) => saysWhy(found));
  if (log.kept.length + asIssues.length === 0) return [];
  const ofRow = new Map<number, Somebody>();
  const isOfSomebody = (record: object): record is OfSomebody =>
    "athlete" in record && ("day" in record || log.table === "Athletes");
  for (const record of records) if (isOfSomebody(record)) ofRow.set(record.row, record);
  const notes = new Map<string, RowNote>();
  const add = (row: number, column: number, words: string, record = ofRow.get(row)) => {
    const cell = cellAddress(row, column);
    if (record === undefined || notes.has(cell)) return;
    const { athlete, day = null } = record;
    const span = day === null ? "table" : "day";
    notes.set(cell, { cell, row, column, athlete, day, span, words });
  };
  for (const kept of log.kept) {
    const at = log.origin?.(kept.row, kept.column) ?? kept;
    add(at.row + 1, at.column + 1, kept.words, kept.of);
  }
  for (const { row, column, found } of asIssues) if (column > 0) add(row, column, found);
  return [...notes.values()];
}
