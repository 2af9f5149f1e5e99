import type { Day } from "../coaching/calendar/day";
import { rowsReadWords } from "../words/row-check";
import { sayRowIssue } from "../words/row-issues";
import { kindWords } from "../words/row-kinds";
import type { RowCheckView, RowProblem } from "./messages";
import { type ReadWorkbook, readWorkbook } from "./read-workbook";
import { unknownNames } from "./unknown-names";
import type { Workbook } from "./workbook";

/** Every cell that could not be used, with what to do, and how many rows were read of how many. */
export function rowCheck(workbook: Workbook, today: Day): RowCheckView {
  return rowCheckOf(readWorkbook(workbook, today));
}

export function rowCheckOf(read: ReadWorkbook): RowCheckView {
  const problems: RowProblem[] = read.issues.map(({ tab, issue }) => {
    const words = sayRowIssue(issue);
    return {
      tab: tab.name,
      tabId: tab.id,
      cell: issue.column === 0 ? `A${issue.row}` : issue.cell,
      found: words.found,
      why: words.whyItMatters,
      toDo: words.whatToDo,
      kind: kindWords(issue.code),
      mend: issue.facts.mend === undefined ? null : String(issue.facts.mend),
    };
  });
  const names = unknownNames(read);
  const counts = new Map<string, number>();
  const kinds = [
    ...problems.map(({ kind }) => kind),
    ...names.map(() => kindWords("unknown-athlete")),
  ];
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return {
    summary: rowsReadWords(read.rowsRead, read.rowsFilled),
    kinds: [...counts]
      .map(([kind, count]) => ({ kind, count }))
      .sort((a, b) => b.count - a.count || a.kind.localeCompare(b.kind)),
    problems,
    names,
  };
}
