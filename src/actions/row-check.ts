import type { Day } from "../coaching/calendar/day";
import { rowsReadWords } from "../words/row-check";
import { sayRowIssue } from "../words/row-issues";
import { damagedOf } from "./forget-damaged";
import type { RowCheckView, RowProblem } from "./messages";
import { numberStyle } from "./number-style";
import { type ReadWorkbook, readWorkbook } from "./read-workbook";
import { unknownNames } from "./unknown-names";
import type { Workbook } from "./workbook";

/** Every cell that could not be used, with what to do, and how many rows were read of how many. */
export function rowCheck(workbook: Workbook, today: Day): RowCheckView {
  return rowCheckOf(readWorkbook(workbook, today));
}

function rowCheckOf(read: ReadWorkbook): RowCheckView {
  const problems: RowProblem[] = read.issues.map(({ tab, issue }) => {
    const words = sayRowIssue(issue);
    return {
      tab: tab.name,
      tabId: tab.id,
      cell: issue.column === 0 ? `A${issue.row}` : issue.cell,
      found: words.found,
      why: words.whyItMatters,
      toDo: words.whatToDo,
      kind: issue.code,
      mend: issue.facts.mend === undefined ? null : String(issue.facts.mend),
    };
  });
  return {
    damaged: read.answers.damaged ? damagedOf(["answers"]) : [],
    mark: numberStyle(read).mark,
    summary: rowsReadWords(read.rowsRead, read.rowsFilled),
    problems,
    names: unknownNames(read),
  };
}
