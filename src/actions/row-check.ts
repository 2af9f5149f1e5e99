import type { Day } from "../coaching/calendar/day";
import { checkNames } from "../rows/name/check-names";
import { saidDifferent } from "../rows/name/name-answers";
import { kindWords, rowsReadWords } from "../words/row-check";
import { sayRowIssue } from "../words/row-issues";
import type { NameQuestion, RowCheckView, RowProblem } from "./messages";
import { type ReadWorkbook, readWorkbook } from "./read-workbook";
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
  const counts = new Map<string, number>();
  for (const { kind } of problems) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return {
    summary: rowsReadWords(read.rowsRead, read.rowsFilled),
    kinds: [...counts]
      .map(([kind, count]) => ({ kind, count }))
      .sort((a, b) => b.count - a.count || a.kind.localeCompare(b.kind)),
    problems,
    names: unknownNames(read),
  };
}

/** Names in the rows that the Athletes table does not have, each asked about once over all tables. */
function unknownNames({ rows, answers }: ReadWorkbook): NameQuestion[] {
  if (rows.athletes.length === 0) return [];
  const all = [rows.sets, rows.jumps, rows.diary, rows.runs, rows.availability].flat();
  return checkNames(all, rows.athletes).map(({ name, rows: count, near }) => ({
    name,
    rows: count,
    near: near.filter((athlete) => !saidDifferent(answers.names, name, athlete)),
  }));
}
