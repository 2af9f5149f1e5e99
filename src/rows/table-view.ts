import type { Day } from "../coaching/calendar/day";
import type { Cells } from "./cells";
import type { Column } from "./header/column";
import type { IssueLog } from "./issue-log";
import type { TableName } from "./table-name";

/** Rows of one table with the place of each meaning: what every reader works on. Counts from 0. */
export type TableView = {
  readonly table: TableName;
  readonly cells: Cells;
  /** Row of the headings, −1 when the meanings came from elsewhere. */
  readonly headerRow: number;
  /** First row below the headings, and the row after the last filled one. */
  readonly first: number;
  readonly end: number;
  readonly fields: Readonly<Record<string, Column>>;
  readonly repColumns: readonly Column[];
  /** Year for dates written without one, from a title; null when nothing says. */
  readonly year: number | null;
  /** The day asked about; a reading that never asks holds for any. */
  readonly today?: () => Day | null;
  readonly log: IssueLog;
};

/** Reads one cell of a row: the row's cells, and its place from 0. */
export type CellReader<T> = (line: readonly unknown[], row: number) => T;
