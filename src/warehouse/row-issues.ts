import { rangeIssues } from "../catalogue/arguments/range-issues";
import { sayRowIssue } from "../words/row-issues";
import type { WarehouseTable } from "./warehouse-table";

/** One cell that cannot be used: whose row, the day and place of it, its column, and what to do. */
export type WarehouseIssue = Readonly<
  Record<
    "athlete" | "day" | "column_name" | "found" | "what_to_do" | "why_it_matters",
    string | null
  >
> & {
  /** Among the athlete's rows, from 1. */
  readonly place: number | null;
};

/** Every cell of a squad's rows that cannot be used, as ROW_CHECK of the spreadsheet says it. */
export function rowIssues({
  table,
  cells,
  columns,
  origins,
}: WarehouseTable): readonly WarehouseIssue[] {
  if (origins.length === 0) return [];
  return rangeIssues(table, cells, "", null).map((issue) => {
    const { found, whatToDo, whyItMatters } = sayRowIssue(issue);
    // Under the heading, which is row 1.
    const origin = origins[issue.row - 2];
    return {
      athlete: origin?.athlete ?? null,
      day: origin?.day ?? null,
      place: origin?.place ?? null,
      column_name: columns[issue.column - 1] ?? null,
      found,
      what_to_do: whatToDo,
      why_it_matters: whyItMatters,
    };
  });
}
