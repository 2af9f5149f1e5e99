import type { Cells } from "../cells";
import type { Column } from "../header/column";
import type { FoundHeader } from "../header/find-header";
import type { IssueLog } from "../issue-log";
import { countsSets } from "../layout/counts-sets";
import type { TableName } from "../table-name";
import type { TableView } from "../table-view";
import { carriedColumns } from "./carried-columns";

/** Tables whose rows come in blocks of one day, athlete or lift. */
const mergedTables: ReadonlySet<TableName> = new Set(["Sets", "Jumps", "Diary", "Runs"]);

/** A table as its readers see it: merged cells carried down, "Sets" told from set numbers. */
export function viewOf(
  table: TableName,
  cells: Cells,
  end: number,
  found: FoundHeader,
  header: {
    readonly fields: Readonly<Record<string, Column>>;
    readonly repColumns: readonly Column[];
  },
  year: number | null,
  log: IssueLog,
): TableView {
  const carried = mergedTables.has(table)
    ? carriedColumns(cells, found.first, end, header.fields)
    : new Set<string>();
  const fields: Record<string, Column> = Object.fromEntries(
    Object.entries(header.fields).map(([field, column]) => [
      field,
      carried.has(field) ? { ...column, carried: true } : column,
    ]),
  );
  const { row: headerRow, first } = found;
  const numbers = fields.setCount;
  if (
    fields.set === undefined &&
    numbers !== undefined &&
    !countsSets(cells, numbers.index, first, end)
  ) {
    fields.set = numbers;
    delete fields.setCount;
  }
  return { table, cells, headerRow, first, end, fields, repColumns: header.repColumns, year, log };
}
