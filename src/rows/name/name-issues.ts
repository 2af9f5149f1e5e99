import { IssueLog } from "../issue-log";
import type { RowIssue } from "../reading";
import type { TableName } from "../table-name";
import { checkNames } from "./check-names";

/**
 * Unknown names as row issues at the first row that carries each: `unknown-athlete` (facts `rows`,
 * and `near`, the athletes it may mean).
 */
export function nameIssues(
  table: TableName,
  records: readonly { readonly row: number; readonly athlete: string }[],
  athletes: readonly { readonly athlete: string }[],
): readonly RowIssue[] {
  const log = new IssueLog(table);
  for (const { name, firstRow, rows, near } of checkNames(records, athletes))
    log.add("unknown-athlete", firstRow - 1, -1, name, { rows, near: near.join(" or ") });
  return log.issues;
}
