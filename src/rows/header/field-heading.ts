import type { TableName } from "../table-name";
import { tableColumns } from "./columns";

/** The heading that our own tabs give a meaning: "movement ok" for `movedWell`. */
export function fieldHeading(table: TableName, field: string): string {
  const columns: Readonly<Record<string, readonly string[]>> = tableColumns[table];
  return columns[field]?.[0] ?? field;
}
