import type { Understanding } from "../read-table";
import type { RowIssue } from "../reading";
import type { TableName } from "../table-name";
import { cellAddress } from "../value/cell-address";
import { numberFromText } from "../value/number-text";
import { fieldHeading } from "./field-heading";

/**
 * `figures-unread` for every column of figures that no heading explains, at its heading: words that a
 * coach keeps beside a table are nobody's business, figures may be those that the table is kept for.
 */
export function unreadFigures(
  table: TableName,
  { headerRow, questions, reading }: Understanding<TableName>,
): RowIssue[] {
  const told = new Set(
    reading.issues.flatMap(({ code, column }) => (code === "heading-unknown" ? [column] : [])),
  );
  return questions.flatMap(({ about, column, heading, samples, guess }) => {
    const figures = samples.filter((sample) => numberFromText(sample) !== null).length;
    const isText = 2 * figures <= samples.length;
    if (about !== "meaning" || headerRow === 0 || told.has(column) || isText) return [];
    const facts: RowIssue["facts"] = guess === null ? {} : { guess: fieldHeading(table, guess) };
    const cell = cellAddress(headerRow, column);
    return [
      {
        table,
        code: "figures-unread",
        row: headerRow,
        column,
        cell,
        found: heading,
        facts,
        dropsRow: false,
      },
    ];
  });
}
