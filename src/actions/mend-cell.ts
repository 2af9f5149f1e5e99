import type { Day } from "../coaching/calendar/day";
import { foundText } from "../rows/value/found-text";
import { numberFromText } from "../rows/value/number-text";
import { cellPlace } from "./cell-place";
import type { Done, RowProblem } from "./messages";
import { rowCheck } from "./row-check";
import type { Workbook } from "./workbook";

/**
 * Writes a proposed value into the one cell it was proposed for, as an ordinary edit, and only while
 * the same problem with the same proposal still stands there. Throws a sentence otherwise.
 */
export function mendCell(
  workbook: Workbook,
  today: Day,
  asked: Pick<RowProblem, "tabId" | "cell" | "mend">,
): Done {
  return workbook.alone(() => {
    const problem = rowCheck(workbook, today).problems.find(
      ({ tabId, cell, mend }) =>
        tabId === asked.tabId && cell === asked.cell && mend === asked.mend,
    );
    if (!problem || problem.mend === null) {
      throw new Error(`${asked.cell} has changed since it was listed. Check again.`);
    }
    const { row, column } = cellPlace(problem.cell);
    const before = foundText(workbook.values(problem.tabId)[row - 1]?.[column - 1]);
    // A day is written as a day: as text it would be another kind of cell than those around it.
    const value = /^\d{4}-\d{2}-\d{2}$/.test(problem.mend)
      ? { day: problem.mend }
      : (numberFromText(problem.mend)?.value ?? problem.mend);
    workbook.write(problem.tabId, { row, column, values: [[value]] });
    return {
      said: `${problem.tab} ${problem.cell}: ${before} is now ${problem.mend}. Undo takes it back.`,
    };
  });
}
