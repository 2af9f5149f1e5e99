import { tableNames } from "../table-name";
import { isBlank } from "../value/blank";
import { recogniseHeader } from "./recognise-header";

/** Whether a row's filled cells are headings of one table, every one of them. */
export function onlyHeadings(row: readonly unknown[]): boolean {
  const filled = row.filter((cell) => !isBlank(cell));
  return (
    filled.length > 0 &&
    tableNames.some((table) => {
      const { fields, repColumns } = recogniseHeader(table, filled);
      return Object.keys(fields).length + repColumns.length === filled.length;
    })
  );
}
