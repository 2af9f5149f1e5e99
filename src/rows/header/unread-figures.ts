import { IssueLog } from "../issue-log";
import type { Understanding } from "../read-table";
import type { RowIssue } from "../reading";
import type { TableName } from "../table-name";
import { numberFromText } from "../value/number-text";
import { fieldHeading } from "./field-heading";

/**
 * `figures-unread` for every column of figures that no heading explains, at its heading: words that a
 * coach keeps beside a table are nobody's business, figures may be those that the table is kept for.
 */
export function unreadFigures(
  table: TableName,
  { headerRow, questions, reading }: Understanding<TableName>,
): readonly RowIssue[] {
  const told = new Set(
    reading.issues.flatMap(({ code, column }) => (code === "heading-unknown" ? [column] : [])),
  );
  const log = new IssueLog(table);
  for (const { about, column, heading, samples, guess } of questions) {
    const figures = samples.filter((sample) => numberFromText(sample) !== null).length;
    const isText = 2 * figures <= samples.length;
    if (about !== "meaning" || headerRow === 0 || told.has(column) || isText) continue;
    const facts: RowIssue["facts"] = guess === null ? {} : { guess: fieldHeading(table, guess) };
    log.add("figures-unread", headerRow - 1, column - 1, heading, facts);
  }
  return log.issues;
}
