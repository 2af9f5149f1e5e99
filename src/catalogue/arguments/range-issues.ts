import type { Day } from "../../coaching/calendar/day";
import type { Race } from "../../coaching/record/race";
import { refuse } from "../../outcome";
import { readAthletesArgument } from "../../rows/argument/athletes-argument";
import type { Cells } from "../../rows/cells";
import { plainlyOther } from "../../rows/finding/plainly-other";
import { unreadFigures } from "../../rows/header/unread-figures";
import { cellOfName } from "../../rows/name/cell-of-name";
import { nameIssues } from "../../rows/name/name-issues";
import { raceNames } from "../../rows/name/race-names";
import { understoodOnce } from "../../rows/read-once";
import type { RowIssue } from "../../rows/reading";
import type { TableName } from "../../rows/table-name";
import { thrown } from "./thrown";

/**
 * Every cell of a range that cannot be used as the table it is said to be. Throws `table-is-other`.
 *
 * @param athletes names that names in the rows must be among; blank for no such check
 * @param today settles the year of dates without one; null where nothing does
 */
export function rangeIssues(
  table: TableName,
  cells: Cells,
  athletes: unknown,
  today: Day | null,
): readonly RowIssue[] {
  const understood = understoodOnce<TableName>(table, cells, today);
  const other = plainlyOther(table, cells, understood, today === null ? {} : { today });
  if (other !== null) thrown(refuse("table-is-other", { table, other }));
  const { issues, records } = understood.reading;
  return [
    ...unreadFigures(table, understood),
    ...issues,
    ...unknownAmong(table, cells, records, athletes),
  ];
}

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
