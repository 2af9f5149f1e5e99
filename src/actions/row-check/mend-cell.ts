import type { Day } from "../../coaching/calendar/day";
import { foundText } from "../../rows/value/found-text";
import { numberFromText } from "../../rows/value/number-text";
import { withMark } from "../../words/printed-numbers";
import { mendWords } from "../../words/row-check";
import type { Done, RowProblem } from "../messages";
import { numberStyle } from "../number-style";
import { readWorkbook } from "../read-workbook";
import type { Workbook } from "../workbook";
import { cellPlace } from "./cell-place";
import { rowProblems } from "./row-check";

/**
 * Writes a proposed value into the one cell it was proposed for, as an ordinary edit, and only while
 * the cell still holds what was found there and the same proposal stands. A cell that holds the
 * proposal already is left as it is: an answer that was lost may be asked for again. Throws a sentence
 * otherwise.
 */
export function mendCell(
  workbook: Workbook,
  today: Day,
  asked: Pick<RowProblem, "tabId" | "cell" | "found" | "mend">,
): Done {
  return workbook.alone(() => {
    const read = readWorkbook(workbook, today);
    const { mark } = numberStyle(read);
    const problem = rowProblems(read).find(
      ({ tabId, cell, found, mend }) =>
        tabId === asked.tabId &&
        cell === asked.cell &&
        found === asked.found &&
        mend === asked.mend,
    );
    const { row, column } = cellPlace(asked.cell);
    const before = foundText(workbook.values(asked.tabId)[row - 1]?.[column - 1]);
    if (!problem && asked.mend !== null && before === asked.mend) {
      const tab = workbook.tabs().find(({ id }) => id === asked.tabId);
      return { said: mendWords.already(tab?.name ?? "", asked.cell, withMark(asked.mend, mark)) };
    }
    if (!problem || problem.mend === null)
      throw new Error(mendWords.changedSince(asked.cell, before, asked.found));
    // A day is written as a day: as text it would be another kind of cell than those around it.
    const value = /^\d{4}-\d{2}-\d{2}$/.test(problem.mend)
      ? { day: problem.mend }
      : (numberFromText(problem.mend)?.value ?? problem.mend);
    workbook.write(problem.tabId, { row, column, values: [[value]] });
    return {
      said: mendWords.done(problem.tab, problem.cell, before, withMark(problem.mend, mark)),
    };
  });
}
