import type { Race } from "../coaching/record/race";
import { refuse } from "../outcome";
import { readAthletesArgument } from "../rows/argument/athletes-argument";
import { readDayArgument } from "../rows/argument/day-argument";
import type { Cells } from "../rows/cells";
import { plainlyOther } from "../rows/finding/plainly-other";
import { unreadFigures } from "../rows/header/unread-figures";
import { cellOfName } from "../rows/name/cell-of-name";
import { nameIssues } from "../rows/name/name-issues";
import { raceNames } from "../rows/name/race-names";
import { understoodOnce } from "../rows/read-once";
import { type TableName, tableNames } from "../rows/table-name";
import { allRowsRead } from "../words/row-check";
import { sayRowIssue } from "../words/row-issues";
import { isBlank, rowsOf } from "./arguments/elementwise";
import { textCell } from "./arguments/number-cell";
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
    const understood = understoodOnce<TableName>(name, cells, today);
    const other = plainlyOther(name, cells, understood, today === null ? {} : { today });
    if (other !== null) thrown(refuse("table-is-other", { table: name, other }));
    const { issues: inCells, records } = understood.reading;
    const issues = [
      ...unreadFigures(name, understood),
      ...inCells,
      ...unknownAmong(name, cells, records, athletes),
    ];
    if (issues.length === 0) return [[allRowsRead, "", "", ""]];
    return issues.map((issue) => {
      const { found, whyItMatters, whatToDo } = sayRowIssue(issue);
      const where = issue.column === 0 ? `row ${issue.row}` : issue.cell;
      return [where, found, whatToDo, whyItMatters];
    });
  },
};

/** Names in the rows that are not among the athletes given. */
function unknownAmong(
  table: TableName,
  cells: Cells,
  records: readonly unknown[],
  athletes: unknown,
) {
  const known = readAthletesArgument(athletes).asked.filter(({ athlete }) => athlete !== "");
  const listed = known.map(({ athlete, record }) => ({ athlete, group: record?.group ?? "" }));
  // Names alone do not say which groups there are.
  const grouped = known.some(({ record }) => record !== null);
  const named =
    table === "Races"
      ? raceNames(grouped ? (records as readonly Race[]) : [], listed)
      : records.filter(
          (record): record is { readonly row: number; readonly athlete: string } =>
            typeof (record as { athlete?: unknown }).athlete === "string",
        );
  if (known.length === 0 || table === "Athletes") return [];
  return nameIssues(table, named, known).map((issue) => {
    const cell = cellOfName(cells, issue.row, null, issue.found);
    return { ...issue, cell, column: 1 };
  });
}

/** Throws `table-unknown`. */
function tableNamed(text: string): TableName {
  const name = tableNames.find((one) => one.toLowerCase() === text.toLowerCase());
  return name ?? thrown(refuse("table-unknown", { found: text, known: tableNames.join(", ") }));
}
