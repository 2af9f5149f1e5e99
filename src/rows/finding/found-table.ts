import type { Cells } from "../cells";
import type { Understanding } from "../read-table";
import type { TableName } from "../table-name";

/** One tab of a workbook. */
export type Tab = { readonly name: string; readonly cells: Cells };

/** A table found in a tab. One tab may hold two: sets and the jumps kept among them. */
export type FoundTable = {
  readonly tab: string;
  readonly table: TableName;
  /** 0–1; below 0.6 it should be asked before it is used. */
  readonly sureness: number;
  readonly understanding: Understanding<TableName>;
};

/** A sureness at which a tab is shown and asked about, and its rows do not count yet. */
export const toBeAsked = 0.5;
