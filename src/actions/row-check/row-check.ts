import type { Day } from "../../coaching/calendar/day";
import { waitingQuestions } from "../../words/questions";
import { rowsReadWords } from "../../words/row-check";
import { sayRowIssue } from "../../words/row-issues";
import { damagedOf } from "../answers/forget-damaged";
import type { RowCheckView, RowProblem } from "../messages";
import type { ReadWorkbook } from "../read-workbook";
import { questionsShown } from "../set-up/set-up-questions";
import { stateOfSquad } from "../squad/state-of-squad";
import type { Workbook } from "../workbook";
import { leftAlone } from "./left-alone";
import { liftsToLookAt } from "./lifts-to-look-at";
import { openIssues, rightOf } from "./open-issues";
import { rowsOfNobody } from "./rows-of-nobody";
import { setsToLookAt } from "./sets-to-look-at";
import { tabsToConfirm } from "./tabs-to-confirm";
import { unknownNames } from "./unknown-names";

/**
 * Every tab to confirm, every cell that could not be used and every set to look at, with what to do,
 * and how many rows were read of how many.
 */
export function rowCheck(workbook: Workbook, today: Day): RowCheckView {
  const state = stateOfSquad(workbook, today);
  const { read, numbers } = state;
  return {
    damaged: read.answers.damaged ? damagedOf(["answers"]) : [],
    mark: numbers.mark,
    summary: rowsReadWords(read.rowsRead, read.rowsFilled, rowsOfNobody(read)),
    noRows: read.rowsFilled === 0,
    problems: [
      ...tabsToConfirm(read),
      ...rowProblems(read),
      ...liftsToLookAt(read),
      ...setsToLookAt(state),
    ],
    names: unknownNames(read),
    athletes: read.rows.athletes.map(({ athlete }) => athlete),
    leftAlone: leftAlone(read),
    waiting: waitingQuestions(questionsShown(read)),
  };
}

/** The cells that could not be used. */
export function rowProblems(read: ReadWorkbook): RowProblem[] {
  return openIssues(read).map((one) => {
    const { tab, issue } = one;
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
      right: rightOf(one),
    };
  });
}
