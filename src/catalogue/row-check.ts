import { refuse } from "../outcome";
import { readDayArgument } from "../rows/argument/day-argument";
import { type TableName, tableNames } from "../rows/table-name";
import { allRowsRead } from "../words/row-check";
import { sayRowIssue } from "../words/row-issues";
import { isBlank, rowsOf } from "./arguments/elementwise";
import { textCell } from "./arguments/number-cell";
import { rangeIssues } from "./arguments/range-issues";
import { thrown } from "./arguments/thrown";
import type { SheetFunction } from "./sheet-function";

const jumps = [
  ["date", "athlete", "test", "height cm"],
  ["2026-05-12", "Ilka Brandmoor", "box jump", 42],
  ["2026-05-19", "Ilka Brandmoor", "box jump", "about 41"],
];

export const rowCheckFunction: SheetFunction = {
  name: "ROW_CHECK",
  summary: "Every cell of a table that cannot be used: where, what was found, what to do.",
  parameters: [
    { name: "rows", help: "The table's range with its header row, starting in A1." },
    { name: "table", help: `Which table it is: ${tableNames.join(", ")}.` },
    {
      name: "athletes",
      help: "A column of names or the Athletes table: then names that are not among them are listed.",
      optional: true,
    },
    { name: "as_of", help: "Settles the year of dates written without one.", optional: true },
  ],
  results: ["cell", "what was found", "what to do", "why it matters"],
  examples: [
    {
      formula: '=ROW_CHECK(Jumps!A:D, "Jumps")',
      args: [jumps.slice(0, 2), "Jumps"],
      result: [["all rows read", "", "", ""]],
    },
  ],
  compute: ([rows, table, athletes, asOf]) => {
    const name = tableNamed(thrown(textCell(table, "table")));
    const cells = rowsOf(rows);
    if (cells.every((row) => row.every(isBlank))) {
      thrown(refuse("argument-table-empty", { name: "rows", table: name }));
    }
    if (!Array.isArray(rows)) thrown(refuse("argument-one-cell", { name: "rows", table: name }));
    const today = isBlank(asOf) ? null : thrown(readDayArgument(asOf));
    const issues = rangeIssues(name, cells, athletes, today);
    if (issues.length === 0) return [[allRowsRead, "", "", ""]];
    return issues.map((issue) => {
      const { found, whyItMatters, whatToDo } = sayRowIssue(issue);
      const where = issue.column === 0 ? `row ${issue.row}` : issue.cell;
      return [where, found, whatToDo, whyItMatters];
    });
  },
};

/** Throws `table-unknown`. */
function tableNamed(text: string): TableName {
  const name = tableNames.find((one) => one.toLowerCase() === text.toLowerCase());
  return name ?? thrown(refuse("table-unknown", { found: text, known: tableNames.join(", ") }));
}
