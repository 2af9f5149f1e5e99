import { rowCheckFunction } from "../catalogue/row-check";
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

const cellPlace = /^(?:row )?([A-Z]*)(\d+)$/;

/** Every cell of a squad's rows that cannot be used, as ROW_CHECK of the spreadsheet says it. */
export function rowIssues({
  table,
  cells,
  columns,
  origins,
}: WarehouseTable): readonly WarehouseIssue[] {
  if (origins.length === 0) return [];
  const said = rowCheckFunction.compute([cells, table]) as readonly (readonly string[])[];
  return said.flatMap(([cell = "", found = "", whatToDo = "", whyItMatters = ""]) => {
    const [, letters = "", row = ""] = cellPlace.exec(cell) ?? [];
    if (row === "") return [];
    const origin = origins[Number(row) - 2];
    return [
      {
        athlete: origin?.athlete ?? null,
        day: origin?.day ?? null,
        place: origin?.place ?? null,
        column_name: columns[columnOf(letters)] ?? null,
        found,
        what_to_do: whatToDo,
        why_it_matters: whyItMatters,
      },
    ];
  });
}

/** Place of a column by its letters, from 0; −1 without letters. */
function columnOf(letters: string): number {
  let column = 0;
  for (const letter of letters) column = 26 * column + letter.charCodeAt(0) - 64;
  return column - 1;
}
